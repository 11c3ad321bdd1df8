package dev.calotte.drawing;

import dev.calotte.units.UnitSystem;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A round figure on a page: as large as the page lets it be, its middle on the middle line, the arrow of the start ray
 * over it at twelve o'clock.
 *
 * @param place where the figure stands
 * @param reachMm its radius on paper
 * @param besideMm how far marks stand out over it
 */
record Roundel(OnPaper place, double reachMm, Beside besideMm) {

    private static final double ARROW = StartArrow.LENGTH + 6;

    /**
     * The room that marks need round a figure.
     *
     * @param across left and right of it
     * @param up over and under it
     */
    record Beside(double across, double up) {}

    static Roundel of(Paper paper, double reach, Beside beside, UnitSystem units) {
        Box room = paper.room();
        double most = Math.min(room.width() - 2 * beside.across, room.height() - 2 * beside.up - ARROW);
        DrawnScale scale = DrawnScale.fitting(2 * reach, Math.max(most, 1), units);
        double reachMm = scale.onPaper(reach);
        Vector2D middle = new Vector2D(room.middleX(), room.high() - ARROW - beside.up - reachMm);
        return new Roundel(new OnPaper(middle, scale), reachMm, beside);
    }

    void addArrow(Paper paper) {
        double y = place.origin().getY() + reachMm + besideMm.up + 1;
        StartArrow.add(paper, new Vector2D(place.origin().getX(), y), new Vector2D(0, 1));
    }

    double lowest() {
        return place.origin().getY() - reachMm - besideMm.up;
    }

    /** Where leaders stand: at the sides of the paper. */
    Box between(Paper paper, double columns) {
        Box room = paper.room();
        double high = room.high() - ARROW;
        return new Box(room.left() + columns, lowest(), room.right() - columns, high);
    }
}
