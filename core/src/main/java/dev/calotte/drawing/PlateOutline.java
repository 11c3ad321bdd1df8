package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateArms.Slot;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The outline of a hub plate: a disc whose rim turns into each slot and out of it again, as one path with true arcs. The
 * slots end square where a beam cuts them, and round, by half their own width, where a cutter has to get in.
 *
 * @param arms the plate
 * @param pose its centre, the first arm along x
 */
record PlateOutline(PlateArms arms, Pose pose) {

    private static final double LONGEST_ARC = Math.PI / 4;
    private static final int SLOT_CORNERS = 4;

    /** A corner in the pose's frame, and the bulge of the side that begins there. */
    private record Corner(Vector2D at, double bulge) {}

    Shape shape() {
        HubPlate plate = arms.plate();
        if (arms.slots().isEmpty()) {
            Vector2D centre = pose.at(Vector2D.ZERO);
            return new Circle(Operation.CUT_OUTER, centre.getX(), centre.getY(), plate.diameterMm() / 2);
        }
        List<Corner> corners = corners();
        return Path.closed(
                Operation.CUT_OUTER,
                pose.xy(corners.stream().map(Corner::at).toList()),
                corners.stream().mapToDouble(Corner::bulge).toArray());
    }

    private List<Corner> corners() {
        return numbers().flatMap(this::slot).toList();
    }

    private Stream<Corner> slot(int number) {
        return Stream.concat(inside(arms.slots().get(number)), rim(number));
    }

    /** The walls and the end of each slot, for what has to keep clear of them. */
    List<Shape> slots() {
        return numbers()
                .map(number ->
                        pose.xy(slot(number).limit(SLOT_CORNERS).map(Corner::at).toList()))
                .map(xy -> (Shape) Path.open(Operation.CUT_INNER, xy))
                .toList();
    }

    private Stream<Integer> numbers() {
        return IntStream.range(0, arms.slots().size()).boxed();
    }

    /** Into a slot from its clockwise side, and round its end. */
    private Stream<Corner> inside(Slot slot) {
        boolean round = arms.plate().cutterMm() > 0;
        double half = arms.plate().slotMm() / 2;
        double end = round ? slot.fromMm() + half : slot.fromMm();
        return Stream.of(
                new Corner(place(slot, wallEnd(), -half), 0),
                new Corner(place(slot, end, -half), round ? -1 : 0),
                new Corner(place(slot, end, half), 0));
    }

    /** Out of a slot and along the rim to the next, in arcs short enough for readers that make cubic curves of them. */
    private Stream<Corner> rim(int number) {
        double radius = arms.plate().diameterMm() / 2;
        List<Slot> slots = arms.slots();
        double from = slots.get(number).angleRad();
        double turn = number + 1 == slots.size() ? 2 * Math.PI : 0;
        double apart = slots.get((number + 1) % slots.size()).angleRad() - from + turn;
        double beside = StrictMath.asin(arms.plate().slotMm() / 2 / radius);
        int parts = (int) Math.ceil((apart - 2 * beside) / LONGEST_ARC);
        double sweep = (apart - 2 * beside) / parts;
        return IntStream.range(0, parts)
                .mapToDouble(part -> from + beside + part * sweep)
                .mapToObj(angle -> new Corner(
                        new Vector2D(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)),
                        StrictMath.tan(sweep / 4)));
    }

    private double wallEnd() {
        double radius = arms.plate().diameterMm() / 2;
        double half = arms.plate().slotMm() / 2;
        return Math.sqrt(radius * radius - half * half);
    }

    /** A place by how far out it lies along a slot and how far to the left of its middle. */
    private static Vector2D place(Slot slot, double out, double left) {
        double cos = StrictMath.cos(slot.angleRad());
        double sin = StrictMath.sin(slot.angleRad());
        return new Vector2D(out * cos - left * sin, out * sin + left * cos);
    }
}
