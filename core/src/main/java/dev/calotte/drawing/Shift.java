package dev.calotte.drawing;

import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import java.util.ArrayList;
import java.util.List;

/** Moves what is drawn downwards. */
final class Shift {

    private Shift() {}

    static Item down(Item item, double by) {
        if (item instanceof Facet f) {
            return new Facet(down(f.xy(), by), f.colour(), f.tone(), f.hatch(), f.weight(), f.title());
        }
        if (item instanceof Disc d) {
            return new Disc(d.x(), d.y() - by, d.radiusMm(), d.colour(), d.weight(), d.title());
        }
        if (item instanceof Line l) {
            return new Line(l.x1(), l.y1() - by, l.x2(), l.y2() - by, l.weight(), l.dashed());
        }
        Label label = (Label) item;
        return new Label(label.text(), label.x(), label.y() - by, label.heightMm(), label.anchor());
    }

    /** How high the first point of an item is. */
    static double height(Item item) {
        if (item instanceof Facet f) {
            return f.xy().get(1);
        }
        if (item instanceof Disc d) {
            return d.y();
        }
        return item instanceof Line l ? l.y1() : ((Label) item).y();
    }

    private static List<Double> down(List<Double> xy, double by) {
        List<Double> moved = new ArrayList<>(xy);
        for (int i = 1; i < moved.size(); i += 2) {
            moved.set(i, moved.get(i) - by);
        }
        return moved;
    }
}
