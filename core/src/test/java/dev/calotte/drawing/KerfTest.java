package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class KerfTest {

    private static final BufferParameters MITRED =
            new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 1000);

    private static Drawing drawing(Shape... shapes) {
        return new Drawing("panels/P1", "Panel P1", 200, 200, List.of(new Part("P1", "by hand", List.of(shapes))));
    }

    private static Shape moved(Shape shape, double kerf) {
        return new Kerf(kerf).of(drawing(shape)).parts().get(0).shapes().get(0);
    }

    private static void assertIsBuffer(Polyline path, Polyline moved, double by, double slack) {
        Geometry expected = BufferOp.bufferOp(Flattened.of(path), by, MITRED);
        Geometry is = Flattened.of(moved);
        assertThat(is.isValid()).isTrue();
        assertThat(DiscreteHausdorffDistance.distance(is, expected)).isLessThan(slack);
        assertThat(is.symDifference(expected).getArea()).isLessThan(slack * expected.getLength());
    }

    /** JTS leaves the mitre out where two sides turn by less than a twentieth of a radian; such hulls are passed over. */
    private static double[] convex(Random random) {
        while (true) {
            ConvexPolygon hull = ConvexPolygon.round(IntStream.range(0, 3 + random.nextInt(9))
                    .mapToObj(i -> new Vector2D(200 * random.nextDouble(), 200 * random.nextDouble()))
                    .toList());
            if (IntStream.range(0, hull.size())
                    .allMatch(side -> hull.outward(side).distance(hull.outward((side + 1) % hull.size())) > 0.06)) {
                return hull.corners().stream()
                        .flatMapToDouble(corner -> DoubleStream.of(corner.getX(), corner.getY()))
                        .toArray();
            }
        }
    }

    private static double[] reversed(double[] xy) {
        double[] reversed = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            reversed[i] = xy[xy.length - 2 - i];
            reversed[i + 1] = xy[xy.length - 1 - i];
        }
        return reversed;
    }

    /** What JTS calls a mitred buffer, by an algorithm of its own. A fixed seed names the case. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void outlinesGrowAndOpeningsShrinkByHalfTheKerf(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double[] xy = convex(random);
            double kerf = 0.02 + 0.3 * random.nextDouble();
            Polyline outer = Polyline.closed(Operation.CUT_OUTER, xy);
            assertIsBuffer(outer, (Polyline) moved(outer, kerf), kerf / 2, 1e-6);
            Polyline inner = Polyline.closed(Operation.CUT_INNER, reversed(xy));
            if (BufferOp.bufferOp(Flattened.of(inner), -1, MITRED).getNumPoints()
                    == Flattened.of(inner).getNumPoints()) {
                assertIsBuffer(inner, (Polyline) moved(inner, kerf), -kerf / 2, 1e-6);
            }
        }
    }

    @Test
    void hollowOutlinesToo() {
        Polyline comb =
                Polyline.closed(Operation.CUT_OUTER, 0, 0, 50, 0, 50, 30, 32, 30, 30, 12, 25, 10, 22, 30, 0, 30);
        assertIsBuffer(comb, (Polyline) moved(comb, 1), 0.5, 1e-6);
    }

    @Test
    void circlesGrowRoundPartsAndShrinkInThem() {
        assertThat(moved(new Circle(Operation.CUT_OUTER, 5, 6, 3), 0.2))
                .isEqualTo(new Circle(Operation.CUT_OUTER, 5, 6, 3.1));
        assertThat(moved(new Circle(Operation.CUT_INNER, 5, 6, 3), 0.2))
                .isEqualTo(new Circle(Operation.CUT_INNER, 5, 6, 2.9));
        assertThat(moved(new Circle(Operation.DRILL, 5, 6, 3), 0.2)).isEqualTo(new Circle(Operation.DRILL, 5, 6, 2.9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ENGRAVE", "SCORE", "REF", "SHEET"})
    void nothingElseMoves(Operation operation) {
        Polyline path = Polyline.closed(operation, 0, 0, 10, 0, 5, 8);
        assertThat(moved(path, 0.2)).isSameAs(path);
        Circle dot = new Circle(operation, 5, 5, 1);
        assertThat(moved(dot, 0.2)).isSameAs(dot);
    }

    @Test
    void nameAndTitleSayIt() {
        Drawing drawing = new Kerf(0.15).of(drawing(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8)));
        assertThat(drawing.name()).isEqualTo("panels/P1-kerf0.15");
        assertThat(drawing.title()).isEqualTo("Panel P1, cut lines moved by half of 0.15 mm kerf");
        assertThat(drawing.parts().get(0).description()).isEqualTo("by hand");
        assertThat(drawing.widthMm()).isEqualTo(200);
    }

    /** Plates with square and with round slots: arcs keep their centres, radii and walls move by half the kerf. */
    @ParameterizedTest
    @CsvSource({"2, 0, 0.2", "2, 2, 0.3", "7, 6, 1"})
    void arcsStayArcs(double slot, double cutter, double kerf) {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)));
        HubPlate plate = HubPlate.of(140, 10, 100).withSlot(slot).withCutter(cutter);
        for (Drawing net : HubPlates.of(Parts.of(dome, Joinery.gap(35).withHubPlate(plate)))) {
            Polyline path = outline(net);
            Polyline moved = outline(new Kerf(kerf).of(net));
            assertIsBuffer(path, moved, kerf / 2, 0.02);
            assertThat(moved.size()).isEqualTo(path.size());
            for (int corner = 0; corner < path.size(); corner++) {
                assertThat(moved.arc(corner).isPresent())
                        .isEqualTo(path.arc(corner).isPresent());
                if (path.arc(corner).isPresent()) {
                    Arc was = path.arc(corner).get();
                    Arc is = moved.arc(corner).get();
                    double by = Math.signum(was.sweepRad()) * kerf / 2;
                    assertThat(is.radiusMm()).isCloseTo(was.radiusMm() + by, within(1e-8));
                    assertThat(is.xMm()).isCloseTo(was.xMm(), within(1e-8));
                    assertThat(is.yMm()).isCloseTo(was.yMm(), within(1e-8));
                }
            }
        }
    }

    private static Polyline outline(Drawing drawing) {
        return drawing.parts().get(0).shapes().stream()
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .map(Polyline.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Two arcs that meet at a corner: a lens of two circles of radius 10, their centres 12 apart. */
    @Test
    void arcsMeetWhereTheirMovedCirclesCross() {
        double bulge = Math.tan(Math.acos(0.6) / 2);
        Polyline lens =
                Polyline.closed(Operation.CUT_OUTER, new double[] {20, 12, 20, 28, 18, 20}, new double[] {bulge, 0, 0});
        Polyline both = Polyline.closed(Operation.CUT_OUTER, new double[] {20, 12, 24, 20, 20, 28}, new double[] {
            Math.tan(Math.acos(0.6) / 4), Math.tan(Math.acos(0.6) / 4), bulge
        });
        Polyline moved = (Polyline) moved(both, 1);
        // by hand: circles of radius 10.5 round (14, 20) and (26, 20) cross 6 from the line of their centres
        double high = Math.sqrt(10.5 * 10.5 - 36);
        assertThat(moved.x(0)).isCloseTo(20, within(1e-9));
        assertThat(moved.y(0)).isCloseTo(20 - high, within(1e-9));
        assertThat(moved.x(1)).isCloseTo(24.5, within(1e-9));
        assertThat(moved.y(2)).isCloseTo(20 + high, within(1e-9));
        assertIsBuffer(lens, (Polyline) moved(lens, 0.4), 0.2, 0.02);
    }

    /** A slot of 1 mm, a hole, a wedge, a notch with a narrow mouth and a round end are used up by a cut of 2 mm and more. */
    @Test
    void whatIsUsedUpIsRefused() {
        refused(Polyline.closed(Operation.CUT_OUTER, 0, 0, 50, 0, 50, 30, 26, 30, 26, 10, 25, 10, 25, 30, 0, 30), 1.2);
        refused(new Circle(Operation.DRILL, 5, 5, 1), 2);
        refused(Polyline.closed(Operation.CUT_INNER, 0, 0, 0, 1, 30, 0), 2);
        refused(
                Polyline.closed(
                        Operation.CUT_OUTER,
                        0,
                        0,
                        50,
                        0,
                        50,
                        30,
                        26,
                        30,
                        26,
                        25,
                        35,
                        20,
                        35,
                        10,
                        15,
                        10,
                        15,
                        20,
                        25,
                        25,
                        25,
                        30,
                        0,
                        30),
                1.2);
        refused(
                Polyline.closed(
                        Operation.CUT_OUTER,
                        new double[] {0, 0, 50, 0, 50, 30, 26, 30, 26, 10, 25, 10, 25, 30, 0, 30},
                        new double[] {0, 0, 0, 0, -1, 0, 0, 0}),
                1.2);
    }

    private static void refused(Shape shape, double kerf) {
        assertThatThrownBy(() -> moved(shape, kerf))
                .isInstanceOf(CalotteException.class)
                .hasMessageContaining(
                        "output.kerf: a cut line of P1 vanishes or crosses itself when it is moved by half of")
                .hasMessageContaining("Use a smaller kerf");
        assertThat(moved(shape, 0.2)).isNotNull();
    }

    @Test
    void aCutLineHasAWasteSide() {
        assertThatThrownBy(() -> moved(Polyline.open(Operation.CUT_OUTER, 0, 0, 1, 1), 0.2))
                .isInstanceOf(IllegalArgumentException.class);
        for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Kerf(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    private static Polyline outline(Drawing drawing, String mark) {
        return drawing.parts().stream()
                .filter(part -> part.mark().equals(mark))
                .flatMap(part -> part.shapes().stream())
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .map(Polyline.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** A tool that takes away a kerf of 0.3 mm along the moved lines leaves a tongue and a slot of 3 mm: they fit. */
    @Test
    void theCouponFitsIfTheKerfIsRight() {
        Polyline tongue = outline(KerfCoupon.drawing(), "TONGUE");
        Polyline moved = outline(new Kerf(0.3).of(KerfCoupon.drawing()), "TONGUE");
        assertThat(tongue.y(4) - tongue.y(3)).isCloseTo(3, within(1e-9));
        assertThat(moved.y(4) - moved.y(3)).isCloseTo(3.3, within(1e-9));
        Polyline comb = outline(KerfCoupon.drawing(), "COMB");
        Polyline narrower = outline(new Kerf(0.3).of(KerfCoupon.drawing()), "COMB");
        for (int slot = 0; slot < 9; slot++) {
            int corner = 3 + 4 * slot;
            double width = 3.2 - 0.05 * slot;
            assertThat(comb.x(corner) - comb.x(corner + 3)).isCloseTo(width, within(1e-9));
            assertThat(narrower.x(corner) - narrower.x(corner + 3)).isCloseTo(width - 0.3, within(1e-9));
        }
        Polyline square = outline(KerfCoupon.drawing(), "SQUARE");
        assertThat(square.x(1) - square.x(0)).isEqualTo(20);
    }

    @Test
    void theCouponIsEngravedWithItsSizes() {
        Drawing coupon = KerfCoupon.drawing();
        for (Part part : coupon.parts()) {
            List<Shape> engraved = part.shapes().stream()
                    .filter(shape -> shape.operation() == Operation.ENGRAVE)
                    .toList();
            for (Shape stroke : engraved) {
                assertThat(Flattened.of(outline(coupon, part.mark())).contains(Flattened.line((Polyline) stroke)))
                        .isTrue();
            }
        }
        Polyline first = (Polyline) coupon.parts().get(0).shapes().get(0);
        Polyline expected =
                StrokeText.of("3.20", 2.5).middle(first.x(0), first.y(0), 0).get(0);
        assertThat(first.size()).isEqualTo(expected.size());
        assertThat(coupon.parts().get(0).shapes().stream()
                        .filter(shape -> shape.operation() == Operation.ENGRAVE)
                        .count())
                .isEqualTo(List.of("3.20", "3.15", "3.10", "3.05", "3.00", "2.95", "2.90", "2.85", "2.80").stream()
                        .mapToLong(text -> StrokeText.of(text, 1).left(0, 0, 0).size())
                        .sum());
    }
}
