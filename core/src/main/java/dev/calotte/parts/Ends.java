package dev.calotte.parts;

import java.util.OptionalDouble;

/** How the two ends of a strut are made. */
public sealed interface Ends {

    /** Cut off square. */
    record Plain() implements Ends {}

    /**
     * A tube pressed flat at either end, drilled through the flat, and bent where the flat begins.
     *
     * @param flattenMm how much of either end is flat: from the tube's end to the bend line
     * @param holeMm the diameter of the hole
     * @param holeEdgeMm from the hole's centre to the tube's end, less than the flat and at least half a hole
     * @param wallMm how thick the tube's wall is, where bolts are to be reckoned
     */
    record Flattened(double flattenMm, double holeMm, double holeEdgeMm, OptionalDouble wallMm) implements Ends {

        /**
         * Checks each length by itself; whether they go together, {@link Joinery#problems()} says.
         *
         * @param flattenMm how much is flat
         * @param holeMm the diameter of the hole
         * @param holeEdgeMm from the hole's centre to the tube's end
         * @param wallMm how thick the tube's wall is
         * @throws IllegalArgumentException if a length is not finite and above 0
         */
        public Flattened {
            Joinery.checkAbove0("flat", flattenMm);
            Joinery.checkAbove0("hole", holeMm);
            Joinery.checkAbove0("edge distance", holeEdgeMm);
            wallMm.ifPresent(mm -> Joinery.checkAbove0("wall", mm));
        }

        /**
         * How far the bend lies behind the hole.
         *
         * @return from the hole's centre to the bend line, in millimetres
         */
        public double holeToBendMm() {
            return flattenMm - holeEdgeMm;
        }
    }

    /**
     * Timber rails: each panel is a frame of its own of three rails, back to back with those of its neighbours. A rail's
     * wide outer face lies in the plane that halves the angle between the two panels, its top outer arris is the
     * panel's edge, and its ends are cut so that it meets the next rail of its frame.
     *
     * @param widthMm how far the rail reaches into the panel
     * @param depthMm how far it reaches into the dome
     */
    record Mitred(double widthMm, double depthMm) implements Ends {

        /**
         * Checks the section.
         *
         * @param widthMm how far the rail reaches into the panel
         * @param depthMm how far it reaches into the dome
         * @throws IllegalArgumentException if one is not finite and above 0
         */
        public Mitred {
            Joinery.checkAbove0("width", widthMm);
            Joinery.checkAbove0("depth", depthMm);
        }
    }
}
