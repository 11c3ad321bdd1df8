package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateArms.Slot;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The outline of a round hub plate: a disc whose rim turns into each slot and out of it again, as one path with true arcs.
 * The slots end square where a beam cuts them, and round, by half their own width, where a cutter has to get in.
 *
 * @param arms the plate
 */
record DiscOutline(PlateArms arms) implements PlateShape {

    private static final double LONGEST_ARC = Math.PI / 4;
    private static final int SLOT_CORNERS = 4;
    private static final int CHORDS = 96;

    private double radius() {
        return arms.plate().diameterMm() / 2;
    }

    @Override
    public Box box() {
        return Box.around(0, 0, 2 * radius(), 2 * radius());
    }

    @Override
    public Shape outline(Pose pose) {
        if (arms.slots().isEmpty()) {
            Vector2D centre = pose.at(Vector2D.ZERO);
            return new Circle(Operation.CUT_OUTER, centre.getX(), centre.getY(), radius());
        }
        return PlateShape.path(
                Operation.CUT_OUTER, numbers().flatMap(this::slot).toList(), pose);
    }

    @Override
    public List<Shape> holes(Pose pose) {
        return List.of();
    }

    /** The disc without what is outside of its chords. */
    @Override
    public ConvexPolygon hull(Pose pose) {
        return ConvexPolygon.round(IntStream.range(0, CHORDS)
                .mapToDouble(chord -> 2 * Math.PI * chord / CHORDS)
                .mapToObj(angle ->
                        pose.at(new Vector2D(radius() * StrictMath.cos(angle), radius() * StrictMath.sin(angle))))
                .toList());
    }

    /** The walls and the end of each slot. */
    @Override
    public List<Shape> walls(Pose pose) {
        return numbers()
                .map(number ->
                        pose.xy(slot(number).limit(SLOT_CORNERS).map(Corner::at).toList()))
                .map(xy -> (Shape) Polyline.open(Operation.CUT_INNER, xy))
                .toList();
    }

    @Override
    public double toRim(Vector2D from, double angleRad) {
        double cos = StrictMath.cos(angleRad);
        double sin = StrictMath.sin(angleRad);
        double along = from.getX() * cos + from.getY() * sin;
        double aside = from.getY() * cos - from.getX() * sin;
        return Math.sqrt(radius() * radius() - aside * aside) - along;
    }

    @Override
    public boolean holds(Vector2D place) {
        return place.getNorm() < radius();
    }

    private Stream<Corner> slot(int number) {
        return Stream.concat(PlateShape.inside(arms, arms.slots().get(number), wallEnd()), rim(number));
    }

    private Stream<Integer> numbers() {
        return IntStream.range(0, arms.slots().size()).boxed();
    }

    /** Out of a slot and along the rim to the next, in arcs short enough for readers that make cubic curves of them. */
    private Stream<Corner> rim(int number) {
        List<Slot> slots = arms.slots();
        double from = slots.get(number).angleRad();
        double turn = number + 1 == slots.size() ? 2 * Math.PI : 0;
        double apart = slots.get((number + 1) % slots.size()).angleRad() - from + turn;
        double beside = StrictMath.asin(arms.plate().slotMm() / 2 / radius());
        int parts = (int) Math.ceil((apart - 2 * beside) / LONGEST_ARC);
        double sweep = (apart - 2 * beside) / parts;
        return IntStream.range(0, parts)
                .mapToDouble(part -> from + beside + part * sweep)
                .mapToObj(angle -> new Corner(
                        new Vector2D(radius() * StrictMath.cos(angle), radius() * StrictMath.sin(angle)),
                        StrictMath.tan(sweep / 4)));
    }

    private double wallEnd() {
        double half = arms.plate().slotMm() / 2;
        return Math.sqrt(radius() * radius() - half * half);
    }
}
