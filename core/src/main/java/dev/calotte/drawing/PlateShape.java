package dev.calotte.drawing;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateArms.Slot;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** What a hub plate is cut out of: a disc, or someone's own shape. The hub's axis is the origin, its first arm along x. */
interface PlateShape {

    /** A corner, and the bulge of the side that begins there. */
    record Corner(Vector2D at, double bulge) {}

    static PlateShape of(PlateArms arms) {
        return arms.blank()
                .<PlateShape>map(blank -> new BlankOutline(arms, blank))
                .orElseGet(() -> new DiscOutline(arms));
    }

    /** What it reaches in all. */
    Box box();

    /** The outline with the slots between its arms, as one line. */
    Shape outline(Pose pose);

    /** What else is cut out of it. */
    List<Shape> holes(Pose pose);

    /** The outline alone, or what marks have to stay inside of. */
    ConvexPolygon hull(Pose pose);

    /** What marks have to keep clear of, besides what is drilled and bent. */
    List<Shape> walls(Pose pose);

    /** How far it is from a place inside to the outline. */
    double toRim(Vector2D from, double angleRad);

    /** Whether a place lies inside the outline. */
    boolean holds(Vector2D place);

    /** Into a slot from its clockwise side, whose wall ends so far out, and round its end. */
    static Stream<Corner> inside(PlateArms arms, Slot slot, double wallEndMm) {
        boolean round = arms.plate().cutterMm() > 0;
        double half = arms.plate().slotMm() / 2;
        double end = round ? slot.fromMm() + half : slot.fromMm();
        return Stream.of(
                new Corner(place(slot, wallEndMm, -half), 0),
                new Corner(place(slot, end, -half), round ? -1 : 0),
                new Corner(place(slot, end, half), 0));
    }

    /** A place by how far out it lies along a slot and how far to the left of its middle. */
    static Vector2D place(Slot slot, double out, double left) {
        double cos = StrictMath.cos(slot.angleRad());
        double sin = StrictMath.sin(slot.angleRad());
        return new Vector2D(out * cos - left * sin, out * sin + left * cos);
    }

    static Polyline path(Operation operation, List<Corner> corners, Pose pose) {
        return Polyline.closed(
                operation,
                pose.xy(corners.stream().map(Corner::at).toList()),
                corners.stream().mapToDouble(Corner::bulge).toArray());
    }
}
