package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.problem.CalotteException;
import java.util.List;

/**
 * A vertical wall under the base ring: a bay between each two neighbouring base hubs, an upright under each hub, plates
 * on the ground, and above them the base struts as top plates. A bay whose base strut an opening took is left out.
 *
 * <p>Sizes are between the axes of the uprights, without any allowance for their thickness or the joints.
 *
 * <pre>{@code
 * RiserWall wall = RiserWall.of(Dome.of(spec.withKeep(new Keep.Rows(1, 2))), 1200);
 * }</pre>
 *
 * @param heightMm from the ground to the lowest base hub
 * @param totalHeightMm from the ground to the highest hub
 * @param walls the kinds of bays, by width and heights
 * @param uprights the kinds of uprights, by length
 * @param bottomPlates the kinds of plates on the ground, by length and angles
 * @param topPlates the base struts by length and slope
 * @param baysLeftOut how many bays have no wall because an opening took their base strut
 */
public record RiserWall(
        double heightMm,
        double totalHeightMm,
        List<Wall> walls,
        List<Upright> uprights,
        List<BottomPlate> bottomPlates,
        List<TopPlate> topPlates,
        int baysLeftOut) {

    /**
     * Copies the lists.
     *
     * @param heightMm from the ground to the lowest base hub
     * @param totalHeightMm from the ground to the highest hub
     * @param walls the kinds of bays
     * @param uprights the kinds of uprights
     * @param bottomPlates the kinds of plates on the ground
     * @param topPlates the base struts
     * @param baysLeftOut how many bays have no wall
     */
    public RiserWall {
        walls = List.copyOf(walls);
        uprights = List.copyOf(uprights);
        bottomPlates = List.copyOf(bottomPlates);
        topPlates = List.copyOf(topPlates);
    }

    /**
     * Bays of one shape and hand: a quadrilateral with two upright sides.
     *
     * @param number from 1, by width, then heights; mirror twins share it
     * @param hand left if the left side is the lower one seen from outside, right if the right one is, none if both are
     *     equal
     * @param widthMm along the ground
     * @param lowMm the shorter upright side
     * @param highMm the longer upright side
     * @param topMm the upper side: the base strut from node to node
     * @param count how many there are
     */
    public record Wall(int number, Hand hand, double widthMm, double lowMm, double highMm, double topMm, int count) {

        /**
         * The mark of the kind.
         *
         * @return for example {@code W1} or {@code W2L}
         */
        public String mark() {
            return "W" + number + hand.letter();
        }

        /**
         * The left side seen from outside.
         *
         * @return its height in millimetres
         */
        public double leftMm() {
            return hand == Hand.RIGHT ? highMm : lowMm;
        }

        /**
         * The right side seen from outside.
         *
         * @return its height in millimetres
         */
        public double rightMm() {
            return hand == Hand.RIGHT ? lowMm : highMm;
        }
    }

    /**
     * Uprights of one length.
     *
     * @param number from 1, by rising length
     * @param lengthMm from the ground to the hub
     * @param count how many there are
     */
    public record Upright(int number, double lengthMm, int count) {

        /**
         * The mark of the kind.
         *
         * @return for example {@code U1}
         */
        public String mark() {
            return "U" + number;
        }
    }

    /**
     * Plates on the ground of one length with the same angles at their ends; such a plate may be turned over.
     *
     * @param number from 1, by rising length, then angles
     * @param lengthMm between the axes of the uprights
     * @param smallInsideRad the smaller of the two angles inside the ring at its ends
     * @param largeInsideRad the larger one
     * @param count how many there are
     */
    public record BottomPlate(int number, double lengthMm, double smallInsideRad, double largeInsideRad, int count) {

        /**
         * The mark of the kind.
         *
         * @return for example {@code B1}
         */
        public String mark() {
            return "B" + number;
        }

        /**
         * What the saw's mitre gauge is set to, away from a square cut, so that plates of equal width meet: 90 degrees
         * less half the angle inside the ring; 180 degrees over the number of sides of a regular ring. Common practice,
         * no source.
         *
         * @param insideRad one of the two angles
         * @return the angle in radians, below 0 where the ring turns inwards
         */
        public static double mitreRad(double insideRad) {
            return Math.PI / 2 - insideRad / 2;
        }
    }

    /**
     * Base struts as top plates.
     *
     * @param number from 1, by rising length, then slope
     * @param lengthMm from node to node
     * @param slopeRad the angle to the level, 0 for a level one
     * @param count how many there are
     */
    public record TopPlate(int number, double lengthMm, double slopeRad, int count) {

        /**
         * The mark of the kind.
         *
         * @return for example {@code T1}
         */
        public String mark() {
            return "T" + number;
        }
    }

    /**
     * Builds the wall under a dome.
     *
     * @param dome the dome, with or without openings
     * @param heightMm from the ground to the lowest base hub, above 0
     * @return the wall
     * @throws CalotteException if the dome is a whole sphere
     * @throws IllegalArgumentException unless the height is finite and above 0
     */
    public static RiserWall of(Dome dome, double heightMm) {
        return new RiserSorting(dome, heightMm).wall();
    }

    /**
     * What the reader should know about the wall.
     *
     * @return sentences, possibly none
     */
    public List<String> notes() {
        if (baysLeftOut == 0) {
            return List.of();
        }
        return List.of("Riser: " + baysLeftOut + (baysLeftOut == 1 ? " bay is" : " bays are")
                + " left out where an opening took the base strut.");
    }
}
