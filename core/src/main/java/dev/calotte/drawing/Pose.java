package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.nest.Placed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Where a pattern's frame lies in a drawing: mirrored in its y axis or not, then turned, then shifted.
 *
 * @param mirrored whether x changes its sign first
 * @param cos of the turn
 * @param sin of the turn
 * @param shift where the frame's origin lies
 */
public record Pose(boolean mirrored, double cos, double sin, Vector2D shift) {

    /**
     * Shifts only.
     *
     * @param shift where the frame's origin lies
     * @return the pose
     */
    public static Pose shifted(Vector2D shift) {
        return new Pose(false, 1, 0, shift);
    }

    /**
     * Turns about the origin only.
     *
     * @param turnRad counter-clockwise
     * @return the pose
     */
    public static Pose turned(double turnRad) {
        return new Pose(false, StrictMath.cos(turnRad), StrictMath.sin(turnRad), Vector2D.ZERO);
    }

    /**
     * As a part lies on its sheet.
     *
     * @param placed the part
     * @return the pose
     */
    public static Pose of(Placed placed) {
        return new Pose(
                placed.mirrored(),
                StrictMath.cos(placed.turnRad()),
                StrictMath.sin(placed.turnRad()),
                new Vector2D(placed.xMm(), placed.yMm()));
    }

    /**
     * The same, shifted elsewhere.
     *
     * @param other where the frame's origin lies
     * @return a copy
     */
    public Pose withShift(Vector2D other) {
        return new Pose(mirrored, cos, sin, other);
    }

    /**
     * Where the frame's x axis points, if it is not mirrored.
     *
     * @return counter-clockwise from x
     */
    public double turnRad() {
        return StrictMath.atan2(sin, cos);
    }

    /**
     * Where a point of the frame lies.
     *
     * @param point a point of the frame
     * @return its place in the drawing
     */
    public Vector2D at(Vector2D point) {
        double x = mirrored ? -point.getX() : point.getX();
        double y = point.getY();
        return new Vector2D(cos * x - sin * y, sin * x + cos * y).add(shift);
    }

    /** A label with its heads where they were, so that on a piece that lies face down, too, it can be read. */
    Label label(Label label) {
        double x = -StrictMath.sin(label.turnRad());
        double y = StrictMath.cos(label.turnRad());
        Vector2D upright = at(new Vector2D(x, y)).subtract(shift);
        Vector2D at = at(new Vector2D(label.xMm(), label.yMm()));
        return new Label(
                label.text(),
                at.getX(),
                at.getY(),
                StrictMath.atan2(-upright.getX(), upright.getY()),
                label.heightMm());
    }

    /**
     * A chain of points; in reverse where the pose mirrors, so that it runs the same way round.
     *
     * @param points points of the frame
     * @return x and y of each in the drawing
     */
    public double[] xy(List<Vector2D> points) {
        List<Vector2D> placed = new ArrayList<>(points.stream().map(this::at).toList());
        if (mirrored) {
            Collections.reverse(placed);
        }
        double[] xy = new double[2 * placed.size()];
        for (int i = 0; i < placed.size(); i++) {
            xy[2 * i] = placed.get(i).getX();
            xy[2 * i + 1] = placed.get(i).getY();
        }
        return xy;
    }
}
