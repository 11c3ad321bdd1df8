package dev.calotte.cli.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import dev.calotte.assembly.Patches;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.assembly.SettingOut;
import dev.calotte.caution.Caution;
import dev.calotte.cli.Design;
import dev.calotte.cli.folder.Origin;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Leveling;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.Triangle;
import dev.calotte.output.Documents;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.sphere.Spacing;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Writes {@code dome.json}: everything about a design for other programs. Lengths are millimetres, angles degrees,
 * areas square metres, volumes cubic metres; each element of a list stands on a line of its own.
 */
public final class DomeJson {

    private static final String FORMAT = "calotte-dome/1";

    private final JsonWriter json;
    private final Design design;
    private final Dome dome;
    private final Parts parts;
    private final PieceMarks marks;
    private final JoineryJson joinery;
    private final Optional<Patches> patches;

    private final Origin origin;

    private DomeJson(Design design, Origin origin, JsonGenerator generator) {
        this.origin = origin;
        this.json = new JsonWriter(generator);
        this.design = design;
        this.dome = design.dome();
        this.parts = design.parts();
        this.marks = new PieceMarks(parts);
        this.joinery = new JoineryJson(json, parts);
        this.patches = dome.panels().size() <= Documents.MOST_PANELS_IN_A_PICTURE
                ? Optional.of(design.project().assembly().patches(parts))
                : Optional.empty();
    }

    /**
     * Writes a design.
     *
     * @param design what to write
     * @param origin where it comes from
     * @param out where to write; flushed and left open
     * @throws IOException if the stream does not take the bytes
     */
    public static void write(Design design, Origin origin, OutputStream out) throws IOException {
        try (JsonGenerator generator =
                new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
            generator.setPrettyPrinter(new LinePerElement());
            DomeJson writer = new DomeJson(design, origin, generator);
            writer.json.object(writer::all);
            generator.writeRaw('\n');
        }
    }

    private void all() throws IOException {
        json.text("format", FORMAT);
        json.text("title", design.project().title());
        json.text("units", word(design.project().units()));
        json.object("brief", () -> json.text("sha256", origin.briefSha256()));
        json.object("made", this::made);
        json.object("output", () -> new OutputJson(json).write(design.project()));
        json.texts("notes", design.notes());
        json.object("dome", this::dome);
        json.list("vertices", dome.hubs(), this::position);
        json.objects("strutKinds", parts.strutKinds(), this::strutKind);
        json.objects("struts", dome.struts(), this::strut);
        joinery.rails();
        json.objects("panelKinds", parts.panelKinds(), this::panelKind);
        json.objects("panels", dome.panels(), this::panel);
        json.objects("hubKinds", parts.hubKinds(), this::hubKind);
        json.objects("hubs", dome.hubs(), this::hub);
        if (patches.isPresent()) {
            new PatchJson(json).write(patches.get());
        }
        new OpeningJson(json).write(parts);
        new RiserJson(json).write(design.riser());
        new CoverJson(json).write(design.covers(), design.project().covers());
        if (design.bars().isPresent()) {
            json.object("bars", this::bars);
        }
        new BillJson(json).write(design.bill());
        new BaseJson(json).write(SettingOut.of(parts), design.accuracy());
        json.objects("cautions", design.cautions(), this::caution);
        json.texts("files", origin.files());
    }

    private void made() throws IOException {
        json.text("version", origin.version());
        json.integer("steps", origin.steps());
    }

    private void bars() throws IOException {
        new PlanJson(json).bars(design.bars().orElseThrow());
        if (design.barCurve().isPresent()) {
            json.object("steps", () -> new StepJson(json, design.barCurve().get()).write());
        }
    }

    private void position(Hub hub) throws IOException {
        json.numbers(hub.position().toArray());
    }

    private void dome() throws IOException {
        DomeSpec spec = dome.spec();
        Measures m = dome.measures();
        json.text("solid", word(spec.solid()));
        json.integers(
                "breakdown", List.of(spec.breakdown().b(), spec.breakdown().c()));
        json.integer("frequency", spec.breakdown().frequency());
        json.integer("triangulation", spec.breakdown().triangulationNumber());
        json.text("spacing", word(spec.spacing()));
        if (spec.spacing() == Spacing.FITTED) {
            json.text("fit", word(spec.fitting().goal()).replace('_', '-'));
            json.fineNumber("strutRatio", spec.fitting().strutRatio());
        }
        json.text("up", word(spec.up()));
        keep(spec.keep());
        json.text("base", word(spec.base()).replace('_', '-'));
        json.number("radius", m.radiusMm());
        json.number("floorDiameter", m.floorDiameterMm());
        json.number("height", m.heightMm());
        json.fineNumber("floorArea", m.floorAreaMm2() / 1e6);
        json.fineNumber("surfaceArea", m.surfaceAreaMm2() / 1e6);
        json.fineNumber("volume", m.volumeMm3() / 1e9);
        json.number("baseSpread", m.baseSpreadMm());
        json.number("mergeWithin", design.parts().joinery().mergeWithinMm());
        json.integers("baseRing", dome.baseRing());
        if (dome.leveling().isPresent()) {
            json.object("leveling", () -> leveling(dome.leveling().get()));
        }
    }

    private void leveling(Leveling leveling) throws IOException {
        json.number("height", leveling.heightMm());
        json.number("spreadBefore", leveling.spreadBeforeMm());
        json.integer("movedHubs", leveling.movedHubs());
        json.number("largestMove", leveling.largestMoveMm());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private void keep(Keep keep) throws IOException {
        if (keep instanceof Keep.AboveHeight above) {
            json.object("keep", () -> json.number("above", above.heightMm()));
        } else {
            json.text("keep", keep.toString());
        }
    }

    private void strutKind(StrutKind kind) throws IOException {
        json.text("mark", kind.mark());
        json.fineNumber("chordFactor", kind.chordFactor());
        json.number("length", kind.lengthMm());
        json.number("cutLength", kind.cutLengthMm());
        json.integer("count", kind.count());
        json.number("axialAngle", degrees(kind.axialAngleRad()));
        json.objects("dihedrals", kind.dihedrals(), this::dihedral);
        joinery.strutKind(kind);
    }

    private void dihedral(StrutKind.Dihedral dihedral) throws IOException {
        json.number("angle", degrees(dihedral.angleRad()));
        json.integer("count", dihedral.count());
    }

    private static double degrees(double rad) {
        return StrictMath.toDegrees(rad);
    }

    private static double[] degrees(List<Double> rad) {
        return rad.stream().mapToDouble(DomeJson::degrees).toArray();
    }

    private void strut(Strut strut) throws IOException {
        json.text("mark", marks.of(strut));
        json.text("kind", parts.kindOf(strut).mark());
        json.integer("from", strut.from());
        json.integer("to", strut.to());
        if (strut.dihedralRad().isPresent()) {
            json.number("dihedral", degrees(strut.dihedralRad().getAsDouble()));
        } else {
            json.nothing("dihedral");
        }
    }

    private void panelKind(PanelKind kind) throws IOException {
        Triangle t = kind.triangle();
        json.text("mark", kind.mark());
        json.text("hand", word(kind.hand()));
        json.text("mirror", kind.twin());
        json.integer("count", kind.count());
        json.numbers("sides", t.a(), t.b(), t.c());
        json.numbers("angles", degrees(t.angleRad(0)), degrees(t.angleRad(1)), degrees(t.angleRad(2)));
        json.numbers("altitudes", t.altitude(0), t.altitude(1), t.altitude(2));
        json.number("narrowest", t.narrowestWidth());
        json.fineNumber("area", t.area() / 1e6);
    }

    private void panel(Panel panel) throws IOException {
        json.text("mark", marks.of(panel));
        json.text("kind", parts.kindOf(panel).mark());
        json.integers("vertices", panel.hubs());
        json.integer("row", panel.row());
        if (patches.isPresent()) {
            json.text("patch", patches.get().of(panel).mark());
        }
    }

    private void hubKind(HubKind kind) throws IOException {
        json.text("mark", kind.mark());
        json.text("hand", word(kind.hand()));
        json.text("mirror", kind.twin());
        json.integer("count", kind.count());
        json.texts("struts", kind.strutMarks());
        json.numbers("gaps", degrees(kind.gapsRad()));
        json.numbers("axialAngles", degrees(kind.axialAnglesRad()));
        json.flag("open", kind.open());
        joinery.hubKind(kind);
    }

    private void hub(Hub hub) throws IOException {
        json.text("mark", marks.of(hub));
        json.text("kind", parts.kindOf(hub).mark());
        json.integer("vertex", hub.index());
        json.integer("row", hub.row());
    }

    private void caution(Caution caution) throws IOException {
        json.text("topic", caution.topic());
        json.text("text", caution.text());
        json.text("deferTo", caution.deferTo());
    }
}
