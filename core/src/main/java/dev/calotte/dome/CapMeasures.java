package dev.calotte.dome;

import dev.calotte.dome.Size.Measure;

/** Measures of a part of the unit sphere. */
final class CapMeasures {

    private final Cap cap;

    CapMeasures(Cap cap) {
        this.cap = cap;
    }

    /** The measure in units of the radius; for the floor's area its root, so that all grow with the radius alike. */
    double of(Measure measure) {
        return switch (measure) {
            case RADIUS -> 1;
            case FLOOR_DIAMETER -> 2 * floorRadius();
            case HEIGHT -> height();
            case FLOOR_AREA -> Math.sqrt(floorArea());
            case LONGEST_STRUT -> longestStrut();
        };
    }

    double floorRadius() {
        double most = 0;
        for (int v : cap.baseRing) {
            double x = cap.xyz[3 * v];
            double y = cap.xyz[3 * v + 1];
            most = Math.max(most, Math.sqrt(x * x + y * y));
        }
        return most;
    }

    double height() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 2; i < cap.xyz.length; i += 3) {
            low = Math.min(low, cap.xyz[i]);
            high = Math.max(high, cap.xyz[i]);
        }
        return high - low;
    }

    double lowest() {
        double low = Double.POSITIVE_INFINITY;
        for (int i = 2; i < cap.xyz.length; i += 3) {
            low = Math.min(low, cap.xyz[i]);
        }
        return low;
    }

    double baseSpread() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int v : cap.baseRing) {
            low = Math.min(low, cap.xyz[3 * v + 2]);
            high = Math.max(high, cap.xyz[3 * v + 2]);
        }
        return cap.baseRing.length == 0 ? 0 : high - low;
    }

    /** The area of the base ring seen from above, by the trapezoids under its sides. */
    double floorArea() {
        double twice = 0;
        for (int i = 0; i < cap.baseRing.length; i++) {
            int p = cap.baseRing[i];
            int q = cap.baseRing[(i + 1) % cap.baseRing.length];
            twice += cap.xyz[3 * p] * cap.xyz[3 * q + 1] - cap.xyz[3 * q] * cap.xyz[3 * p + 1];
        }
        return twice / 2;
    }

    double longestStrut() {
        double most = 0;
        for (int e = 0; e < cap.net.edgeCount(); e++) {
            most = Math.max(most, chord(cap.net.half(e)));
        }
        return most;
    }

    double chord(int half) {
        int p = 3 * cap.net.start(half);
        int q = 3 * cap.net.end(half);
        double x = cap.xyz[q] - cap.xyz[p];
        double y = cap.xyz[q + 1] - cap.xyz[p + 1];
        double z = cap.xyz[q + 2] - cap.xyz[p + 2];
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Twice the area of each triangle as a vector that points outwards: x, y, z. */
    double[] normals() {
        double[] normals = new double[3 * cap.net.triangleCount()];
        for (int t = 0; t < cap.net.triangleCount(); t++) {
            int a = 3 * cap.net.start(3 * t);
            int b = 3 * cap.net.start(3 * t + 1);
            int c = 3 * cap.net.start(3 * t + 2);
            double ux = cap.xyz[b] - cap.xyz[a];
            double uy = cap.xyz[b + 1] - cap.xyz[a + 1];
            double uz = cap.xyz[b + 2] - cap.xyz[a + 2];
            double vx = cap.xyz[c] - cap.xyz[a];
            double vy = cap.xyz[c + 1] - cap.xyz[a + 1];
            double vz = cap.xyz[c + 2] - cap.xyz[a + 2];
            normals[3 * t] = uy * vz - uz * vy;
            normals[3 * t + 1] = uz * vx - ux * vz;
            normals[3 * t + 2] = ux * vy - uy * vx;
        }
        return normals;
    }

    double surfaceArea(double[] normals) {
        double twice = 0;
        for (int t = 0; t < normals.length; t += 3) {
            twice += Math.sqrt(
                    normals[t] * normals[t] + normals[t + 1] * normals[t + 1] + normals[t + 2] * normals[t + 2]);
        }
        return twice / 2;
    }

    /** The space between the triangles and the level of the lowest vertex: a prism under each triangle. */
    double volume(double[] normals) {
        double floor = lowest();
        double sixfold = 0;
        for (int t = 0; t < cap.net.triangleCount(); t++) {
            double heights = 0;
            for (int h = 3 * t; h < 3 * t + 3; h++) {
                heights += cap.xyz[3 * cap.net.start(h) + 2] - floor;
            }
            sixfold += normals[3 * t + 2] * heights;
        }
        return sixfold / 6;
    }

    /**
     * The angle inside the dome between the two triangles of an edge, as π less the turn of their normals about the
     * edge; at a hollow edge the turn is negative.
     *
     * @param half a half-edge that has a twin
     */
    double dihedralRad(int half, double[] normals) {
        int f = 3 * (half / 3);
        int g = 3 * (cap.net.twin(half) / 3);
        double cx = normals[f + 1] * normals[g + 2] - normals[f + 2] * normals[g + 1];
        double cy = normals[f + 2] * normals[g] - normals[f] * normals[g + 2];
        double cz = normals[f] * normals[g + 1] - normals[f + 1] * normals[g];
        double cosine = normals[f] * normals[g] + normals[f + 1] * normals[g + 1] + normals[f + 2] * normals[g + 2];
        int p = 3 * cap.net.start(half);
        int q = 3 * cap.net.end(half);
        double along = cx * (cap.xyz[q] - cap.xyz[p])
                + cy * (cap.xyz[q + 1] - cap.xyz[p + 1])
                + cz * (cap.xyz[q + 2] - cap.xyz[p + 2]);
        double sine = Math.copySign(Math.sqrt(cx * cx + cy * cy + cz * cz), along);
        return Math.PI - StrictMath.atan2(sine, cosine);
    }
}
