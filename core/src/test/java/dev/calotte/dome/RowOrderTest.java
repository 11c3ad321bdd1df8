package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RowOrderTest {

    private static RowOrder order(int[] rows, double... points) {
        return new RowOrder(rows, points);
    }

    @Test
    void rowsComeFirst() {
        RowOrder order = order(new int[] {2, 0, 1}, 1, 0, 0, 1, 0, 0, 1, 0, 0);
        assertThat(order.order).containsExactly(1, 2, 0);
        assertThat(order.places).containsExactly(1, 1, 1);
    }

    @Test
    void inARowBearingsRiseFromTheStartRay() {
        RowOrder order = order(new int[4], 0, -1, 0, -1, 0, 0, 0, 1, 0, 1, 0, 0);
        assertThat(order.order).containsExactly(3, 2, 1, 0);
        assertThat(order.places).containsExactly(1, 2, 3, 4);
    }

    @Test
    void aHairBehindTheStartRayIsOnIt() {
        RowOrder order = order(new int[3], 0.5, 0.1, 0, 1, -1e-12, 0, 1, -0.1, 0);
        assertThat(order.order).containsExactly(1, 0, 2);
    }

    @Test
    void aHairBesideAnotherBearingItIsTheSame() {
        RowOrder order = order(new int[2], 0, 1, -0.5, -1e-13, 1, 0.5);
        assertThat(order.order).containsExactly(1, 0);
    }

    @Test
    void onTheAxisTheBearingIsThatOfTheStartRay() {
        RowOrder order = order(new int[3], 0, 1, 0, -1e-12, -1e-12, 1, 1, 1e-3, 0);
        assertThat(order.order).containsExactly(1, 2, 0);
    }

    @Test
    void ofTwoAtOneBearingTheHigherIsFirst() {
        RowOrder order = order(new int[3], 1, 0, -1, 1, 0, 1, 1, 0, 0);
        assertThat(order.order).containsExactly(1, 2, 0);
        assertThat(order(new int[2], 1, 0, 0.5, 1, 0, 0.5 + 1e-12).order).containsExactly(0, 1);
    }
}
