package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Placed;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class LetteringTest {

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double MARGIN = 2 - 1e-9;

    private static final CoverPlan PLAN = plan();

    /** Patterns of every sort, and sheets on which pieces lie turned, face up and face down, whole and in parts. */
    private static final List<Drawing> DRAWINGS = Stream.of(
                    CoverPatternsTest.covers().stream()
                            .flatMap(fit -> CoverPatterns.of(fit, UnitSystem.METRIC).stream()),
                    CoverSheets.of(PLAN, UnitSystem.METRIC).stream(),
                    CoverSheets.of(turnedOver(PLAN), UnitSystem.METRIC).stream())
            .flatMap(drawings -> drawings)
            .toList();

    static List<Drawing> drawings() {
        return DRAWINGS;
    }

    /** Holes closer to the edges than usual, and pieces too wide for the sheet. */
    private static CoverPlan plan() {
        Cover cover = Cover.of("board")
                .with(Allowances.of(-2, 0).withHubRelief(20))
                .with(new Fasteners(4, 8, 60))
                .with(new Treatment(true, false, Splitting.SEAM, true));
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(500))
                .withKeep(new Keep.Rows(1, 2));
        Patterns patterns = Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), cover);
        CoverFit fit = CoverFit.of(patterns, List.of(new Sheet(1500, 245, 0, Terms.OPEN)));
        return CoverPlan.of(fit, new Layout(3, 0, 1)).orElseThrow();
    }

    private static CoverPlan turnedOver(CoverPlan plan) {
        List<CutSheet> sheets = plan.plan().sheets().stream()
                .map(sheet -> new CutSheet(
                        sheet.stock(),
                        sheet.lengthMm(),
                        sheet.widthMm(),
                        sheet.parts().stream().map(LetteringTest::turnedOver).toList(),
                        sheet.offcuts()))
                .toList();
        return new CoverPlan(plan.fit(), new CutPlan(sheets, plan.plan().goal()), plan.panels());
    }

    private static Placed turnedOver(Placed placed) {
        return new Placed(
                placed.mark(), placed.xMm(), placed.yMm(), placed.turnRad(), !placed.mirrored(), placed.outline());
    }

    private static List<Polyline> engraved(Part part) {
        return part.shapes().stream()
                .filter(shape -> shape.operation() == Operation.ENGRAVE && shape instanceof Polyline)
                .map(Polyline.class::cast)
                .toList();
    }

    private static Coordinate[] places(Polyline path) {
        return Stream.iterate(0, i -> i < path.size() + (path.isClosed() ? 1 : 0), i -> i + 1)
                .map(i -> new Coordinate(path.x(i % path.size()), path.y(i % path.size())))
                .toArray(Coordinate[]::new);
    }

    private static Geometry geometry(Shape shape) {
        if (shape instanceof Circle circle) {
            return JTS.createPoint(new Coordinate(circle.xMm(), circle.yMm())).buffer(circle.radiusMm(), 32);
        }
        Polyline path = (Polyline) shape;
        return path.isClosed() ? JTS.createPolygon(places(path)) : JTS.createLineString(places(path));
    }

    private static Geometry strokes(List<Polyline> paths) {
        return JTS.createMultiLineString(
                paths.stream().map(LetteringTest::geometry).toArray(LineString[]::new));
    }

    private static Polygon cut(Part part) {
        return (Polygon) part.shapes().stream()
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .map(LetteringTest::geometry)
                .findFirst()
                .orElseThrow();
    }

    /** What is engraved but ends on an outline is a notch. */
    private static boolean isNotch(Polyline path, Part part) {
        Geometry line = geometry(path);
        return path.size() == 2
                && part.shapes().stream()
                        .filter(shape -> shape instanceof Polyline outline && outline.isClosed())
                        .anyMatch(outline -> geometry(outline).getBoundary().distance(line) < 1e-6);
    }

    /** An arrow's shaft is the only line that runs into two others at both of its ends; its three lines come last. */
    private static int arrow(List<Polyline> engraved) {
        Polyline last = engraved.get(engraved.size() - 1);
        Polyline shaft = engraved.get(Math.max(0, engraved.size() - 3));
        return last.size() == 3 && Math.abs(last.x(1) - shaft.x(0)) + Math.abs(last.y(1) - shaft.y(0)) < 1e-6 ? 3 : 0;
    }

    static List<Polyline> letters(Part part) {
        List<Polyline> engraved = engraved(part);
        return engraved.subList(0, engraved.size() - arrow(engraved)).stream()
                .filter(path -> !isNotch(path, part))
                .toList();
    }

    private static List<Part> pieces(Drawing drawing) {
        return drawing.parts().stream()
                .filter(part -> part.shapes().stream().anyMatch(s -> s.operation() == Operation.CUT_OUTER))
                .toList();
    }

    /** The net line is drawn on patterns; on sheets only where it lies inside the piece. */
    @ParameterizedTest
    @MethodSource("drawings")
    void everyLetterLiesInsideTheOutlinesOfItsPiece(Drawing drawing) {
        for (Part part : pieces(drawing)) {
            Geometry letters = strokes(letters(part));
            List<Geometry> outlines = new ArrayList<>(List.of(cut(part)));
            part.shapes().stream()
                    .filter(shape -> shape instanceof Polyline path && path.isClosed())
                    .map(LetteringTest::geometry)
                    .forEach(outlines::add);
            assertThat(letters(part)).as(part.mark()).isNotEmpty();
            for (Geometry outline : outlines) {
                assertThat(outline.contains(letters)).as(part.mark()).isTrue();
                assertThat(outline.getBoundary().distance(letters)).isGreaterThan(MARGIN);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void everyLetterIsClearOfHolesNotchesAndArrows(Drawing drawing) {
        for (Part part : pieces(drawing)) {
            Geometry letters = strokes(letters(part));
            List<Polyline> engraved = engraved(part);
            Stream<Shape> others = Stream.of(
                            part.shapes().stream().filter(shape -> shape instanceof Circle),
                            engraved.stream().filter(path -> isNotch(path, part)),
                            engraved.subList(engraved.size() - arrow(engraved), engraved.size()).stream())
                    .flatMap(shapes -> shapes);
            others.forEach(
                    other -> assertThat(geometry(other).distance(letters)).isGreaterThan(MARGIN));
        }
    }

    /** The first stroke of a P runs round its bowl clockwise; of its mirror image it would not. */
    @Test
    void lettersOfPiecesThatLieFaceDownCanBeRead() {
        int faceDown = 0;
        for (Drawing drawing : CoverSheets.of(turnedOver(PLAN), UnitSystem.METRIC)) {
            for (Part part : pieces(drawing)) {
                Polyline p = letters(part).get(0);
                assertThat(p.size()).isEqualTo(9);
                double twice = 0;
                for (int i = 0; i < p.size(); i++) {
                    int next = (i + 1) % p.size();
                    twice += p.x(i) * p.y(next) - p.x(next) * p.y(i);
                }
                assertThat(twice).isNegative();
                faceDown += part.description().contains(", face down") ? 1 : 0;
            }
        }
        assertThat(faceDown).isPositive();
    }

    /** I has straight strokes only, O comes back to where it began. */
    @Test
    void theFaceThatIsUpIsWritten() {
        for (Drawing drawing :
                DRAWINGS.subList(DRAWINGS.size() - 2 * PLAN.plan().sheets().size(), DRAWINGS.size())) {
            for (Part part : pieces(drawing)) {
                int before = size(part.mark()) + size("row " + part.mark().replaceAll(".*-|\\..*", ""));
                boolean down = part.description().contains(", face down");
                assertThat(letters(part).get(before).size()).isEqualTo(down ? 2 : 17);
            }
        }
    }

    private static int size(String text) {
        return StrokeText.of(text, 1).left(0, 0, 0).size();
    }

    /** Of a divided panel the parts name one another, and the pieces on their sides of the seam the neighbours. */
    @Test
    void everyPartNamesWhatLiesAlongItsSides() {
        int seams = 0;
        for (Drawing drawing : CoverSheets.of(PLAN, UnitSystem.METRIC)) {
            for (Part part : pieces(drawing)) {
                assertThat(part.description()).doesNotContain("without room");
                seams += part.mark().matches(".*s[0-9]") ? 1 : 0;
            }
        }
        assertThat(seams).isPositive();
    }

    private static Part square(double side, List<Shape> shapes, double height) {
        Vertical lines = new Vertical(side / 2, height);
        Polyline outline = Polyline.closed(Operation.CUT_OUTER, 0, 0, side, 0, side, side, 0, side);
        List<Shape> all = Stream.concat(shapes.stream(), Stream.of(outline)).toList();
        return Lettering.on(
                new Part("Q", "A square", all),
                List.of(ConvexPolygon.of(0, 0, side, 0, side, side, 0, side)),
                List.of(lines.label("I", 1), lines.label("H", 0), lines.label("T", -1)));
    }

    /** Lines through the middle of a square, as far apart as those of a piece. */
    private record Vertical(double middle, double height) {
        Label label(String text, int above) {
            return new Label(text, middle, middle + above * 1.6 * height, 0, height);
        }
    }

    private static double heightOf(Part part) {
        return engraved(part).stream()
                .mapToDouble(path -> Math.abs(path.y(0) - path.y(path.size() - 1)))
                .max()
                .orElse(0);
    }

    /**
     * By hand: three lines need 4.2 heights and two margins of 2 mm, two lines 2.6 and one line 1; letters become smaller
     * by fifths and not below 2.5 mm. Wider than that no line of one letter is.
     */
    @ParameterizedTest
    @CsvSource({
        "33.5, 7, 8, ''",
        "33.3, 5.6, 8, ''",
        "14.6, 2.5, 8, ''",
        "14.4, 3.584, 6, ', without room for T'",
        "10.6, 2.5, 6, ', without room for T'",
        "10.4, 5.6, 3, ', without room for H, T'",
        "6.6, 2.5, 3, ', without room for H, T'",
        "6.4, 0, 0, ', without room for I, H, T'"
    })
    void lettersShrinkAndAreThenLeftOut(double side, double height, int strokes, String leftOut) {
        Part part = square(side, List.of(), 7);
        assertThat(heightOf(part)).isCloseTo(height, within(1e-9));
        assertThat(engraved(part)).hasSize(strokes);
        assertThat(part.description()).isEqualTo("A square" + leftOut);
        assertThat(square(side, List.of(), 1).description()).isEqualTo("A square" + leftOut);
    }

    /** A hole in the middle: the lines stay together and move aside, no further than they must and by whole steps. */
    @Test
    void linesMoveAside() {
        Part part = square(100, List.of(new Circle(Operation.DRILL, 50, 50, 4)), 5);
        Geometry letters = strokes(engraved(part));
        Geometry hole = geometry(new Circle(Operation.DRILL, 50, 50, 4));
        assertThat(letters.distance(hole)).isBetween(2 - 1e-2, 2 + 0.75 * 5);
        assertThat(letters.getEnvelopeInternal().getHeight()).isCloseTo(4.2 * 5, within(1e-9));
    }

    @Test
    void whatIsNotWorkedIsNotInTheWay() {
        Circle reference = new Circle(Operation.REF, 50, 50, 4);
        Part part = square(100, List.of(reference), 5);
        assertThat(strokes(engraved(part)).getEnvelopeInternal().centre().distance(new Coordinate(50, 50)))
                .isLessThan(1e-9);
    }
}
