package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Spoke;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Each kind of hubs from outside, flat on the plane that touches the sphere there: its struts as arms with their marks,
 * how far each falls below that plane, and between them the angles and the kinds of panels. The first strut of the kind
 * points up; that of a base hub leaves the open side below.
 */
final class HubSheets {

    private static final double HUB = 4;
    private static final double ARM = 25;
    private static final double BAR = 1.6;

    /** Between words and arms, and in what steps and how far words move outwards for that. */
    private static final double CLEAR = 0.4;

    private static final double STEP = 0.5;
    private static final int MOST_STEPS = 12;
    private static final double GAP_AT = 17;
    private static final double HEADING = 10;

    private final Subject subject;
    private final List<HubKind> kinds;
    private final SortedMap<String, Hub> examples = new TreeMap<>();

    private HubSheets(Subject subject) {
        this.subject = subject;
        this.kinds = subject.parts().hubKinds();
        for (Hub hub : subject.dome().hubs()) {
            examples.putIfAbsent(subject.parts().kindOf(hub).mark(), hub);
        }
    }

    static List<Draft> of(Subject subject) {
        HubSheets sheets = new HubSheets(subject);
        String note =
                "Seen from outside, struts counter-clockwise from the one marked start; at each arm the angle between"
                        + " strut and tangent plane.";
        return Cells.of(new Cells.Series("hubs", "Hubs", note, sheets.kinds.size()), subject.units(), sheets::draw);
    }

    /** The directions of a kind's struts on paper, in radians counter-clockwise from the right, in their order. */
    static List<Double> directionsRad(HubKind kind) {
        double taken = kind.gapsRad().stream().mapToDouble(gap -> gap).sum();
        double direction = kind.open() ? -Math.PI / 2 + (2 * Math.PI - taken) / 2 : Math.PI / 2;
        List<Double> directions = new ArrayList<>();
        for (int i = 0; i < kind.struts().size(); i++) {
            directions.add(direction);
            direction += i < kind.gapsRad().size() ? kind.gapsRad().get(i) : 0;
        }
        return directions;
    }

    private void draw(Paper paper, Box cell, int index) {
        HubKind kind = kinds.get(index);
        String count = kind.count() + (kind.count() == 1 ? " hub" : " hubs");
        String heading = kind.mark() + "  " + count + (kind.open() ? ", base" : "");
        paper.text(heading, cell.left(), cell.high() - 3, Letters.MARK, Anchor.START);
        paper.text(String.join(" ", kind.strutMarks()), cell.left(), cell.high() - 8, Letters.SMALL, Anchor.START);
        kind.twin()
                .ifPresent(twin -> paper.text(
                        "mirror image of " + twin, cell.left(), cell.high() - 12, Letters.SMALL, Anchor.START));
        List<Double> directions = directionsRad(kind);
        Vector2D middle = new Vector2D(cell.middleX(), cell.low() + (cell.height() - HEADING) / 2 - spare(directions));
        addGaps(paper, kind, middle, directions);
        for (int i = 0; i < directions.size(); i++) {
            addArm(paper, kind, i, middle, unit(directions.get(i)));
        }
        paper.add(new Disc(middle.getX(), middle.getY(), HUB, 0, Weight.STRONG, kind.mark()));
    }

    /** How much lower a figure can stand whose arms do not reach as far down as up, so that its marks clear the heading. */
    private static double spare(List<Double> directions) {
        double down = directions.stream().mapToDouble(StrictMath::sin).min().orElseThrow();
        return Math.min(HEADING, ARM * (1 + down));
    }

    private static Vector2D unit(double direction) {
        return new Vector2D(StrictMath.cos(direction), StrictMath.sin(direction));
    }

    private static void addArm(Paper paper, HubKind kind, int i, Vector2D middle, Vector2D out) {
        Vector2D side = new Vector2D(-out.getY() * BAR, out.getX() * BAR);
        Vector2D from = middle.add(HUB - 1, out);
        Vector2D to = middle.add(ARM, out);
        String mark = kind.strutMarks().get(i);
        List<Vector2D> bar = List.of(from.subtract(side), to.subtract(side), to.add(side), from.add(side));
        paper.add(new Facet(KindLook.xy(bar), kind.struts().get(i), Hatch.NONE, Weight.STRONG, mark));
        List<String> lines =
                new ArrayList<>(List.of(mark, Angle.text(kind.axialAnglesRad().get(i), 1)));
        if (i == 0) {
            lines.add("start");
        }
        TextStack.beyond(paper, lines, to, out);
    }

    private void addGaps(Paper paper, HubKind kind, Vector2D middle, List<Double> directions) {
        Parts parts = subject.parts();
        List<Spoke> spokes = parts.around(examples.get(kind.mark()));
        for (int i = 0; i < kind.gapsRad().size(); i++) {
            double gap = kind.gapsRad().get(i);
            Vector2D out = unit(directions.get(i) + gap / 2);
            int panel = spokes.get(i).panel();
            List<String> lines = panel == Spoke.NONE
                    ? List.of(Angle.text(gap, 1))
                    : List.of(parts.kindOf(parts.dome().panels().get(panel)).mark(), Angle.text(gap, 1));
            Vector2D first = unit(directions.get(i));
            Vector2D second = unit(directions.get(i + 1 < directions.size() ? i + 1 : 0));
            Vector2D at = middle.add(GAP_AT, out);
            for (int step = 0; step < MOST_STEPS && touches(lines, at, middle, List.of(first, second)); step++) {
                at = at.add(STEP, out);
            }
            if (panel == Spoke.NONE) {
                paper.add(Letters.middle(lines.get(0), at.getX(), at.getY(), Letters.SMALL));
            } else {
                TextStack.around(paper, lines, at);
            }
        }
    }

    /** Whether words would lie on one of the arms that they stand between. */
    private static boolean touches(List<String> lines, Vector2D at, Vector2D middle, List<Vector2D> arms) {
        Box box = Box.around(at.getX(), at.getY(), TextStack.width(lines), TextStack.height(lines))
                .grownBy(BAR + CLEAR);
        return arms.stream().anyMatch(out -> box.meets(middle, middle.add(ARM, out)));
    }
}
