package dev.calotte.parts;

import dev.calotte.geometry.Boundary;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.SelfCrossing;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A hub plate of someone's own shape, as seen from outside of the dome. The hub's axis stands on the origin, and the first
 * strut of each kind of hub points along x.
 *
 * @param name what it is called, for example after its file
 * @param rim its outline, counter-clockwise
 * @param holes what is cut out of it, counter-clockwise too
 */
public record PlateBlank(String name, Line rim, List<Line> holes) {

    /**
     * A closed line of straight sides and arcs, in millimetres.
     *
     * @param corners its corners, at least three
     * @param bulges one for each corner, that of the side from there to the next: the tangent of a quarter of the angle it
     *     sweeps, above 0 counter-clockwise, 0 for a straight side
     * @param straight nearly the same without arcs, counter-clockwise, which is what things are measured by
     */
    public record Line(List<Vector2D> corners, List<Double> bulges, Polygon straight) {

        /**
         * Copies the lists.
         *
         * @param corners its corners
         * @param bulges one for each corner
         * @param straight nearly the same without arcs
         */
        public Line {
            corners = List.copyOf(corners);
            bulges = List.copyOf(bulges);
        }

        /**
         * A line from numbers.
         *
         * @param xy x and y of each corner in millimetres
         * @param bulges one for each corner
         * @param straight nearly the same without arcs, counter-clockwise
         * @return the line
         */
        public static Line of(double[] xy, double[] bulges, Polygon straight) {
            List<Vector2D> corners = IntStream.range(0, xy.length / 2)
                    .mapToObj(c -> new Vector2D(xy[2 * c], xy[2 * c + 1]))
                    .toList();
            return new Line(corners, Arrays.stream(bulges).boxed().toList(), straight);
        }

        Boundary boundary() {
            return new Boundary(straight);
        }

        private String place() {
            return "(" + Math.round(straight.x(0)) + ", " + Math.round(straight.y(0)) + ") mm";
        }
    }

    /**
     * Copies the list.
     *
     * @param name what it is called
     * @param rim its outline
     * @param holes what is cut out of it
     */
    public PlateBlank {
        holes = List.copyOf(holes);
    }

    /**
     * Why no plate is cut like this.
     *
     * @return what is wrong in words; nothing if the lines are simple, the holes lie apart inside the outline, and the origin
     *     lies inside it too
     */
    public Optional<String> flaw() {
        return SelfCrossing.near(rim.straight)
                .map(at -> "the outline crosses or touches itself near " + at + ".")
                .or(this::flawOfHoles)
                .or(() -> rim.boundary().holds(Vector2D.ZERO)
                        ? Optional.empty()
                        : Optional.of("the origin (0, 0), where the hub's axis stands, is not inside the outline."));
    }

    private Optional<String> flawOfHoles() {
        for (int one = 0; one < holes.size(); one++) {
            Line hole = holes.get(one);
            Optional<String> crossing = SelfCrossing.near(hole.straight);
            if (crossing.isPresent()) {
                return Optional.of("a hole crosses or touches itself near " + crossing.get() + ".");
            }
            if (!rim.boundary().holds(hole.straight.corner(0)) || rim.boundary().distance(hole.straight) == 0) {
                return Optional.of("the line at " + hole.place() + " is not inside the largest outline.");
            }
            for (Line other : holes.subList(0, one)) {
                if (meet(hole, other)) {
                    return Optional.of("the holes at " + other.place() + " and " + hole.place()
                            + " cross, touch or lie in one another.");
                }
            }
        }
        return Optional.empty();
    }

    private static boolean meet(Line one, Line two) {
        return one.boundary().holds(two.straight.corner(0))
                || two.boundary().holds(one.straight.corner(0))
                || one.boundary().distance(two.straight) == 0;
    }

    /**
     * How far it reaches.
     *
     * @return twice the distance from the origin to the furthest corner
     */
    public double diameterMm() {
        return 2
                * rim.straight.corners().stream()
                        .mapToDouble(Vector2D::getNorm)
                        .max()
                        .orElse(0);
    }
}
