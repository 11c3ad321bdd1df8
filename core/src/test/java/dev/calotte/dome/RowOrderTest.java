package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
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
    void manyThingsAreOrderedAsTwoAre() {
        Random random = new Random(3);
        int[] rows = random.ints(500, 0, 4).toArray();
        double[] points = new double[1500];
        for (int i = 0; i < rows.length; i++) {
            double bearing = random.nextInt(12) * Math.PI / 6 + 0.1;
            points[3 * i] = StrictMath.cos(bearing);
            points[3 * i + 1] = StrictMath.sin(bearing);
            points[3 * i + 2] = random.nextInt(5) / 4.0;
        }
        int[] order = order(rows, points).order;
        for (int i = 1; i < order.length; i++) {
            if (rows[order[i]] == rows[order[i - 1]]) {
                double[] both = new double[6];
                System.arraycopy(points, 3 * order[i - 1], both, 0, 3);
                System.arraycopy(points, 3 * order[i], both, 3, 3);
                assertThat(order(new int[2], both).order).containsExactly(0, 1);
            }
            assertThat(rows[order[i]]).isGreaterThanOrEqualTo(rows[order[i - 1]]);
        }
        assertThat(order).hasSize(500).doesNotHaveDuplicates();
    }

    @Test
    void ofTwoAtOneBearingTheHigherIsFirst() {
        RowOrder order = order(new int[3], 1, 0, -1, 1, 0, 1, 1, 0, 0);
        assertThat(order.order).containsExactly(1, 2, 0);
        assertThat(order(new int[2], 1, 0, 0.5, 1, 0, 0.5 + 1e-12).order).containsExactly(0, 1);
    }
}
