package dev.calotte.sphere;

import java.util.List;
import java.util.Optional;

/**
 * Makes pairs of struts equal by a step as short as can be, again and again (the method of Gauss and Newton, damped a
 * little after Levenberg, 1944, and Marquardt, 1963, so that pairs may depend on each other).
 */
final class Equalizer {

    /** How far the logarithms of equal lengths may be apart. */
    static final double EQUAL = 1e-13;

    private static final int MOST_STEPS = 40;
    private static final double DAMPING = 1e-11;

    private final List<Web.Strut> pairs;

    Equalizer(List<Web.Strut> pairs) {
        this.pairs = List.copyOf(pairs);
    }

    /** A pose near a start in which the pairs are equal, if one is found. */
    Optional<Pose> from(Pose start) {
        Pose pose = start;
        double apart = apart(pose);
        double longest = StrictMath.exp(start.shortest()) / 3;
        for (int n = 0; n < MOST_STEPS && apart > EQUAL; n++) {
            pose = pose.moved(step(pose, longest));
            double now = apart(pose);
            // what does not converge soon seldom does
            if ((n > 2 && now > apart / 2) || !(now < 1)) {
                return Optional.empty();
            }
            apart = now;
        }
        return apart <= EQUAL && pose.wellFormed() ? Optional.of(pose) : Optional.empty();
    }

    private double apart(Pose pose) {
        double apart = 0;
        for (Web.Strut pair : pairs) {
            apart = Math.max(apart, Math.abs(pose.log(pair.from()) - pose.log(pair.to())));
        }
        return apart;
    }

    private double[] step(Pose pose, double longest) {
        double[][] slopes = pose.slopes();
        int dimension = slopes[0].length;
        double[][] square = new double[dimension][dimension];
        double[] right = new double[dimension];
        double[] row = new double[dimension];
        for (Web.Strut pair : pairs) {
            double gap = pose.log(pair.from()) - pose.log(pair.to());
            for (int k = 0; k < dimension; k++) {
                row[k] = slopes[pair.from()][k] - slopes[pair.to()][k];
                right[k] -= row[k] * gap;
                for (int j = 0; j <= k; j++) {
                    square[k][j] += row[k] * row[j];
                }
            }
        }
        double[] step = Cholesky.solve(square, right, DAMPING);
        double most = 0;
        for (double s : step) {
            most = Math.max(most, Math.abs(s));
        }
        for (int k = 0; most > longest && k < dimension; k++) {
            step[k] *= longest / most;
        }
        return step;
    }
}
