package dev.calotte.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class StockTest {

    @Test
    void marginsAndTrimsAreTakenOffTwice() {
        Sheet sheet = new Sheet(2440, 1220, 10, Terms.OPEN);
        assertThat(sheet.usableLengthMm()).isEqualTo(2420);
        assertThat(sheet.usableWidthMm()).isEqualTo(1200);
        assertThat(new Roll(1500, 10, OptionalDouble.empty(), Terms.OPEN).usableWidthMm())
                .isEqualTo(1480);
        assertThat(new Bar(6000, 3, 20, Terms.OPEN).usableLengthMm()).isEqualTo(5960);
    }

    @Test
    void stockOfWhichNothingIsLeftIsRefused() {
        OptionalDouble endless = OptionalDouble.empty();
        List<ThrowingCallable> refused = List.of(
                () -> new Sheet(2440, 20, 10, Terms.OPEN),
                () -> new Sheet(20, 2440, 10, Terms.OPEN),
                () -> new Sheet(2440, 1220, -1, Terms.OPEN),
                () -> new Sheet(Double.POSITIVE_INFINITY, 1220, 0, Terms.OPEN),
                () -> new Roll(20, 10, endless, Terms.OPEN),
                () -> new Roll(1500, 10, OptionalDouble.of(20), Terms.OPEN),
                () -> new Roll(1500, -1, endless, Terms.OPEN),
                () -> new Roll(Double.NaN, 0, endless, Terms.OPEN),
                () -> new Bar(40, 3, 20, Terms.OPEN),
                () -> new Bar(6000, -1, 0, Terms.OPEN),
                () -> new Bar(6000, 3, -1, Terms.OPEN),
                () -> new Bar(Double.POSITIVE_INFINITY, 3, 0, Terms.OPEN));
        refused.forEach(stock -> assertThatIllegalArgumentException().isThrownBy(stock));
        assertThat(new Bar(41, 0, 20, Terms.OPEN).usableLengthMm()).isEqualTo(1);
        assertThat(new Sheet(21, 21, 10, Terms.OPEN).usableWidthMm()).isEqualTo(1);
    }

    @Test
    void termsAreNotNegative() {
        OptionalDouble none = OptionalDouble.empty();
        List<ThrowingCallable> refused = List.of(
                () -> new Terms(OptionalDouble.of(-1), none, OptionalInt.empty()),
                () -> new Terms(none, OptionalDouble.of(-1), OptionalInt.empty()),
                () -> new Terms(OptionalDouble.of(Double.NaN), none, OptionalInt.empty()),
                () -> new Terms(none, OptionalDouble.of(Double.POSITIVE_INFINITY), OptionalInt.empty()),
                () -> new Terms(none, none, OptionalInt.of(0)));
        refused.forEach(terms -> assertThatIllegalArgumentException().isThrownBy(terms));
        Terms free = new Terms(OptionalDouble.of(0), OptionalDouble.of(0), OptionalInt.of(1));
        assertThat(new Sheet(1, 1, 0, free).terms()).isEqualTo(free);
    }
}
