package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.RectangleFit;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Parts as large as the stock can hold, and up to a millionth of a millimetre larger. */
class TouchingTest {

    private static final double LENGTH = 2440;
    private static final double WIDTH = 1220;
    private static final double MARGIN = 10;
    private static final double TOUCHING = 1e-6;

    /** A triangle, or one that lost a corner as a panel does that a seam divides. */
    private static ConvexPolygon shape(Random random) {
        double[] xy = new double[6];
        for (int c = 0; c < 3; c++) {
            double angle = 2 * Math.PI * (c + 0.7 * random.nextDouble()) / 3;
            xy[2 * c] = Math.cos(angle);
            xy[2 * c + 1] = Math.sin(angle);
        }
        if (random.nextBoolean()) {
            return ConvexPolygon.of(xy);
        }
        double share = 0.3 + 0.5 * random.nextDouble();
        double ux = xy[0] + share * (xy[4] - xy[0]);
        double uy = xy[1] + share * (xy[5] - xy[1]);
        double vx = xy[2] + share * (xy[4] - xy[2]);
        double vy = xy[3] + share * (xy[5] - xy[3]);
        return ConvexPolygon.of(xy[0], xy[1], xy[2], xy[3], vx, vy, ux, uy);
    }

    private static ConvexPolygon scaled(ConvexPolygon shape, double factor) {
        double[] xy = new double[2 * shape.size()];
        for (int c = 0; c < shape.size(); c++) {
            xy[2 * c] = factor * shape.x(c);
            xy[2 * c + 1] = factor * shape.y(c);
        }
        return ConvexPolygon.of(xy);
    }

    /** The largest that lacks no more than so much; at 0 it just touches. */
    private static ConvexPolygon lacking(ConvexPolygon shape, OptionalDouble grain, double length, double mm) {
        double factor = 0;
        double step = 4 * LENGTH;
        for (int halving = 0; halving < 80; halving++) {
            step /= 2;
            if (over(scaled(shape, factor + step), grain, length) <= mm) {
                factor += step;
            }
        }
        return scaled(shape, factor);
    }

    private static double over(ConvexPolygon shape, OptionalDouble grain, double length) {
        double width = WIDTH - 2 * MARGIN;
        if (grain.isPresent()) {
            double cos = Math.cos(grain.getAsDouble());
            double sin = Math.sin(grain.getAsDouble());
            return Math.max(
                    shape.extent(new Vector2D(cos, sin)) - length, shape.extent(new Vector2D(-sin, cos)) - width);
        }
        return Double.isInfinite(length)
                ? shape.narrowestWidth() - width
                : RectangleFit.shortfall(shape, length, width);
    }

    private static void laid(Random random, Stock stock, double length, OptionalDouble grain) {
        double over = 0.9 * TOUCHING * random.nextInt(2);
        ConvexPolygon first = lacking(shape(random), grain, length, over);
        ConvexPolygon second = lacking(shape(random), grain, length, TOUCHING - over);
        List<Piece> pieces = List.of(
                new Piece("A", first, 2, random.nextBoolean(), grain),
                new Piece("B", second, 1, false, grain),
                new Piece("C", scaled(second, 0.3), 2, true, grain));
        double spacing = 3 * random.nextInt(2);
        for (int steps : new int[] {0, 60}) {
            CutPlan plan = SheetPlan.of(pieces, List.of(stock), new Layout(spacing, steps, 1));
            PlanCheck.check(plan, pieces, spacing);
        }
    }

    private static OptionalDouble grain(Random random) {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(6 * random.nextDouble());
    }

    @Test
    void whatTouchesTheEdgesOfASheetIsLaid() {
        Sheet sheet = new Sheet(LENGTH, WIDTH, MARGIN, Terms.OPEN);
        Cases.each(40, (random, size) -> laid(random, sheet, LENGTH - 2 * MARGIN, grain(random)));
    }

    @Test
    void whatTouchesTheEdgesOfARollIsLaid() {
        Roll endless = new Roll(WIDTH, MARGIN, OptionalDouble.empty(), Terms.OPEN);
        Cases.each(20, (random, size) -> laid(random, endless, Double.POSITIVE_INFINITY, grain(random)));
    }

    /** Of a roll no longer than a part, one length is taken for each. */
    @Test
    void whatTouchesTheEndsOfAShortRollIsLaid() {
        Roll roll = new Roll(WIDTH, MARGIN, OptionalDouble.of(LENGTH), Terms.OPEN);
        Cases.each(20, (random, size) -> laid(random, roll, LENGTH - 2 * MARGIN, grain(random)));
    }

    /** The bound for touching is a millionth of a millimetre; there is no part in between. */
    @Test
    void whatIsLargerThanTouchingIsRefused() {
        Sheet sheet = new Sheet(LENGTH, WIDTH, MARGIN, Terms.OPEN);
        Cases.each(10, (random, size) -> {
            OptionalDouble grain = grain(random);
            ConvexPolygon shape = lacking(shape(random), grain, LENGTH - 2 * MARGIN, 3 * TOUCHING);
            List<Piece> pieces = List.of(new Piece("A", shape, 1, false, grain));
            assertThatThrownBy(() -> SheetPlan.of(pieces, List.of(sheet), new Layout(0, 0, 1)))
                    .isInstanceOf(CalotteException.class)
                    .hasMessageContaining("part A is 0.1 mm too large");
        });
    }

    /** Computed by hand here: 20 wide along the diagonal of 1414 mm, beside each other on one sheet. */
    @Test
    void slantedPartsShareASheetInTheFirstPlan() {
        ConvexPolygon strip = ConvexPolygon.of(0, 0, 1300, 0, 1300, 20, 0, 20);
        List<Piece> pieces = List.of(new Piece("A", strip, 2, false, OptionalDouble.empty()));
        CutPlan plan = SheetPlan.of(pieces, List.of(new Sheet(1000, 1000, 0, Terms.OPEN)), new Layout(3, 0, 1));
        PlanCheck.check(plan, pieces, 3);
        assertThat(plan.sheets()).hasSize(1);
    }

    /** Computed by hand here: two that fill a sheet together, a little too wide each. */
    @Test
    void patternsThatTouchCount() {
        ConvexPolygon half = ConvexPolygon.of(0, 0, 1000 + 9e-7, 0, 1000 + 9e-7, 500, 0, 500);
        for (OptionalDouble grain : List.of(OptionalDouble.of(0), OptionalDouble.empty())) {
            List<Piece> pieces = List.of(new Piece("A", half, 4, false, grain));
            Sheet sheet = new Sheet(1000, 1000, 0, Terms.OPEN);
            CutPlan plan = SheetPlan.of(pieces, List.of(sheet), new Layout(0, 100, 1));
            PlanCheck.check(plan, pieces, 0);
            assertThat(plan.goal().reached()).isEqualTo(2);
            assertThat(plan.goal().bound()).isEqualTo(2);
        }
    }
}
