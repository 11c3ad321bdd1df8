package dev.calotte.geometry;

/**
 * How a convex polygon lies in a rectangle, turned as need be; exact, without trying angles.
 *
 * <p>Turned by t, the polygon reaches as far along x as the largest {@code |u cos t + v sin t|} over the vectors
 * (u, v) between two of its corners, and as far along y as the largest {@code |v cos t - u sin t|}. Between its zeros
 * each of these is concave in t, so the largest of several, each scaled or lowered, is least where two of them cross,
 * and those crossings are known in closed form.
 *
 * <pre>{@code
 * ConvexPolygon triangle = ConvexPolygon.of(0, 0, 900, 0, 450, 780);
 * double howMuchLarger = RectangleFit.largestScale(triangle, 2440, 1220);
 * double turnRad = RectangleFit.bestTurn(triangle, 2440, 1220);
 * }</pre>
 */
public final class RectangleFit {

    private final double[] a;
    private final double[] b;
    private final double[] lowered;
    private int count;
    private double least = Double.POSITIVE_INFINITY;
    private double leastTurn;

    private RectangleFit(Polygon polygon) {
        int pairs = polygon.size() * (polygon.size() - 1);
        this.a = new double[pairs];
        this.b = new double[pairs];
        this.lowered = new double[pairs];
    }

    /**
     * How many times larger the polygon may be to fit, turned as need be.
     *
     * @param polygon the polygon
     * @param length one side of the rectangle, above 0
     * @param width the other, above 0
     * @return the largest scale; it fits if that is at least 1
     */
    public static double largestScale(ConvexPolygon polygon, double length, double width) {
        RectangleFit fit = new RectangleFit(polygon);
        for (int i = 0; i < polygon.size(); i++) {
            for (int j = i + 1; j < polygon.size(); j++) {
                double u = polygon.x(j) - polygon.x(i);
                double v = polygon.y(j) - polygon.y(i);
                fit.add(u / length, v / length, 0);
                fit.add(v / width, -u / width, 0);
            }
        }
        return 1 / fit.least();
    }

    /**
     * How much larger, in both directions, the rectangle must be for the polygon to fit, turned as need be.
     *
     * @param polygon the polygon
     * @param length one side of the rectangle
     * @param width the other
     * @return the least that is missing; 0 or below if it fits
     */
    public static double shortfall(ConvexPolygon polygon, double length, double width) {
        return fit(polygon, length, width).least();
    }

    /**
     * How the polygon must be turned to lie in the rectangle with the most to spare in both directions, or with the least
     * missing; see {@link #shortfall}.
     *
     * @param polygon the polygon
     * @param length the side of the rectangle along x, finite
     * @param width the side along y, finite
     * @return a turn, counter-clockwise, from 0 to below half a turn; half a turn more does as well
     */
    public static double bestTurn(ConvexPolygon polygon, double length, double width) {
        RectangleFit fit = fit(polygon, length, width);
        fit.least();
        // the rectangle was turned by leastTurn about the polygon
        double halfTurns = Math.floor(-fit.leastTurn / StrictMath.PI);
        double turn = -fit.leastTurn - halfTurns * StrictMath.PI;
        return turn < StrictMath.PI ? turn : 0;
    }

    private static RectangleFit fit(ConvexPolygon polygon, double length, double width) {
        RectangleFit fit = new RectangleFit(polygon);
        for (int i = 0; i < polygon.size(); i++) {
            for (int j = i + 1; j < polygon.size(); j++) {
                double u = polygon.x(j) - polygon.x(i);
                double v = polygon.y(j) - polygon.y(i);
                fit.add(u, v, length);
                fit.add(v, -u, width);
            }
        }
        return fit;
    }

    /** Adds {@code |a cos t + b sin t| - lower} to those of which the largest counts. */
    private void add(double cosine, double sine, double lower) {
        a[count] = cosine;
        b[count] = sine;
        lowered[count++] = lower;
    }

    private double least() {
        for (int p = 0; p < count; p++) {
            for (int q = 0; q < p; q++) {
                double difference = lowered[p] - lowered[q];
                tryCrossings(a[p] - a[q], b[p] - b[q], difference);
                tryCrossings(a[p] + a[q], b[p] + b[q], difference);
            }
        }
        return least;
    }

    /** Where {@code u cos t + v sin t} is the difference or its negative. */
    private void tryCrossings(double u, double v, double difference) {
        double ratio = difference / Math.sqrt(u * u + v * v);
        if (Math.abs(ratio) <= 1) {
            double middle = StrictMath.atan2(v, u);
            double either = StrictMath.acos(ratio);
            tryTurn(middle + either);
            tryTurn(middle - either);
        }
    }

    /** Half a turn more makes no difference, so the negative of the difference is tried as well. */
    private void tryTurn(double turn) {
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double most = Double.NEGATIVE_INFINITY;
        for (int p = 0; p < count && most < least; p++) {
            most = Math.max(most, Math.abs(a[p] * cos + b[p] * sin) - lowered[p]);
        }
        if (most < least) {
            least = most;
            leastTurn = turn;
        }
    }
}
