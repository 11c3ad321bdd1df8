package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class RailCornerTest {

    private static final double WIDTH = 45;
    private static final double DEPTH = 95;

    /** Two rails that leave the origin: the one along x with the panel to its left, the other with it to its right. */
    private record Corner(double angle, double tilt, double other) {

        static Corner any(Random random) {
            return new Corner(
                    0.6 + random.nextDouble(), 0.6 * (random.nextDouble() - 0.3), 0.6 * (random.nextDouble() - 0.3));
        }

        Vector3D along(boolean first) {
            return first ? Vector3D.PLUS_I : new Vector3D(Math.cos(angle), Math.sin(angle), 0);
        }

        Vector3D into(boolean first) {
            return first ? Vector3D.PLUS_J : new Vector3D(Math.sin(angle), -Math.cos(angle), 0);
        }

        double lean(boolean first) {
            return first ? tilt : other;
        }

        Vector3D width(boolean first) {
            double b = lean(first);
            return into(first).scalarMultiply(Math.cos(b)).add(new Vector3D(0, 0, Math.sin(b)));
        }

        Vector3D depth(boolean first) {
            double b = lean(first);
            return into(first).scalarMultiply(Math.sin(b)).add(new Vector3D(0, 0, -Math.cos(b)));
        }

        RailCorner rail(boolean first) {
            return first ? new RailCorner(angle, tilt, other) : new RailCorner(angle, other, tilt);
        }

        /** The points of the cut at the four arrises, as the class under test places them. */
        List<Vector3D> points(boolean first) {
            List<Vector3D> points = new ArrayList<>();
            for (double[] at : new double[][] {{0, 0}, {WIDTH, 0}, {0, DEPTH}, {WIDTH, DEPTH}}) {
                points.add(along(first)
                        .scalarMultiply(rail(first).insetMm(at[0], at[1]))
                        .add(width(first).scalarMultiply(at[0]))
                        .add(depth(first).scalarMultiply(at[1])));
            }
            return points;
        }
    }

    @Test
    void theCutsOfBothRailsLieInOnePlane() {
        Cases.each(200, (random, size) -> {
            Corner corner = Corner.any(random);
            List<Vector3D> one = corner.points(true);
            List<Vector3D> all = new ArrayList<>(one);
            all.addAll(corner.points(false));
            Vector3D square = one.get(1).crossProduct(one.get(3)).normalize();
            all.forEach(point -> assertThat(point.dotProduct(square)).isCloseTo(0, within(1e-9)));
        });
    }

    @Test
    void theInnerTopArrisesMeetInOnePointWhereTheTiltsAreEqual() {
        Corner corner = new Corner(1, 0.2, 0.2);
        for (int i = 0; i < 4; i++) {
            assertThat(corner.points(true).get(i).distance(corner.points(false).get(i)))
                    .isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void theSawIsSetToThatPlane() {
        Cases.each(200, (random, size) -> {
            Corner corner = Corner.any(random);
            List<Vector3D> cut = corner.points(true);
            Vector3D square = cut.get(1).crossProduct(cut.get(3)).normalize();
            RailKind.End end = corner.rail(true).end();
            double tilt = Math.asin(Math.abs(square.dotProduct(corner.width(true))));
            assertThat(end.bladeTiltRad()).isCloseTo(tilt, within(1e-9));
            assertThat(Math.tan(end.gaugeRad())).isCloseTo(corner.rail(true).insetMm(0, DEPTH) / DEPTH, within(1e-9));
        });
    }
}
