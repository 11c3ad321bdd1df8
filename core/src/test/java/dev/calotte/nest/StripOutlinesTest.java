package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.geometry.Polygon;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Parts as wide as an irregular outline, counted by dividing. */
class StripOutlinesTest {

    /** An outline with a point beyond 700 mm, which no strip reaches into: it holds three of 200, a sheet of 1000 four. */
    private static Outline outline(double price, int have) {
        Polygon border =
                Polygon.of(0, 0, 700, 0, 730, StripsTest.WIDTH / 2, 700, StripsTest.WIDTH, 0, StripsTest.WIDTH);
        return new Outline("o", border, 0, StripsTest.terms(price, OptionalInt.of(have)));
    }

    @Test
    void soManyOutlinesAreBoughtAsSaveMost() {
        Cases.each(40, (random, size) -> {
            int count = 1 + random.nextInt(16);
            int have = 1 + random.nextInt(4);
            int outline = 1 + random.nextInt(9);
            int sheet = 6 + random.nextInt(5);
            int least = Integer.MAX_VALUE;
            for (int n = 0; n <= have; n++) {
                least = Math.min(least, n * outline + sheet * ((Math.max(0, count - 3 * n) + 3) / 4));
            }
            List<Piece> strips = List.of(StripsTest.strip("A", 200, count));
            List<Stock> stocks = List.of(
                    outline(outline, have),
                    new Sheet(1000, StripsTest.WIDTH, 0, StripsTest.terms(sheet, OptionalInt.empty())));
            CutPlan plan = SheetPlan.of(strips, stocks, StripsTest.FIRST);
            PlanCheck.check(plan, strips, StripsTest.SPACING);
            assertThat(plan.goal().reached()).isEqualTo(least);
        });
    }

    @Test
    void outlinesThatCostNothingAreUsedUpFirst() {
        Cases.each(24, (random, size) -> {
            int count = 1 + random.nextInt(16);
            int have = 1 + random.nextInt(4);
            List<Piece> strips = List.of(StripsTest.strip("A", 200, count));
            List<Stock> stocks = List.of(new Sheet(1000, StripsTest.WIDTH, 0, Terms.OPEN), outline(0, have));
            CutPlan plan = SheetPlan.of(strips, stocks, StripsTest.FIRST);
            PlanCheck.check(plan, strips, StripsTest.SPACING);
            int sheets = (Math.max(0, count - 3 * have) + 3) / 4;
            assertThat(plan.goal().reached()).isEqualTo(sheets);
            assertThat(plan.sheets()).hasSize(sheets + Math.min(have, (count + 2) / 3));
            if (sheets > 0) {
                assertThatThrownBy(() -> SheetPlan.of(strips, stocks.subList(1, 2), StripsTest.FIRST))
                        .isInstanceOf(CalotteException.class)
                        .hasMessageContaining(": " + (count - 3 * have) + " find no room on the irregular outlines");
            }
        });
    }

    private static double filled(int steps, int[] counts, double... lengths) {
        List<Piece> strips = new ArrayList<>();
        for (int kind = 0; kind < lengths.length; kind++) {
            strips.add(StripsTest.strip("P" + kind, lengths[kind], counts[kind]));
        }
        Kinds kinds = new Kinds(strips);
        OutlineFilling filling = new OutlineFilling(
                kinds, Field.of(0, outline(0, 1)), StripsTest.FIRST.withSteps(steps), kinds.needed());
        double sum = 0;
        for (Spot spot : filling.fill(List.of(Manner.ANY)).spots()) {
            sum += lengths[spot.kind()];
        }
        assertThat(filling.steps()).isGreaterThanOrEqualTo(Math.min(2, steps));
        return sum;
    }

    /** By hand, in 700 mm with 10 between: by falling size 450 and 230, or 400 and 220; by rising size 600, or 660. */
    @Test
    void anOutlineIsCoveredAsFarAsOrdersBySizeGo() {
        assertThat(filled(0, new int[] {2, 1, 3}, 230, 450, 200)).isEqualTo(680);
        assertThat(filled(0, new int[] {2, 3}, 400, 220)).isEqualTo(660);
        assertThat(filled(0, new int[] {1, 3}, 800, 220)).isEqualTo(660);
        assertThat(filled(0, new int[] {1, 1}, 800, 750)).isZero();
    }

    /** By hand: 500 and 150 by falling size, 150 and 340 by rising size; two of 340 and the gap are 690. */
    @Test
    void ordersLeftToChanceCoverMoreOfAnOutline() {
        assertThat(filled(0, new int[] {1, 2, 1}, 500, 340, 150)).isEqualTo(650);
        assertThat(filled(300, new int[] {1, 2, 1}, 500, 340, 150)).isEqualTo(680);
    }

    /** By hand: of all strips two of 345 cover most of the outline's 700 mm; the rest saves a sheet by patterns. */
    @Test
    void stepsGoToOutlinesAndToWhatTheyLeave() {
        List<Piece> strips = new ArrayList<>(StripsTest.oddStrips());
        strips.add(StripsTest.strip("C", 345, 2));
        Sheet sheet = new Sheet(1000, StripsTest.WIDTH, 0, Terms.OPEN);
        assertThat(StripsTest.reached(strips, 0, outline(0, 1), sheet)).isEqualTo(3);
        assertThat(StripsTest.reached(strips, 600, outline(0, 1), sheet)).isEqualTo(2);
    }

    @Test
    void whatIsTooLargeForOutlinesAndSheetsIsNamed() {
        List<Piece> strips = List.of(StripsTest.strip("A", 200, 2), StripsTest.strip("B", 1200, 1));
        assertThatThrownBy(() -> StripsTest.reached(strips, 0, outline(0, 1), new Sheet(1000, 300, 0, Terms.OPEN)))
                .hasMessageContaining("part B is 200.0 mm too large for every sheet and roll");
    }
}
