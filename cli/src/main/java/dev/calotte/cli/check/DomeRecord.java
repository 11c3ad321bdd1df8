package dev.calotte.cli.check;

import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.check.RecordedPlate;
import dev.calotte.check.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Understands {@code dome.json}.
 *
 * @param root the whole text
 */
record DomeRecord(Json root) {

    /** Makes something of an element of a list. */
    private interface Element<T> {
        T of(Json element) throws RecordException;
    }

    private static <T> List<T> each(List<Json> elements, Element<T> element) throws RecordException {
        List<T> list = new ArrayList<>(elements.size());
        for (Json each : elements) {
            list.add(element.of(each));
        }
        return list;
    }

    RecordedDome dome() throws RecordException {
        Json figures = root.at("dome");
        double mergedMm = figures.number("mergeWithin");
        return new RecordedDome(
                new RecordedDome.Figures(
                        figures.number("radius"), figures.number("height"), figures.number("surfaceArea")),
                each(root.list("vertices"), DomeRecord::vertex),
                each(root.list("strutKinds"), kind -> strutKind(kind, mergedMm)),
                each(root.list("struts"), DomeRecord::strut),
                each(root.list("panelKinds"), DomeRecord::panelKind),
                each(root.list("panels"), DomeRecord::panel),
                each(root.list("hubKinds"), DomeRecord::hubKind),
                each(root.list("hubs"), DomeRecord::hub),
                !root.list("openings").isEmpty());
    }

    private static Vector3D vertex(Json json) throws RecordException {
        List<Double> xyz = json.numbers();
        if (xyz.size() != 3) {
            throw new RecordException(json.where() + " has no three coordinates");
        }
        return new Vector3D(xyz.get(0), xyz.get(1), xyz.get(2));
    }

    /** Whose growths differ by no more than what is merged may be one pattern, though their struts are as long as they should. */
    private static RecordedDome.StrutKind strutKind(Json json, double mergedMm) throws RecordException {
        return new RecordedDome.StrutKind(
                json.text("mark"),
                json.number("length"),
                json.number("cutLength"),
                json.number("chordFactor"),
                json.whole("count"),
                json.numbers("gaps", 2),
                json.number("axialAngle"),
                Math.max(json.number("mergeError"), mergedMm),
                json.has("holeToHole"));
    }

    private static RecordedDome.Strut strut(Json json) throws RecordException {
        return new RecordedDome.Strut(
                json.text("mark"),
                json.text("kind"),
                json.whole("from"),
                json.whole("to"),
                json.has("dihedral") ? json.number("dihedral") : Double.NaN);
    }

    private static RecordedDome.PanelKind panelKind(Json json) throws RecordException {
        return new RecordedDome.PanelKind(
                json.text("mark"),
                json.text("hand"),
                json.whole("count"),
                json.numbers("sides", 3),
                json.numbers("angles", 3),
                json.numbers("altitudes", 3),
                json.number("narrowest"),
                json.number("area"));
    }

    private static RecordedDome.Panel panel(Json json) throws RecordException {
        return new RecordedDome.Panel(
                json.text("mark"), json.text("kind"), each(json.list("vertices"), Json::whole), json.whole("row"));
    }

    private static RecordedDome.HubKind hubKind(Json json) throws RecordException {
        return new RecordedDome.HubKind(
                json.text("mark"),
                json.text("hand"),
                json.whole("count"),
                json.texts("struts"),
                json.numbers("gaps"),
                json.numbers("axialAngles"),
                json.flag("open"));
    }

    /** The plates of those kinds of hubs that have one. */
    List<RecordedPlate> plates() throws RecordException {
        List<RecordedPlate> plates = new ArrayList<>();
        for (Json kind : root.list("hubKinds")) {
            if (kind.has("plate")) {
                plates.add(plate(hubKind(kind), kind.at("plate")));
            }
        }
        return plates;
    }

    private static RecordedPlate plate(RecordedDome.HubKind kind, Json json) throws RecordException {
        OptionalDouble diameter =
                json.has("diameter") ? OptionalDouble.of(json.number("diameter")) : OptionalDouble.empty();
        return new RecordedPlate(kind, json.number("hole"), json.number("holeCircle"), diameter);
    }

    private static RecordedDome.Hub hub(Json json) throws RecordException {
        return new RecordedDome.Hub(json.text("mark"), json.text("kind"), json.whole("vertex"), json.whole("row"));
    }

    List<RecordedCover> covers() throws RecordException {
        return each(root.list("covers"), DomeRecord::cover);
    }

    private static RecordedCover cover(Json json) throws RecordException {
        boolean planned = json.has("plan");
        return new RecordedCover(
                json.text("name"),
                json.number("plane"),
                json.number("spacing"),
                each(json.list("patterns"), DomeRecord::piece),
                planned ? each(json.at("plan").list("sheets"), DomeRecord::sheet) : List.of(),
                planned);
    }

    private static RecordedCover.Piece piece(Json json) throws RecordException {
        Ring outline = ring(json.at("outline"));
        return new RecordedCover.Piece(
                json.text("mark"),
                json.text("panelKind"),
                json.whole("count"),
                ring(json.at("net")),
                outline,
                json.has("notchedOutline") ? ring(json.at("notchedOutline")) : outline,
                json.has("outerOutline") ? Optional.of(ring(json.at("outerOutline"))) : Optional.empty(),
                each(json.list("holes"), DomeRecord::hole),
                each(json.list("sides"), side -> side.number("allowance")),
                !json.numbers("seams").isEmpty());
    }

    private static RecordedCover.Hole hole(Json json) throws RecordException {
        List<Double> numbers = json.numbers();
        if (numbers.size() != 3) {
            throw new RecordException(json.where() + " is no hole");
        }
        return new RecordedCover.Hole(numbers.get(0), numbers.get(1), numbers.get(2));
    }

    private static Ring ring(Json json) throws RecordException {
        List<Double> xy = new ArrayList<>();
        for (Json corner : json.list()) {
            List<Double> place = corner.numbers();
            if (place.size() != 2) {
                throw new RecordException(corner.where() + " is no x and y");
            }
            xy.addAll(place);
        }
        if (xy.size() < 6) {
            throw new RecordException(json.where() + " has fewer than three corners");
        }
        Ring ring = Ring.of(xy);
        if (!ring.hasExtent()) {
            throw new RecordException(json.where() + " has all its corners on one line");
        }
        return ring;
    }

    private static RecordedCover.Sheet sheet(Json json) throws RecordException {
        double length = json.number("length");
        double width = json.number("width");
        Ring border = json.has("outline")
                ? ring(json.at("outline"))
                : Ring.of(List.of(0.0, 0.0, length, 0.0, length, width, 0.0, width));
        return new RecordedCover.Sheet(
                length, width, border, json.number("margin"), each(json.list("parts"), DomeRecord::part));
    }

    private static RecordedCover.Part part(Json json) throws RecordException {
        return new RecordedCover.Part(
                json.text("mark"),
                json.text("panel"),
                json.number("x"),
                json.number("y"),
                json.number("rotation"),
                json.flag("mirrored"),
                ring(json.at("outline")));
    }
}
