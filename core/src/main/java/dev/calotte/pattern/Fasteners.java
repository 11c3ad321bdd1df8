package dev.calotte.pattern;

/**
 * Rows of holes along every side of a pattern: one at either end and as many between as keep them no further apart than
 * the pitch.
 *
 * @param holeMm the diameter of a hole, above 0
 * @param edgeDistanceMm from every cut edge to the centre of a hole, more than half the hole
 * @param pitchMm the largest distance between neighbouring holes of a row, more than the hole
 */
public record Fasteners(double holeMm, double edgeDistanceMm, double pitchMm) {

    /**
     * Checks the numbers.
     *
     * @param holeMm above 0
     * @param edgeDistanceMm more than half the hole
     * @param pitchMm more than the hole
     * @throws IllegalArgumentException if a number is out of its bounds
     */
    public Fasteners {
        if (!(holeMm > 0 && edgeDistanceMm > holeMm / 2 && pitchMm > holeMm)) {
            throw new IllegalArgumentException("no holes are " + holeMm + " mm wide, " + edgeDistanceMm
                    + " mm from an edge and " + pitchMm + " mm apart");
        }
    }
}
