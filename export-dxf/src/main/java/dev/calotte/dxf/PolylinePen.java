package dev.calotte.dxf;

import dev.calotte.document.Path;
import java.io.IOException;

/** Draws a path as {@code POLYLINE}, with an entity for each of its corners. */
final class PolylinePen extends EntityPen {

    PolylinePen(Entities entities) {
        super(entities);
    }

    @Override
    public void path(Layer layer, Path path) throws IOException {
        TagWriter tags = begin("POLYLINE", layer, "AcDb2dPolyline");
        tags.whole(66, 1);
        tags.place(10, 0, 0, 0);
        tags.whole(70, path.isClosed() ? 1 : 0);
        for (int i = 0; i < path.size(); i++) {
            begin("VERTEX", layer, "AcDb2dVertex").place(10, path.x(i), path.y(i), 0);
            if (Bends.bends(path, i)) {
                tags.fine(42, path.bulge(i));
            }
        }
        begin("SEQEND", layer, "");
    }
}
