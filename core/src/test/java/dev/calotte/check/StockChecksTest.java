package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedSteps.Own;
import dev.calotte.check.RecordedSteps.Step;
import dev.calotte.check.RecordedSupply.Goal;
import dev.calotte.check.RecordedSupply.Line;
import dev.calotte.check.RecordedSupply.Used;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two sheets of one stock and a length of roll, and what they cost. */
class StockChecksTest {

    private static final List<Used> USED = List.of(
            new Used(0, "", 2000, 1000, 5, 2e6, 1e6),
            new Used(0, "", 2000, 1000, 5, 2e6, 1e6),
            new Used(2, "", 3000, 500, 5, 1.5e6, 0.75e6));
    private static final List<Line> LINES =
            List.of(new Line("sheet", "skin", 2, 2000, 1000, 30), new Line("roll", "skin", 3, Double.NaN, 500, 4));

    private static List<String> found(int count, double share, Goal goal, List<Used> used) {
        return Found.by(
                findings -> SupplyCheck.of(new RecordedSupply("skin plan", count, share, goal, used, LINES), findings));
    }

    @ParameterizedTest
    @CsvSource({"price, 72", "area2, 5.5e6", "pieces, 3"})
    void nothingIsFoundWhereAllIsRight(String measure, double spent) {
        assertThat(found(3, 0.5, new Goal(measure, spent, spent / 2, false, "area"), USED))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0.5, price, 72, 50, false, area, stockUsed",
        "3, 0.6, price, 72, 50, false, area, utilisation",
        "3, 0.5, money, 5500000, 50, false, area, measure",
        "3, 0.5, price, 71, 50, false, area, spent",
        "3, 0.5, price, 72, 72, false, area, proven",
        "3, 0.5, price, 72, 71, true, area, proven",
        "3, 0.5, price, 72, 50, false, faith, proof"
    })
    void oneWrongValueIsFound(
            int count,
            double share,
            String measure,
            double spent,
            double bound,
            boolean proven,
            String proof,
            String key) {
        assertThat(found(count, share, new Goal(measure, spent, bound, proven, proof), USED))
                .containsExactly("DIFFERENT skin plan." + key);
    }

    @Test
    void aSheetOfAnotherStockIsFound() {
        Goal goal = new Goal("price", 72, 50, false, "area");
        assertThat(found(3, 0.5, goal, Found.changed(USED, 1, u -> new Used(1, "", 2000, 1000, 5, 2e6, 1e6))))
                .containsExactly("DIFFERENT skin plan.sheets");
        assertThat(found(3, 0.5, goal, Found.changed(USED, 1, u -> new Used(0, "", 2000, 900, 5, 2e6, 1e6))))
                .containsExactly("DIFFERENT skin plan.stock 0");
    }

    private static List<String> steps(Step... smaller) {
        return Found.by(findings -> StepCheck.of(
                new RecordedSteps("bars.steps", "radius", "pieces", List.of(smaller), List.of()),
                new Own(1000, 20, List.of("S1")),
                findings));
    }

    @Test
    void stepsThatContradictTheDomeOrEachOtherAreFound() {
        Step first = new Step(990, 19, 1, List.of("S1"));
        assertThat(steps(first, new Step(950, 17, 3, List.of()))).isEmpty();
        assertThat(steps(first, new Step(995, 17, 3, List.of()))).containsExactly("DIFFERENT bars.steps.smaller 2");
        assertThat(steps(new Step(990, 19, 2, List.of()))).containsExactly("DIFFERENT bars.steps.smaller 1");
        assertThat(steps(new Step(990, 20, 0, List.of()))).containsExactly("DIFFERENT bars.steps.smaller 1");
        assertThat(steps(new Step(990, 19, 1, List.of("S9")))).containsExactly("FOREIGN bars.steps.smaller 1");
    }
}
