package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class LeastStockTest {

    private static final List<Piece> FIVE = List.of(
            new Piece("P", ConvexPolygon.of(0, 0, 1000, 0, 1000, 500, 0, 500), 5, false, OptionalDouble.empty()));
    private static final Terms DEAR = new Terms(OptionalDouble.of(99), OptionalDouble.empty(), OptionalInt.of(1));

    /** By hand: 2.5 m2 of parts on sheets of 2 m2, or on a roll one metre wide; with margins the sheets have 0.75 m2. */
    @Test
    void areaIsRoundedUpToSheetsAndDividedByTheWidthOfARoll() {
        assertThat(SheetPlan.least(FIVE, new Sheet(2000, 1000, 0, Terms.OPEN), 0))
                .isEqualTo(2);
        assertThat(SheetPlan.least(FIVE, new Sheet(1700, 700, 100, Terms.OPEN), 0))
                .isEqualTo(4);
        assertThat(SheetPlan.least(FIVE, new Roll(1000, 0, OptionalDouble.empty(), Terms.OPEN), 0))
                .isCloseTo(2500, within(1e-9));
    }

    @Test
    void neitherPriceNorWhatIsAtHandMatters() {
        assertThat(SheetPlan.least(FIVE, new Sheet(2000, 1000, 0, DEAR), 0)).isEqualTo(2);
        assertThat(SheetPlan.least(FIVE, new Roll(1000, 0, OptionalDouble.of(1200), DEAR), 0))
                .isCloseTo(2500, within(1e-9));
    }

    @Test
    void thereMustBePartsAndSheets() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetPlan.least(List.of(), new Sheet(2000, 1000, 0, DEAR), 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetPlan.least(FIVE, new Bar(2000, 3, 0, Terms.OPEN), 0));
    }
}
