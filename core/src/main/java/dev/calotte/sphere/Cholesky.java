package dev.calotte.sphere;

/** Solves small linear systems whose matrix is symmetric and not negative (the method of A.-L. Cholesky, 1910). */
final class Cholesky {

    private Cholesky() {}

    /**
     * Solves a system in place.
     *
     * @param a the lower half of the matrix, written over
     * @param b the right side, written over by the solution
     * @param damping what is added to the diagonal, as a part of its mean, so that it is never singular
     * @return b
     */
    static double[] solve(double[][] a, double[] b, double damping) {
        int n = b.length;
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += a[i][i] / n;
        }
        for (int i = 0; i < n; i++) {
            a[i][i] += damping * mean + Double.MIN_NORMAL;
            for (int j = 0; j <= i; j++) {
                double sum = a[i][j] - dot(a[i], a[j], j);
                a[i][j] =
                        i == j ? Math.sqrt(Math.max(sum, damping * damping * mean + Double.MIN_NORMAL)) : sum / a[j][j];
            }
            b[i] = (b[i] - dot(a[i], b, i)) / a[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j < n; j++) {
                b[i] -= a[j][i] * b[j];
            }
            b[i] /= a[i][i];
        }
        return b;
    }

    private static double dot(double[] p, double[] q, int length) {
        double sum = 0;
        for (int k = 0; k < length; k++) {
            sum += p[k] * q[k];
        }
        return sum;
    }
}
