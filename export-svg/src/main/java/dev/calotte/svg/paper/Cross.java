package dev.calotte.svg.paper;

import java.util.List;

/** Two lines that cross. */
final class Cross {

    private Cross() {}

    static List<double[]> at(double x, double y, double arm) {
        return List.of(new double[] {x - arm, y, x + arm, y}, new double[] {x, y - arm, x, y + arm});
    }
}
