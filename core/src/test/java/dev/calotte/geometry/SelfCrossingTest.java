package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Outlines on small whole numbers, judged by hand. */
class SelfCrossingTest {

    @Test
    void simpleOutlinesAreSimpleThoughHollow() {
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 4, 0, 4, 2, 2, 2, 2, 4, 0, 4)))
                .isEmpty();
        assertThat(SelfCrossing.near(Polygon.of(0, 0, 4, 0, 2, 3))).isEmpty();
        // a corner on the line of another side, but not on the side
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 6, 0, 6, 4, 4, 4, 4, 2, 2, 2, 2, 4, 0, 4)))
                .isEmpty();
    }

    @Test
    void crossingAndTouchingSidesAreFound() {
        // the last side goes through the first
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 6, 0, 6, 4, 3, -1, 0, 4))).isPresent();
        // a corner that just touches the first side
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 6, 0, 6, 4, 3, 0, 0, 4))).isPresent();
        assertThat(SelfCrossing.near(Polygon.of(0, 0, 6, 0, 6, 4, 3, 0, 0, 4))).contains("(0, 0) mm");
    }

    @Test
    void spikesWithoutWidthAreFound() {
        assertThat(SelfCrossing.of(Polygon.of(0, 0, 8, 0, 4, 0, 4, 4, 0, 4))).isPresent();
    }
}
