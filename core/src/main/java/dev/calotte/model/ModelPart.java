package dev.calotte.model;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A flat part as it comes out, before anything is allowed for kerf.
 *
 * @param mark what it is called
 * @param description what it is, for people
 * @param outline its outline
 * @param folds where it folds
 * @param labels what is written on it
 * @param count how many of it there are
 */
record ModelPart(String mark, String description, Polygon outline, List<Fold> folds, List<Label> labels, int count) {

    /** More sides give nesting much work. */
    private static final int MANY_SIDES = 40;

    /** Enough for what is nearly round: little board is lost. */
    private static final int FEW_SIDES = 16;

    ModelPart {
        folds = List.copyOf(folds);
        labels = List.copyOf(labels);
    }

    /** The room that it takes on a sheet: its hull, or a polygon of few sides round that. */
    ConvexPolygon room(Kerf kerf) {
        return simplified(kerf.cutLine(outline).hull());
    }

    /** The same polygon, or one of few sides round it. */
    static ConvexPolygon simplified(ConvexPolygon hull) {
        return hull.size() <= MANY_SIDES ? hull : around(hull);
    }

    /** The regular directions' supporting lines, each crossed with the next. */
    private static ConvexPolygon around(ConvexPolygon hull) {
        double step = 2 * StrictMath.PI / FEW_SIDES;
        List<Vector2D> corners = new ArrayList<>();
        for (int side = 0; side < FEW_SIDES; side++) {
            double here = hull.reach(Disc.at(side * step, 1, 0));
            double next = hull.reach(Disc.at((side + 1) * step, 1, 0));
            double left = (next - here * StrictMath.cos(step)) / StrictMath.sin(step);
            corners.add(Disc.at(side * step, here, left));
        }
        return ConvexPolygon.round(corners);
    }
}
