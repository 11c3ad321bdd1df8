package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.Boundary;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateBlank;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The outline of a hub plate of someone's own shape: theirs, side by side and arc by arc, except where a slot opens it.
 *
 * @param arms the plate
 * @param blank the shape
 */
record BlankOutline(PlateArms arms, PlateBlank blank) implements PlateShape {

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    /** Corners of a circle nearer to one round are that circle. */
    private static final double SAME_MM = 1e-6;

    @Override
    public Box box() {
        Polygon rim = blank.rim().straight();
        return new Box(-rim.reach(RIGHT.negate()), -rim.reach(UP.negate()), rim.reach(RIGHT), rim.reach(UP));
    }

    @Override
    public Shape outline(Pose pose) {
        List<Corner> rim = corners(blank.rim());
        return PlateShape.path(
                Operation.CUT_OUTER, arms.slots().isEmpty() ? rim : new SlottedRim(rim, arms).corners(), pose);
    }

    /** As they are, but the other way round, as openings are. */
    @Override
    public List<Shape> holes(Pose pose) {
        return blank.holes().stream().map(hole -> hole(hole, pose)).toList();
    }

    private static Shape hole(PlateBlank.Line line, Pose pose) {
        List<Corner> forwards = corners(line);
        List<Corner> back = new ArrayList<>();
        for (int c = forwards.size() - 1; c >= 0; c--) {
            double bulge = forwards.get(Math.floorMod(c - 1, forwards.size())).bulge();
            back.add(new Corner(forwards.get(c).at(), -bulge));
        }
        Polyline path = PlateShape.path(Operation.CUT_INNER, back, pose);
        return round(path) ? circle(path) : path;
    }

    private static boolean round(Polyline path) {
        return IntStream.range(0, path.size())
                .allMatch(side -> path.arc(side)
                        .filter(arc -> Math.abs(arc.xMm() - circle(path).xMm()) < SAME_MM
                                && Math.abs(arc.yMm() - circle(path).yMm()) < SAME_MM)
                        .isPresent());
    }

    private static Circle circle(Polyline path) {
        return path.arc(0)
                .map(arc -> new Circle(path.operation(), arc.xMm(), arc.yMm(), arc.radiusMm()))
                .orElseThrow();
    }

    @Override
    public ConvexPolygon hull(Pose pose) {
        return ConvexPolygon.round(
                blank.rim().straight().corners().stream().map(pose::at).toList());
    }

    /** All lines by their short straight sides, since an arc counts as wide as it is high. */
    @Override
    public List<Shape> walls(Pose pose) {
        Stream<Polyline> lines = Stream.concat(Stream.of(blank.rim()), blank.holes().stream())
                .map(line -> Polyline.closed(
                        Operation.CUT_INNER, pose.xy(line.straight().corners())));
        Stream<Polyline> slots =
                arms.slots().stream().map(slot -> Polyline.closed(Operation.CUT_INNER, pose.xy(wall(slot))));
        return Stream.<Shape>concat(lines, slots).toList();
    }

    /** A slot to beyond the rim. */
    private List<Vector2D> wall(PlateArms.Slot slot) {
        double half = arms.plate().slotMm() / 2;
        double end = slot.fromMm() + blank.diameterMm();
        return List.of(
                PlateShape.place(slot, slot.fromMm(), -half),
                PlateShape.place(slot, end, -half),
                PlateShape.place(slot, end, half),
                PlateShape.place(slot, slot.fromMm(), half));
    }

    @Override
    public double toRim(Vector2D from, double angleRad) {
        return boundary()
                .crossings(from, new Vector2D(StrictMath.cos(angleRad), StrictMath.sin(angleRad)))
                .get(0);
    }

    @Override
    public boolean holds(Vector2D place) {
        return boundary().holds(place)
                && blank.holes().stream().noneMatch(hole -> new Boundary(hole.straight()).holds(place));
    }

    private Boundary boundary() {
        return new Boundary(blank.rim().straight());
    }

    private static List<Corner> corners(PlateBlank.Line line) {
        return IntStream.range(0, line.corners().size())
                .mapToObj(c -> new Corner(line.corners().get(c), line.bulges().get(c)))
                .toList();
    }
}
