package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class RingTest {

    private static final Ring SQUARE = Ring.of(List.of(0.0, 0.0, 10.0, 0.0, 10.0, 10.0, 0.0, 10.0));

    private static Ring square(double x, double y, double side) {
        return Ring.of(List.of(x, y, x + side, y, x + side, y + side, x, y + side));
    }

    @Test
    void twoCornersEncloseNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Ring.of(List.of(0.0, 0.0, 1.0, 1.0)))
                .withMessage("an outline of 2 corners encloses nothing");
    }

    @Test
    void directionShowsInTheAreaOnly() {
        assertThat(SQUARE.area()).isEqualTo(100);
        assertThat(SQUARE.reversed().area()).isEqualTo(-100);
        assertThat(SQUARE.length()).isEqualTo(40);
        assertThat(SQUARE.distance(SQUARE.reversed())).isZero();
        assertThat(SQUARE.mirrored().area()).isEqualTo(-100);
    }

    @Test
    void cornersOnOneLineHaveNoExtent() {
        assertThat(SQUARE.hasExtent()).isTrue();
        assertThat(SQUARE.reversed().hasExtent()).isTrue();
        assertThat(Ring.of(List.of(0.0, 0.0, 5.0, 5.0, 9.0, 9.0)).hasExtent()).isFalse();
        assertThat(Ring.of(List.of(2.0, 3.0, 2.0, 3.0, 2.0, 3.0)).hasExtent()).isFalse();
        assertThat(Ring.of(List.of(0.0, 0.0, 1e200, 0.0, 0.0, 1e200)).hasExtent())
                .isFalse();
    }

    @Test
    void cornersOnStraightSidesAreLeftOut() {
        Ring started = Ring.of(List.of(5.0, 0.0, 10.0, 0.0, 10.0, 10.0, 0.0, 10.0, 0.0, 0.0));
        assertThat(started.distance(SQUARE)).isInfinite();
        assertThat(started.plain(1e-9).distance(SQUARE)).isZero();
        assertThat(started.beside(SQUARE)).isZero();
        Ring flat = Ring.of(List.of(0.0, 0.0, 5.0, 0.0, 10.0, 0.0));
        assertThat(flat.plain(1e-9)).isEqualTo(flat);
    }

    @Test
    void distancesAreThoseOfTheFurthestCorner() {
        Ring other = Ring.of(List.of(0.0, 0.0, 10.0, 0.0, 10.0, 13.0, 0.0, 10.0));
        assertThat(SQUARE.distance(other)).isCloseTo(3, within(1e-12));
        assertThat(SQUARE.beside(other)).isCloseTo(3, within(1e-12));
        assertThat(Ring.distance(new Vector2D(3, 4), Vector2D.ZERO, Vector2D.ZERO))
                .isEqualTo(5);
    }

    /** By hand: 3 mm beside each other, 2 mm on each other, and diagonally 3-4-5 mm apart. */
    @Test
    void outlinesLieApartOrOnEachOther() {
        assertThat(Convex.overlap(SQUARE, square(13, 0, 10))).isCloseTo(-3, within(1e-12));
        assertThat(Convex.overlap(SQUARE, square(8, 1, 10))).isCloseTo(2, within(1e-12));
        assertThat(Convex.overlap(SQUARE.reversed(), square(8, 1, 10))).isCloseTo(2, within(1e-12));
        assertThat(Convex.distance(SQUARE, square(13, 14, 10))).isCloseTo(5, within(1e-12));
        Ring doubled = Ring.of(List.of(0.0, 0.0, 10.0, 0.0, 10.0, 0.0, 10.0, 10.0, 0.0, 10.0));
        assertThat(Convex.overlap(doubled, square(13, 0, 10))).isCloseTo(-3, within(1e-12));
    }

    /** A border with a hollow corner at 10, 10: what covers it reaches beyond, though no corner of it lies outside. */
    @Test
    void whatReachesBeyondABorderIsMeasured() {
        Ring hollow = Ring.of(List.of(0.0, 0.0, 40.0, 0.0, 40.0, 10.0, 10.0, 10.0, 10.0, 40.0, 0.0, 40.0));
        assertThat(Convex.beyond(square(1, 1, 8), hollow)).isZero();
        assertThat(Convex.beyond(square(-5, 1, 8), hollow)).isCloseTo(5, within(1e-12));
        assertThat(Convex.beyond(square(5, 5, 8), hollow)).isCloseTo(3, within(1e-12));
        Ring across = Ring.of(List.of(5.0, 35.0, 5.0, 5.0, 35.0, 5.0));
        assertThat(Convex.beyond(across, hollow)).isCloseTo(5, within(1e-12));
    }

    /** Turned by 90 degrees about the origin 10, 0 becomes 0, 10; face down -10, 0 becomes 0, -10. */
    @Test
    void piecesAreMirroredThenTurnedThenShifted() {
        RecordedCover.Part part = new RecordedCover.Part("P1", "P1-1.01", 100, 200, 90, false, SQUARE);
        RecordedCover.Part down = new RecordedCover.Part("P1", "P1-1.01", 100, 200, 90, true, SQUARE);
        assertThat(Laid.of(part).at(new Vector2D(10, 0)).distance(new Vector2D(100, 210)))
                .isLessThan(1e-9);
        assertThat(Laid.of(down).at(new Vector2D(10, 0)).distance(new Vector2D(100, 190)))
                .isLessThan(1e-9);
    }
}
