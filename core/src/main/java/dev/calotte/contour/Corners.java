package dev.calotte.contour;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.util.Arrays;

/** Gathers the corners of a path, each with the bulge of the side that begins there. */
final class Corners {

    private double[] xy = new double[16];
    private double[] bulges = new double[8];
    private int size;

    Corners add(double x, double y, double bulge) {
        if (size == bulges.length) {
            xy = Arrays.copyOf(xy, 4 * size);
            bulges = Arrays.copyOf(bulges, 2 * size);
        }
        xy[2 * size] = x;
        xy[2 * size + 1] = y;
        bulges[size] = bulge;
        size++;
        return this;
    }

    int size() {
        return size;
    }

    Polyline closed(Operation operation) {
        return Polyline.closed(operation, Arrays.copyOf(xy, 2 * size), Arrays.copyOf(bulges, size));
    }

    Polyline open(Operation operation) {
        return Polyline.open(operation, Arrays.copyOf(xy, 2 * size), Arrays.copyOf(bulges, size));
    }
}
