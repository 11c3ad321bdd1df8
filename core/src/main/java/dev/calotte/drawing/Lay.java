package dev.calotte.drawing;

/**
 * How the grid of the alphabet lies in a drawing: u and v of the grid become {@code a u - b v + x} and
 * {@code b u + a v + y}.
 *
 * @param a the length of a unit of the grid, times the cosine of the turn
 * @param b the length of a unit of the grid, times the sine of the turn
 * @param xMm where the grid's origin lies
 * @param yMm where the grid's origin lies
 */
record Lay(double a, double b, double xMm, double yMm) {

    double x(double u, double v) {
        return a * u - b * v + xMm;
    }

    double y(double u, double v) {
        return b * u + a * v + yMm;
    }

    double unitMm() {
        return Math.sqrt(a * a + b * b);
    }

    double turnRad() {
        return StrictMath.atan2(b, a);
    }

    /** The best in the sense of least squares, from pairs of places. */
    static final class Fit {

        private int count;
        private double u;
        private double v;
        private double x;
        private double y;
        private double uu;
        private double along;
        private double across;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        Fit copy() {
            Fit copy = new Fit();
            copy.count = count;
            copy.u = u;
            copy.v = v;
            copy.x = x;
            copy.y = y;
            copy.uu = uu;
            copy.along = along;
            copy.across = across;
            copy.least = least;
            copy.most = most;
            return copy;
        }

        void add(double gridU, double gridV, double placeX, double placeY) {
            count++;
            u += gridU;
            v += gridV;
            x += placeX;
            y += placeY;
            uu += gridU * gridU + gridV * gridV;
            along += gridU * placeX + gridV * placeY;
            across += gridU * placeY - gridV * placeX;
            least = Math.min(least, Math.min(gridU, gridV));
            most = Math.max(most, Math.max(gridU, gridV));
        }

        /** How far the places reach on the grid, about. */
        double reach() {
            return most - least;
        }

        Lay lay() {
            double spread = uu - (u * u + v * v) / count;
            double a = (along - (u * x + v * y) / count) / spread;
            double b = (across - (u * y - v * x) / count) / spread;
            return new Lay(a, b, (x - a * u + b * v) / count, (y - b * u - a * v) / count);
        }
    }
}
