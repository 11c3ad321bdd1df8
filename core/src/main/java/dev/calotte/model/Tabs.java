package dev.calotte.model;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The glue tabs: one at each side where two panels of different pieces, or two that the net cuts apart, are joined. It
 * belongs to the panel of lower number and goes under the other one. Its ends are cut back to half that panel's angle, and
 * to 45 degrees at most, so that the tabs under a panel do not lie on each other, nor those beside a panel that is
 * missing.
 *
 * @param shell the panels
 * @param tabMm how wide tabs are where there is room
 */
record Tabs(Shell shell, double tabMm) {

    /** Of the circle inside the panel that a tab goes under. */
    static final double MOST_OF_INRADIUS = 0.8;

    private static final double STEEPEST = StrictMath.PI / 4;

    /** Ends stay so far back from the line where two tabs would touch. */
    private static final double BACK = StrictMath.toRadians(2);

    /** Whether a side has a tab unless it is a fold. */
    boolean has(int side) {
        return shell.twin(side) != Shell.NONE && side == shell.side(shell.strut(side));
    }

    double widthMm(int side) {
        return Math.min(tabMm, MOST_OF_INRADIUS * shell.inradiusMm(shell.twin(side) / 3));
    }

    /** The two outer corners of the tab of a side that lies from one place to another, in the order of the outline. */
    List<Vector2D> outer(int side, Vector2D from, Vector2D to) {
        return outer(side, from, to, BACK);
    }

    /** Those of the room that must stay free for it. */
    List<Vector2D> reach(int side, Vector2D from, Vector2D to) {
        return outer(side, from, to, BACK / 100);
    }

    private List<Vector2D> outer(int side, Vector2D from, Vector2D to, double back) {
        int twin = shell.twin(side);
        Vector2D along = to.subtract(from).normalize();
        Vector2D out = new Vector2D(along.getY(), -along.getX());
        double width = widthMm(side);
        // the twin runs the other way, so it ends where this side begins
        double atFrom = width / StrictMath.tan(end(Shell.after(twin), back));
        double atTo = width / StrictMath.tan(end(twin, back));
        return List.of(
                from.add(atFrom, along).add(width, out),
                to.subtract(atTo, along).add(width, out));
    }

    private double end(int side, double back) {
        return Math.min(STEEPEST, shell.angleRad(side) / 2) - back;
    }
}
