package dev.calotte.dxf;

import dev.calotte.contour.Contours.Closing;
import dev.calotte.document.Polyline;
import java.io.IOException;

/** Draws a path as {@code LWPOLYLINE}, which holds its corners itself. */
final class LightPen extends EntityPen {

    private final Closing closing;

    LightPen(Entities entities, Closing closing) {
        super(entities);
        this.closing = closing;
    }

    @Override
    public void path(Layer layer, Polyline path) throws IOException {
        TagWriter tags = begin("LWPOLYLINE", layer, "AcDbPolyline");
        boolean repeats = path.isClosed() && closing == Closing.CORNER;
        tags.whole(90, path.size() + (repeats ? 1 : 0));
        tags.whole(70, path.isClosed() && !repeats ? 1 : 0);
        for (int i = 0; i < path.size(); i++) {
            corner(tags, path, i);
            if (Bends.bends(path, i)) {
                tags.fine(42, path.bulge(i));
            }
        }
        if (repeats) {
            corner(tags, path, 0);
        }
    }

    private static void corner(TagWriter tags, Polyline path, int corner) throws IOException {
        tags.number(10, path.x(corner));
        tags.number(20, path.y(corner));
    }
}
