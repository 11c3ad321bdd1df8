package dev.calotte.nest;

import org.apache.commons.math3.util.FastMath;

/** The corners and outward normals of bodies where they stand. */
final class Standing {

    final double[][] x;
    final double[][] y;
    final double[][] normalX;
    final double[][] normalY;
    private final Bodies bodies;

    Standing(Bodies bodies) {
        this.bodies = bodies;
        this.x = like(bodies.cornerX);
        this.y = like(bodies.cornerX);
        this.normalX = like(bodies.cornerX);
        this.normalY = like(bodies.cornerX);
    }

    private static double[][] like(double[][] shape) {
        double[][] copy = new double[shape.length][];
        for (int i = 0; i < shape.length; i++) {
            copy[i] = new double[shape[i].length];
        }
        return copy;
    }

    /** Stands a body at a place turned by an angle times its radius. */
    void place(int i, double atX, double atY, double arc) {
        double turn = arc / bodies.radius[i];
        double cos = FastMath.cos(turn);
        double sin = FastMath.sin(turn);
        double[] cx = bodies.cornerX[i];
        double[] cy = bodies.cornerY[i];
        double[] mx = bodies.normalX[i];
        double[] my = bodies.normalY[i];
        for (int c = 0; c < cx.length; c++) {
            x[i][c] = atX + cx[c] * cos - cy[c] * sin;
            y[i][c] = atY + cx[c] * sin + cy[c] * cos;
            normalX[i][c] = mx[c] * cos - my[c] * sin;
            normalY[i][c] = mx[c] * sin + my[c] * cos;
        }
    }
}
