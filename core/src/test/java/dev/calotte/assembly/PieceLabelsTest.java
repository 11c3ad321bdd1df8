package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.PieceLabels.Face;
import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.choose.CoverFit;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Corner;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Terms;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PieceLabelsTest {

    private static final double R = 2400;
    private static final Cover NET = Cover.of("net");
    private static final Cover FELLED = Cover.of("felled")
            .with(new Allowances(8, 18, 50, Corner.BLUNT, 0))
            .with(new Sheeting(30, 2, false))
            .with(new Treatment(false, true, Splitting.NEVER, true));
    private static final DomeSpec FIVE_NINTHS =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(R)).withKeep(new Keep.Rows(5, 9));
    private static final DomeSpec FACE_UP = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), Size.radius(R))
            .withUp(Up.FACE)
            .withKeep(new Keep.AboveHeight(0));
    private static final DomeSpec BALL = DomeSpec.of(Solid.OCTAHEDRON, new Breakdown(2, 1), Size.radius(R));

    static List<Patterns> patterns() {
        Dome opened = Dome.of(FIVE_NINTHS).withOpenings(List.of(new Opening("door", List.of(40), false)));
        return List.of(
                patterns(FIVE_NINTHS, NET),
                patterns(FIVE_NINTHS, FELLED),
                patterns(FACE_UP, NET),
                patterns(BALL, FELLED),
                patterns(FIVE_NINTHS.withSize(Size.radius(150)), NET),
                Patterns.of(Parts.of(opened, Joinery.nodeToNode()), NET));
    }

    private static Patterns patterns(DomeSpec spec, Cover cover) {
        return Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), cover);
    }

    private static List<Panel> panels(Patterns patterns) {
        return patterns.parts().dome().panels();
    }

    private static Vector3D[] hubs(Patterns patterns, Panel panel) {
        List<Hub> all = patterns.parts().dome().hubs();
        return new Vector3D[] {
            all.get(panel.hubs().get(patterns.firstHub(panel))).position(),
            all.get(panel.hubs().get((patterns.firstHub(panel) + 1) % 3)).position(),
            all.get(panel.hubs().get((patterns.firstHub(panel) + 2) % 3)).position()
        };
    }

    /** A direction of a panel's pattern in space. */
    private static Vector3D inSpace(Patterns patterns, Panel panel, Vector2D direction) {
        Vector3D[] hubs = hubs(patterns, panel);
        Vector3D x = hubs[1].subtract(hubs[0]).normalize();
        Vector3D out = x.crossProduct(hubs[2].subtract(hubs[0])).normalize();
        return new Vector3D(direction.getX(), x, direction.getY(), out.crossProduct(x));
    }

    private static ConvexPolygon net(Patterns patterns, Panel panel) {
        return patterns.of(panel).whole().net();
    }

    private static Vector2D at(Label label) {
        return new Vector2D(label.xMm(), label.yMm());
    }

    private static Vector2D reading(Label label) {
        return new Vector2D(StrictMath.cos(label.turnRad()), StrictMath.sin(label.turnRad()));
    }

    /** From the letters' feet to their heads. */
    private static Vector2D upright(Label label) {
        return new Vector2D(-StrictMath.sin(label.turnRad()), StrictMath.cos(label.turnRad()));
    }

    /** How far inside a side of the net shape a label's middle is. */
    private static double inside(Patterns patterns, Panel panel, int side, Label label) {
        ConvexPolygon net = net(patterns, panel);
        return net.corner(side).subtract(at(label)).dotProduct(net.outward(side));
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void markRowAndFaceStandBelowOneAnotherInTheMiddle(Patterns patterns) {
        PieceLabels labels = new PieceLabels(patterns);
        PieceMarks marks = new PieceMarks(patterns.parts());
        for (Panel panel : panels(patterns)) {
            List<Label> of = labels.of(panel);
            assertThat(of).hasSize(6);
            assertThat(of.subList(0, 3))
                    .extracting(Label::text)
                    .containsExactly(marks.of(panel), "row " + panel.row(), "OUT");
            // the middle line is as far from all three sides
            double inside = inside(patterns, panel, 0, of.get(1));
            assertThat(inside).isPositive();
            assertThat(inside(patterns, panel, 1, of.get(1))).isCloseTo(inside, within(1e-8 * R));
            assertThat(inside(patterns, panel, 2, of.get(1))).isCloseTo(inside, within(1e-8 * R));
            for (int line = 0; line < 3; line++) {
                Label label = of.get(line);
                Vector2D expected = at(of.get(1)).add((1 - line) * 1.6 * label.heightMm(), upright(label));
                assertThat(at(label).distance(expected)).isLessThan(1e-8);
                assertThat(label.turnRad()).isEqualTo(of.get(1).turnRad());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void theMarkReadsUpTheSlope(Patterns patterns) {
        PieceLabels labels = new PieceLabels(patterns);
        for (Panel panel : panels(patterns)) {
            Label mark = labels.of(panel).get(0);
            Vector3D[] hubs = hubs(patterns, panel);
            Vector3D out = hubs[1].subtract(hubs[0])
                    .crossProduct(hubs[2].subtract(hubs[0]))
                    .normalize();
            if (Math.abs(out.getZ()) < 1 - 1e-9) {
                Vector3D steepest = Vector3D.PLUS_K.subtract(out.getZ(), out).normalize();
                assertThat(inSpace(patterns, panel, upright(mark)).distance(steepest))
                        .isLessThan(1e-6);
                // seen from outside with the crown above, it is read from left to right and level
                assertThat(inSpace(patterns, panel, reading(mark)).distance(steepest.crossProduct(out)))
                        .isLessThan(1e-6);
            }
        }
    }

    @Test
    void onALevelPanelThePatternsOwnUpIsUp() {
        Patterns patterns = patterns(FACE_UP, NET);
        List<Panel> level = panels(patterns).stream()
                .filter(panel -> {
                    Vector3D[] hubs = hubs(patterns, panel);
                    return Math.abs(hubs[0].getZ() - hubs[1].getZ()) + Math.abs(hubs[0].getZ() - hubs[2].getZ()) < 1e-6;
                })
                .toList();
        assertThat(level).hasSize(1);
        List<Label> labels = new PieceLabels(patterns).of(level.get(0));
        assertThat(labels.get(0).turnRad()).isEqualTo(0);
        assertThat(labels.get(0).yMm() - labels.get(1).yMm()).isCloseTo(1.6 * 7, within(1e-9));
    }

    /** The neighbour is found here by the strut that lies where the label stands. */
    @ParameterizedTest
    @MethodSource("patterns")
    void alongEachSideStandsTheMarkOfTheNeighbourThere(Patterns patterns) {
        PieceLabels labels = new PieceLabels(patterns);
        PieceMarks marks = new PieceMarks(patterns.parts());
        int alone = 0;
        for (Panel panel : panels(patterns)) {
            for (int side = 0; side < 3; side++) {
                Strut strut = strutAt(patterns, panel, labels.of(panel).get(3 + side));
                List<String> others = panels(patterns).stream()
                        .filter(other ->
                                other.index() != panel.index() && other.struts().contains(strut.index()))
                        .map(marks::of)
                        .toList();
                assertThat(others).hasSizeLessThan(2);
                String expected = others.isEmpty() ? "base" : others.get(0);
                assertThat(labels.of(panel).get(3 + side).text()).isEqualTo(expected);
                alone += others.size() == 0 ? 1 : 0;
            }
        }
        int bases = (int) patterns.parts().dome().struts().stream()
                .filter(strut -> strut.dihedralRad().isEmpty())
                .count();
        assertThat(alone).isEqualTo(bases);
    }

    /** The strut of a panel to which a label's middle is nearest. */
    private static Strut strutAt(Patterns patterns, Panel panel, Label label) {
        Vector3D[] hubs = hubs(patterns, panel);
        Vector3D point = hubs[0].add(inSpace(patterns, panel, at(label)));
        List<Hub> all = patterns.parts().dome().hubs();
        return panel.struts().stream()
                .map(patterns.parts().dome().struts()::get)
                .min(Comparator.comparingDouble(strut -> {
                    Vector3D from = all.get(strut.from()).position();
                    Vector3D along =
                            all.get(strut.to()).position().subtract(from).normalize();
                    return along.crossProduct(point.subtract(from)).getNorm();
                }))
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void neighboursStandJustInsideTheNetLineAndAreReadAlongIt(Patterns patterns) {
        PieceLabels labels = new PieceLabels(patterns);
        for (Panel panel : panels(patterns)) {
            ConvexPolygon net = net(patterns, panel);
            for (int side = 0; side < 3; side++) {
                Label label = labels.of(panel).get(3 + side);
                Vector2D foot = new Vector2D(0.5, net.corner(side), 0.5, net.corner(side + 1));
                Vector2D expected = foot.subtract(1.6 * label.heightMm(), net.outward(side));
                assertThat(at(label).distance(expected)).isLessThan(1e-8);
                // their heads point into the piece
                assertThat(upright(label).distance(net.outward(side).negate())).isLessThan(1e-8);
            }
        }
    }

    /** The heights are those of the class: 7 mm and 5 mm, on small pieces a twentieth of their narrowest width. */
    @Test
    void lettersAreAsHighAsThereIsRoom() {
        heights(patterns(FIVE_NINTHS, NET), 7, 5);
        // by hand: an equilateral of 1000 mm scaled to altitudes of 139 and 141, of 99 and of 101 mm
        heights(equilateral(141 / Math.sqrt(0.75), NET), 7, 5);
        heights(equilateral(139 / Math.sqrt(0.75), NET), 6.95, 5);
        heights(equilateral(101 / Math.sqrt(0.75), NET), 5.05, 5);
        heights(equilateral(99 / Math.sqrt(0.75), NET), 4.95, 4.95);
    }

    private static Patterns equilateral(double edgeMm, Cover cover) {
        Size size = new Size(Size.Measure.LONGEST_STRUT, edgeMm);
        return patterns(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), size), cover);
    }

    private static void heights(Patterns patterns, double mark, double edge) {
        for (Panel panel : panels(patterns)) {
            List<Label> labels = new PieceLabels(patterns).of(panel);
            for (int i = 0; i < 6; i++) {
                assertThat(labels.get(i).heightMm()).isCloseTo(i < 3 ? mark : edge, within(1e-9));
            }
        }
    }

    /** A cover deep inside the hubs is much smaller than the panels between them: its own size counts. */
    @Test
    void aSmallPieceOfALargeDomeHasSmallLetters() {
        Patterns patterns = equilateral(1000, NET.with(new Sheeting(-745, 0, false)));
        double narrowest = net(patterns, panels(patterns).get(0)).narrowestWidth();
        assertThat(narrowest).isBetween(1.0, 40.0);
        heights(patterns, narrowest / 20, narrowest / 20);
        assertInside(patterns);
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void everyLabelLiesInsideTheNetShape(Patterns patterns) {
        assertInside(patterns);
    }

    private static void assertInside(Patterns patterns) {
        for (Panel panel : panels(patterns)) {
            for (Label label : new PieceLabels(patterns).of(panel)) {
                for (int side = 0; side < 3; side++) {
                    assertThat(inside(patterns, panel, side, label)).isGreaterThan(label.heightMm());
                }
            }
        }
    }

    /** Three parts on a roll: each names the part that has the same seam, and the neighbours along what is left. */
    @Test
    void partsNameOneAnotherAlongTheirSeams() {
        Cover divided = NET.with(new Treatment(false, false, Splitting.SEAM, false));
        Patterns patterns = patterns(FIVE_NINTHS, divided);
        CoverFit fit = CoverFit.of(patterns, List.of(new Roll(330, 0, OptionalDouble.empty(), Terms.OPEN)));
        PieceLabels labels = new PieceLabels(patterns);
        PieceMarks marks = new PieceMarks(patterns.parts());
        int seams = 0;
        for (Panel panel : panels(patterns)) {
            List<CutPiece> pieces =
                    fit.fits().get(patterns.list().indexOf(patterns.of(panel))).pieces();
            List<Label> whole = labels.of(panel);
            assertThat(pieces).hasSizeGreaterThan(2);
            for (CutPiece piece : pieces) {
                List<Label> of = labels.of(panel, piece, Face.IN);
                String part = piece.mark().substring(patterns.of(panel).mark().length());
                assertThat(of.get(0).text()).isEqualTo(marks.of(panel) + part);
                assertThat(of.get(2).text()).isEqualTo("IN");
                assertThat(of).hasSize(3 + piece.net().size());
                for (int side = 0; side < piece.net().size(); side++) {
                    String text = of.get(3 + side).text();
                    Vector2D foot = foot(piece.net(), side);
                    List<String> there = pieces.stream()
                            .filter(other -> !other.equals(piece) && liesOnASide(other.net(), foot))
                            .map(other -> marks.of(panel)
                                    + other.mark()
                                            .substring(patterns.of(panel).mark().length()))
                            .toList();
                    seams += there.size();
                    if (there.isEmpty()) {
                        assertThat(text)
                                .isEqualTo(whole.get(3 + sideAt(patterns, panel, foot))
                                        .text());
                    } else {
                        assertThat(there).containsExactly(text);
                    }
                }
            }
        }
        assertThat(seams).isPositive();
    }

    private static Vector2D foot(ConvexPolygon net, int side) {
        return new Vector2D(0.5, net.corner(side), 0.5, net.corner(side + 1));
    }

    private static boolean liesOnASide(ConvexPolygon net, Vector2D point) {
        for (int side = 0; side < net.size(); side++) {
            if (foot(net, side).distance(point) < 1e-6) {
                return true;
            }
        }
        return false;
    }

    private static int sideAt(Patterns patterns, Panel panel, Vector2D point) {
        ConvexPolygon net = net(patterns, panel);
        return IntStream.range(0, 3)
                .filter(side -> Math.abs(net.corner(side).subtract(point).dotProduct(net.outward(side))) < 1e-6)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPieceThatStandsForItsKindHasMarkAndCount() {
        ConvexPolygon net = ConvexPolygon.of(0, 0, 400, 0, 200, 300);
        List<Label> labels = PieceLabels.ofKind(net, "P3L", 30, List.of("S1", "S2", "S3"));
        assertThat(labels).extracting(Label::text).containsExactly("P3L", "cut 30", "OUT", "S1", "S2", "S3");
        assertThat(labels.subList(0, 3)).allMatch(label -> label.turnRad() == 0 && label.heightMm() == 7);
        assertThat(labels.get(3)).isEqualTo(new Label("S1", 200, 8, 0, 5));
        assertThat(PieceLabels.ofKind(net, "P3L", 30, List.of())).hasSize(3);
    }
}
