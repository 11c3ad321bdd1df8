package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Corner;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.NotchedEdge;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CoverPatternsTest {

    private static final double SAME = 1e-6;
    private static final Cover NET = Cover.of("net");
    private static final Cover CLOTH = Cover.of("cloth").with(Allowances.of(12, 40));
    private static final Treatment CODED = new Treatment(false, false, Splitting.NEVER, true);
    private static final Treatment SEAMS = new Treatment(false, true, Splitting.SEAM, true);

    /** Thin, felled with notches and grain, with gaps and reliefs and holes, bevelled, divided, and small. */
    static List<CoverFit> covers() {
        Cover felled = Cover.of("felled")
                .with(new Allowances(8, 18, 50, Corner.BLUNT, 0))
                .with(new Treatment(false, true, Splitting.NEVER, true));
        Cover glass = Cover.of("glass")
                .with(Allowances.of(-6, 0).withHubRelief(45))
                .with(new Sheeting(30, 4, false))
                .with(new Fasteners(6.5, 30, 300))
                .with(CODED);
        Cover board = Cover.of("board").with(new Sheeting(20, 18, true)).with(CODED);
        return List.of(
                fit(3, 4000, NET),
                fit(3, 4000, felled),
                fit(4, 3000, glass),
                fit(3, 2500, board),
                fit(3, 4000, CLOTH.with(SEAMS), roll(1300)),
                fit(
                        3,
                        4000,
                        Cover.of("gap")
                                .with(Allowances.of(-9, 0))
                                .with(new Treatment(false, false, Splitting.SEAM, true)),
                        roll(900)),
                fit(2, 60, Cover.of("model").with(Allowances.of(2, 2))));
    }

    private static CoverFit fit(int frequency, double radiusMm, Cover cover, Stock... stocks) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(radiusMm));
        DomeSpec kept = frequency == 3 ? spec.withKeep(new Keep.Rows(5, 9)) : spec;
        return CoverFit.of(Patterns.of(Parts.of(Dome.of(kept), Joinery.nodeToNode()), cover), List.of(stocks));
    }

    private static Stock roll(double width) {
        return new Roll(width, 0, OptionalDouble.empty(), Terms.OPEN);
    }

    private static List<CutPiece> pieces(CoverFit fit) {
        return fit.fits().stream().flatMap(f -> f.pieces().stream()).toList();
    }

    private static Pattern pattern(CoverFit fit, CutPiece piece) {
        return fit.fits().stream()
                .filter(f -> f.pieces().contains(piece))
                .map(PatternFit::pattern)
                .findFirst()
                .orElseThrow();
    }

    private static List<Shape> shapes(Drawing drawing) {
        return drawing.parts().get(0).shapes();
    }

    private static List<Polyline> paths(Drawing drawing, Operation operation) {
        return shapes(drawing).stream()
                .filter(shape -> shape instanceof Polyline && shape.operation() == operation)
                .map(Polyline.class::cast)
                .toList();
    }

    private static List<Circle> circles(Drawing drawing, Operation operation) {
        return shapes(drawing).stream()
                .filter(shape -> shape instanceof Circle && shape.operation() == operation)
                .map(Circle.class::cast)
                .toList();
    }

    private static List<Vector2D> corners(Polyline path) {
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            corners.add(new Vector2D(path.x(i), path.y(i)));
        }
        return corners;
    }

    /** How far the drawing's piece was moved: by where its finished shape is. */
    private static Vector2D shift(Drawing drawing, CutPiece piece) {
        List<Polyline> references = paths(drawing, Operation.REF);
        return corners(references.get(references.size() - 1))
                .get(0)
                .subtract(piece.net().corner(0));
    }

    private static void assertMoved(Polyline path, Polygon polygon, Vector2D shift) {
        assertThat(path.isClosed()).isTrue();
        assertThat(path.size()).isEqualTo(polygon.size());
        for (int i = 0; i < path.size(); i++) {
            assertThat(path.x(i)).isCloseTo(polygon.x(i) + shift.getX(), within(SAME));
            assertThat(path.y(i)).isCloseTo(polygon.y(i) + shift.getY(), within(SAME));
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void everyPieceHasADrawingInTheOrderOfThePatterns(CoverFit fit) {
        String cover = fit.patterns().cover().name();
        assertThat(CoverPatterns.of(fit, UnitSystem.METRIC))
                .extracting(Drawing::name)
                .doesNotHaveDuplicates()
                .containsExactlyElementsOf(pieces(fit).stream()
                        .map(piece -> "panels/" + cover + "-" + piece.mark())
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("covers")
    void outlinesAreThoseOfThePieceMovedAsOne(CoverFit fit) {
        List<Drawing> drawings = CoverPatterns.of(fit, UnitSystem.METRIC);
        for (int i = 0; i < drawings.size(); i++) {
            CutPiece piece = pieces(fit).get(i);
            Vector2D shift = shift(drawings.get(i), piece);
            Polygon notched = new NotchedEdge(pattern(fit, piece), piece, 5).outline();
            List<Polyline> cut = paths(drawings.get(i), Operation.CUT_OUTER);
            List<Polyline> reference = paths(drawings.get(i), Operation.REF);
            assertThat(cut).hasSize(1);
            assertMoved(cut.get(0), piece.outer().orElse(notched), shift);
            assertThat(reference).hasSize(piece.outer().isPresent() ? 2 : 1);
            assertMoved(reference.get(reference.size() - 1), piece.net(), shift);
            piece.outer().ifPresent(outer -> assertMoved(reference.get(0), notched, shift));
        }
    }

    /** Polygons run counter-clockwise, so paths that are polygons moved do; here the sense is checked by itself. */
    @ParameterizedTest
    @MethodSource("covers")
    void outlinesRunCounterClockwise(CoverFit fit) {
        for (Drawing drawing : CoverPatterns.of(fit, UnitSystem.METRIC)) {
            shapes(drawing).stream()
                    .filter(shape -> shape instanceof Polyline path && path.isClosed())
                    .forEach(shape -> assertThat(
                                    Polygon.of(corners((Polyline) shape)).area())
                            .isPositive());
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void everythingLiesInsideTheSheet(CoverFit fit) {
        for (Drawing drawing : CoverPatterns.of(fit, UnitSystem.METRIC)) {
            drawing.parts().stream().flatMap(part -> part.shapes().stream()).forEach(shape -> {
                double around = shape instanceof Circle circle ? circle.radiusMm() : 0;
                for (Vector2D point : points(shape)) {
                    assertThat(point.getX()).isBetween(around, drawing.widthMm() - around);
                    assertThat(point.getY()).isBetween(around, drawing.heightMm() - around);
                }
            });
        }
    }

    private static List<Vector2D> points(Shape shape) {
        return shape instanceof Circle circle
                ? List.of(new Vector2D(circle.xMm(), circle.yMm()))
                : corners((Polyline) shape);
    }

    /** By hand: 10 mm all round, the reference 10 mm from below, 10 mm more up to the piece. */
    @ParameterizedTest
    @MethodSource("covers")
    void theSheetIsNoLargerThanItsMarginsAsk(CoverFit fit) {
        for (Drawing drawing : CoverPatterns.of(fit, UnitSystem.METRIC)) {
            List<Vector2D> points = shapes(drawing).stream()
                    .filter(shape -> shape instanceof Polyline path && path.isClosed())
                    .flatMap(shape -> points(shape).stream())
                    .toList();
            double left = points.stream().mapToDouble(Vector2D::getX).min().orElseThrow();
            double right = points.stream().mapToDouble(Vector2D::getX).max().orElseThrow();
            double low = points.stream().mapToDouble(Vector2D::getY).min().orElseThrow();
            double high = points.stream().mapToDouble(Vector2D::getY).max().orElseThrow();
            assertThat(left).isCloseTo(10, within(SAME));
            assertThat(low).isCloseTo(20, within(SAME));
            assertThat(drawing.widthMm()).isCloseTo(Math.max(right + 10, 120), within(SAME));
            assertThat(drawing.heightMm()).isCloseTo(high + 10, within(SAME));
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void theReferenceStandsBelow(CoverFit fit) {
        for (Drawing drawing : CoverPatterns.of(fit, UnitSystem.METRIC)) {
            assertThat(drawing.parts()).hasSize(2);
            Drawing.Part reference = drawing.parts().get(1);
            assertThat(reference.mark()).isEqualTo("REF-100");
            assertThat(corners((Polyline) reference.shapes().get(0)))
                    .containsExactly(new Vector2D(10, 10), new Vector2D(110, 10));
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void shapesStandInTheOrderInWhichTheyAreWorked(CoverFit fit) {
        for (Drawing drawing : CoverPatterns.of(fit, UnitSystem.METRIC)) {
            assertThat(shapes(drawing)).extracting(Shape::operation).isSorted();
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void holesAreDrilledWhereThePieceHasThem(CoverFit fit) {
        List<Drawing> drawings = CoverPatterns.of(fit, UnitSystem.METRIC);
        for (int i = 0; i < drawings.size(); i++) {
            CutPiece piece = pieces(fit).get(i);
            Vector2D shift = shift(drawings.get(i), piece);
            List<Circle> drilled = circles(drawings.get(i), Operation.DRILL);
            assertThat(drilled).hasSameSizeAs(piece.holes());
            assertThat(drilled.isEmpty())
                    .isEqualTo(!fit.patterns().cover().name().equals("glass"));
            for (int hole = 0; hole < drilled.size(); hole++) {
                assertThat(drilled.get(hole).xMm())
                        .isCloseTo(piece.holes().get(hole).x() + shift.getX(), within(SAME));
                assertThat(drilled.get(hole).yMm())
                        .isCloseTo(piece.holes().get(hole).y() + shift.getY(), within(SAME));
                assertThat(drilled.get(hole).radiusMm()).isEqualTo(3.25);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void dotsMarkTheFinishedCornersWhereSeamsHaveAnAllowance(CoverFit fit) {
        List<Drawing> drawings = CoverPatterns.of(fit, UnitSystem.METRIC);
        boolean seams = List.of("cloth", "felled", "model")
                .contains(fit.patterns().cover().name());
        for (int i = 0; i < drawings.size(); i++) {
            CutPiece piece = pieces(fit).get(i);
            Vector2D shift = shift(drawings.get(i), piece);
            List<Circle> dots = circles(drawings.get(i), Operation.ENGRAVE);
            assertThat(dots).hasSize(seams ? piece.net().size() : 0);
            for (int dot = 0; dot < dots.size(); dot++) {
                Vector2D at = new Vector2D(dots.get(dot).xMm(), dots.get(dot).yMm());
                assertThat(at.distance(piece.net().corner(dot).add(shift))).isLessThan(SAME);
                assertThat(dots.get(dot).radiusMm()).isEqualTo(1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("covers")
    void notchesWithoutAnAllowanceAreFiveMillimetresLong(CoverFit fit) {
        List<Drawing> drawings = CoverPatterns.of(fit, UnitSystem.METRIC);
        int ticks = 0;
        for (int i = 0; i < drawings.size(); i++) {
            CutPiece piece = pieces(fit).get(i);
            Vector2D shift = shift(drawings.get(i), piece);
            List<List<Vector2D>> expected = new NotchedEdge(pattern(fit, piece), piece, 5).ticks();
            int drawn = expected.size() + (piece.grainRad().isPresent() ? 3 : 0);
            List<Polyline> engraved = paths(drawings.get(i), Operation.ENGRAVE);
            int letters = strokes(piece.mark(), "cut " + pattern(fit, piece).count(), "OUT");
            assertThat(engraved).hasSize(letters + drawn);
            engraved = engraved.subList(letters, engraved.size());
            for (int tick = 0; tick < expected.size(); tick++) {
                List<Vector2D> line = corners(engraved.get(tick));
                assertThat(engraved.get(tick).isClosed()).isFalse();
                assertThat(line).hasSize(2);
                assertThat(line.get(0).distance(line.get(1))).isCloseTo(5, within(SAME));
                assertThat(line.get(0).distance(expected.get(tick).get(0).add(shift)))
                        .isLessThan(SAME);
                assertThat(line.get(1).distance(expected.get(tick).get(1).add(shift)))
                        .isLessThan(SAME);
                ticks++;
            }
        }
        assertThat(ticks > 0)
                .isEqualTo(List.of("glass", "board", "gap")
                        .contains(fit.patterns().cover().name()));
    }

    private static int strokes(String... texts) {
        return Stream.of(texts)
                .mapToInt(text -> StrokeText.of(text, 1).left(0, 0, 0).size())
                .sum();
    }

    @ParameterizedTest
    @MethodSource("covers")
    void anArrowLiesAlongTheGrainInTheMiddleOfThePiece(CoverFit fit) {
        List<Drawing> drawings = CoverPatterns.of(fit, UnitSystem.METRIC);
        for (int i = 0; i < drawings.size(); i++) {
            CutPiece piece = pieces(fit).get(i);
            if (piece.grainRad().isPresent()) {
                List<Polyline> engraved = paths(drawings.get(i), Operation.ENGRAVE);
                assertArrow(
                        engraved.subList(engraved.size() - 3, engraved.size()),
                        piece,
                        middle(piece).add(shift(drawings.get(i), piece)));
            }
        }
    }

    private static Vector2D middle(CutPiece piece) {
        return piece.net().corners().stream()
                .reduce(Vector2D.ZERO, Vector2D::add)
                .scalarMultiply(1.0 / piece.net().size());
    }

    /** A line with a head of equal arms at either end, 60 mm long or a quarter of the piece's narrowest width. */
    private static void assertArrow(List<Polyline> lines, CutPiece piece, Vector2D middle) {
        double grain = piece.grainRad().orElseThrow();
        Vector2D along = new Vector2D(StrictMath.cos(grain), StrictMath.sin(grain));
        List<Vector2D> shaft = corners(lines.get(0));
        Vector2D whole = shaft.get(1).subtract(shaft.get(0));
        double length = Math.min(60, piece.net().narrowestWidth() / 4);
        assertThat(whole.distance(along.scalarMultiply(length))).isLessThan(SAME);
        assertThat(new Vector2D(0.5, shaft.get(0), 0.5, shaft.get(1)).distance(middle))
                .isLessThan(SAME);
        for (int end = 0; end < 2; end++) {
            List<Vector2D> head = corners(lines.get(1 + end));
            Vector2D tip = shaft.get(1 - end);
            Vector2D back = along.scalarMultiply((end == 0 ? -1 : 1) * length / 6);
            Vector2D aside = new Vector2D(-along.getY(), along.getX()).scalarMultiply(length / 6);
            assertThat(head).hasSize(3);
            assertThat(head.get(0).distance(tip.add(back).add(aside))).isLessThan(SAME);
            assertThat(head.get(1).distance(tip)).isLessThan(SAME);
            assertThat(head.get(2).distance(tip.add(back).subtract(aside))).isLessThan(SAME);
        }
    }

    /**
     * Chord factors of a 3V icosahedron as the trade prints them, 0.34862, 0.40355 and 0.41241 (common practice, no
     * source); by hand the altitude of P2 over its longest side of 1649.6 mm is 1423.0 mm wide at the foot of the two
     * others, P1's over 1614.2 mm is 1137.1 mm.
     */
    @Test
    void titlesAndDescriptionsCountAndMeasure() {
        List<Drawing> drawings = CoverPatterns.of(fit(3, 4000, NET), UnitSystem.METRIC);
        assertThat(drawings)
                .extracting(Drawing::title)
                .containsExactly("Cover net, P1, cut 30, with allowances", "Cover net, P2, cut 75, with allowances");
        assertThat(drawings.get(0).parts().get(0).mark()).isEqualTo("P1");
        double half = 4000 * 0.403548 / 2;
        double width = Math.sqrt(4000 * 0.348615 * 4000 * 0.348615 - half * half);
        String metric = UnitSystem.METRIC.length(width, 1);
        assertThat(drawings.get(0).parts().get(0).description())
                .isEqualTo("30 pieces, narrowest width " + metric + " net, " + metric + " cut");
        List<Drawing> imperial = CoverPatterns.of(fit(3, 4000, NET), UnitSystem.IMPERIAL);
        assertThat(imperial.get(0).parts().get(0).description())
                .isEqualTo("30 pieces, narrowest width 3' 8 3/4\" net, 3' 8 3/4\" cut");
    }

    /** By hand: the equilateral panel's altitude of 1000 mm √3/2 grows by three times the allowance. */
    @Test
    void theWidthThatIsCutHasTheAllowances() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), new Size(Size.Measure.LONGEST_STRUT, 1000));
        Patterns patterns = Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), CLOTH);
        Drawing drawing = CoverPatterns.of(CoverFit.of(patterns, List.of()), UnitSystem.METRIC)
                .get(0);
        assertThat(drawing.parts().get(0).description())
                .isEqualTo("20 pieces, narrowest width 866.0 mm net, 902.0 mm cut");
    }

    @Test
    void handsAndPartsAreNamed() {
        Drawing left = CoverPatterns.of(fit(4, 3000, NET), UnitSystem.METRIC).stream()
                .filter(drawing -> drawing.name().equals("panels/net-P3L"))
                .findFirst()
                .orElseThrow();
        assertThat(left.title()).isEqualTo("Cover net, P3L, cut 60, with allowances");
        assertThat(left.parts().get(0).description()).startsWith("left hand, 60 pieces, narrowest width ");
        Cover divided =
                Cover.of("cloth").with(Allowances.of(12, 12)).with(new Treatment(false, false, Splitting.SEAM, false));
        CoverFit fit = fit(3, 4000, divided, roll(1300));
        List<Drawing> parts = CoverPatterns.of(fit, UnitSystem.METRIC);
        assertThat(parts)
                .extracting(Drawing::name)
                .containsExactly("panels/cloth-P1", "panels/cloth-P2s1", "panels/cloth-P2s2");
        assertThat(parts.get(1).title()).isEqualTo("Cover cloth, P2s1, cut 75, with allowances");
        assertThat(parts.get(1).parts().get(0).mark()).isEqualTo("P2s1");
        assertThat(parts.get(0).parts().get(0).description()).startsWith("30 pieces, narrowest");
        // the lower part is as wide as the roll, and two allowances wider than it is when finished
        assertThat(parts.get(1).parts().get(0).description())
                .isEqualTo("part of P2, 75 pieces, narrowest width 1276.0 mm net, 1300.0 mm cut");
    }
}
