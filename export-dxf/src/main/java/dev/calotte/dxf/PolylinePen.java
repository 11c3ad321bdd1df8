package dev.calotte.dxf;

import dev.calotte.contour.Contours.Closing;
import dev.calotte.document.Polyline;
import java.io.IOException;

/** Draws a path as {@code POLYLINE}, with an entity for each of its corners. */
final class PolylinePen extends EntityPen {

    private final Closing closing;

    PolylinePen(Entities entities, Closing closing) {
        super(entities);
        this.closing = closing;
    }

    @Override
    public void path(Layer layer, Polyline path) throws IOException {
        TagWriter tags = begin("POLYLINE", layer, "AcDb2dPolyline");
        tags.whole(66, 1);
        tags.flat(0, 0);
        tags.whole(70, path.isClosed() && closing == Closing.FLAG ? 1 : 0);
        for (int i = 0; i < path.size(); i++) {
            vertex(layer, path, i);
            if (Bends.bends(path, i)) {
                tags.fine(42, path.bulge(i));
            }
        }
        if (path.isClosed() && closing == Closing.CORNER) {
            vertex(layer, path, 0);
        }
        begin("SEQEND", layer, "");
    }

    private void vertex(Layer layer, Polyline path, int corner) throws IOException {
        begin("VERTEX", layer, "AcDb2dVertex").flat(path.x(corner), path.y(corner));
    }
}
