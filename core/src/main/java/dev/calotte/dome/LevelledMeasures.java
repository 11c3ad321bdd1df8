package dev.calotte.dome;

import dev.calotte.dome.Size.Measure;

/** Measures of some triangles on the unit sphere whose base is level, before it is known whether they are one dome. */
final class LevelledMeasures {

    private final double[] xyz;
    private final int[] triangles;
    private final double height;

    /**
     * Takes what is to be measured.
     *
     * @param xyz the places of all vertices
     * @param triangles three vertices each, counter-clockwise
     * @param height where the base stands
     */
    LevelledMeasures(double[] xyz, int[] triangles, double height) {
        this.xyz = xyz;
        this.triangles = triangles;
        this.height = height;
    }

    /** The measure in units of the radius; for the floor's area its root. */
    double of(Measure measure) {
        return switch (measure) {
            case RADIUS -> 1;
            case FLOOR_DIAMETER -> 2 * Math.sqrt(1 - height * height);
            case HEIGHT -> span();
            case FLOOR_AREA -> rootOfFloorArea();
            case LONGEST_STRUT -> longest();
        };
    }

    private double span() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : triangles) {
            low = Math.min(low, xyz[3 * v + 2]);
            high = Math.max(high, xyz[3 * v + 2]);
        }
        return high - low;
    }

    /** The area seen from above: what lies inside the border cancels. */
    private double rootOfFloorArea() {
        double twice = 0;
        for (int h = 0; h < triangles.length; h++) {
            int p = 3 * triangles[h];
            int q = 3 * triangles[h % 3 == 2 ? h - 2 : h + 1];
            twice += xyz[p] * xyz[q + 1] - xyz[q] * xyz[p + 1];
        }
        return twice / 2 > Ball.LEVEL ? Math.sqrt(twice / 2) : 0;
    }

    private double longest() {
        double most = 0;
        for (int h = 0; h < triangles.length; h++) {
            int p = 3 * triangles[h];
            int q = 3 * triangles[h % 3 == 2 ? h - 2 : h + 1];
            double x = xyz[q] - xyz[p];
            double y = xyz[q + 1] - xyz[p + 1];
            double z = xyz[q + 2] - xyz[p + 2];
            most = Math.max(most, x * x + y * y + z * z);
        }
        return Math.sqrt(most);
    }
}
