package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;

/** Convex polygons to be moved about: their corners and outward normals from their middles, in plain arrays. */
final class Bodies {

    final int count;
    final double[][] cornerX;
    final double[][] cornerY;
    final double[][] normalX;
    final double[][] normalY;
    final double[] radius;

    final double[] middleX;
    final double[] middleY;

    Bodies(int count) {
        this.count = count;
        this.cornerX = new double[count][];
        this.cornerY = new double[count][];
        this.normalX = new double[count][];
        this.normalY = new double[count][];
        this.radius = new double[count];
        this.middleX = new double[count];
        this.middleY = new double[count];
    }

    /** Makes one of the bodies; its corners are about their mean, its middle. */
    void set(int i, ConvexPolygon outline) {
        int size = outline.size();
        cornerX[i] = new double[size];
        cornerY[i] = new double[size];
        normalX[i] = new double[size];
        normalY[i] = new double[size];
        middleX[i] = 0;
        middleY[i] = 0;
        radius[i] = 0;
        for (int c = 0; c < size; c++) {
            middleX[i] += outline.x(c) / size;
            middleY[i] += outline.y(c) / size;
        }
        for (int c = 0; c < size; c++) {
            cornerX[i][c] = outline.x(c) - middleX[i];
            cornerY[i][c] = outline.y(c) - middleY[i];
            normalX[i][c] = outline.outward(c).getX();
            normalY[i][c] = outline.outward(c).getY();
            radius[i] = Math.max(radius[i], Math.sqrt(cornerX[i][c] * cornerX[i][c] + cornerY[i][c] * cornerY[i][c]));
        }
    }
}
