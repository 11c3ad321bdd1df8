package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The rectangles left on a sheet by two straight cuts: one beyond all parts along it, one beyond all parts across what is
 * before that, or the other way round, whichever leaves the larger one. Smaller ones than a part are not worth keeping.
 */
final class Offcuts {

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    private final Field field;
    private final double lengthMm;
    private final double spacing;

    Offcuts(Field field, double lengthMm, double spacing) {
        this.field = field;
        this.lengthMm = lengthMm;
        this.spacing = spacing;
    }

    /** What is left clear of these outlines, which lie in the frame of the sheet. */
    List<Offcut> of(List<ConvexPolygon> outlines, double leastMm) {
        double right = 0;
        double top = 0;
        for (ConvexPolygon outline : outlines) {
            right = Math.max(right, outline.reach(RIGHT) + spacing);
            top = Math.max(top, outline.reach(UP) + spacing);
        }
        double m = field.margin();
        double endX = lengthMm - m;
        double endY = field.width() + m;
        Offcut wide = new Offcut(right, m, endX - right, endY - m);
        Offcut above = new Offcut(m, top, Math.min(right - spacing, endX) - m, endY - top);
        Offcut longer = new Offcut(m, top, endX - m, endY - top);
        Offcut beside = new Offcut(right, m, endX - right, Math.min(top - spacing, endY) - m);
        List<Offcut> first = kept(List.of(wide, above), leastMm);
        List<Offcut> second = kept(List.of(longer, beside), leastMm);
        return largest(first) >= largest(second) ? first : second;
    }

    private static List<Offcut> kept(List<Offcut> offcuts, double leastMm) {
        List<Offcut> kept = new ArrayList<>();
        for (Offcut offcut : offcuts) {
            if (Math.min(offcut.lengthMm(), offcut.widthMm()) >= leastMm) {
                kept.add(offcut);
            }
        }
        kept.sort(Comparator.comparingDouble(Offcuts::area).reversed());
        return kept;
    }

    private static double area(Offcut offcut) {
        return offcut.lengthMm() * offcut.widthMm();
    }

    private static double largest(List<Offcut> offcuts) {
        return offcuts.isEmpty() ? 0 : area(offcuts.get(0));
    }
}
