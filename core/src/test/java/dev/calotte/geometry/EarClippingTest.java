package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EarClippingTest {

    @Test
    void aSquareFallsIntoTwoTriangles() {
        double[] x = {0, 1, 1, 0};
        double[] y = {0, 0, 1, 1};
        assertThat(EarClipping.triangulate(x, y)).hasSize(6);
        checkTriangles(x, y, 1);
    }

    @Test
    void aNotchIsNotFilled() {
        double[] x = {0, 4, 4, 2, 0};
        double[] y = {0, 0, 3, 1, 3};
        checkTriangles(x, y, 8);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void raggedStarsKeepTheirAreaAndOrientation(long seed) {
        Random random = new Random(seed);
        int n = 5 + random.nextInt(60);
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            double radius = 0.3 + random.nextDouble();
            x[i] = radius * StrictMath.cos(2 * Math.PI * i / n);
            y[i] = radius * StrictMath.sin(2 * Math.PI * i / n);
        }
        checkTriangles(x, y, area(x, y));
    }

    @Test
    void clockwiseAndCrossingPolygonsAreRefused() {
        assertThatThrownBy(() -> EarClipping.triangulate(new double[] {0, 0, 1}, new double[] {0, 1, 0}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EarClipping.triangulate(new double[] {0, 1}, new double[] {0, 1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EarClipping.triangulate(new double[] {0, 0, 1, 1}, new double[] {0, 1, 1, 0}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void checkTriangles(double[] x, double[] y, double wanted) {
        int[] triangles = EarClipping.triangulate(x, y);
        assertThat(triangles).hasSize(3 * (x.length - 2));
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            double[] tx = {x[triangles[t]], x[triangles[t + 1]], x[triangles[t + 2]]};
            double[] ty = {y[triangles[t]], y[triangles[t + 1]], y[triangles[t + 2]]};
            assertThat(area(tx, ty)).isPositive();
            sum += area(tx, ty);
        }
        assertThat(sum).isCloseTo(wanted, within(1e-12));
    }

    /** The shoelace formula. */
    private static double area(double[] x, double[] y) {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            twice += x[i] * y[j] - x[j] * y[i];
        }
        return twice / 2;
    }
}
