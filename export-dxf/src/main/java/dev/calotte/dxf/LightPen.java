package dev.calotte.dxf;

import dev.calotte.document.Path;
import java.io.IOException;

/** Draws a path as {@code LWPOLYLINE}, which holds its corners itself. */
final class LightPen extends EntityPen {

    LightPen(Entities entities) {
        super(entities);
    }

    @Override
    public void path(Layer layer, Path path) throws IOException {
        TagWriter tags = begin("LWPOLYLINE", layer, "AcDbPolyline");
        tags.whole(90, path.size());
        tags.whole(70, path.isClosed() ? 1 : 0);
        for (int i = 0; i < path.size(); i++) {
            tags.number(10, path.x(i));
            tags.number(20, path.y(i));
            if (Bends.bends(path, i)) {
                tags.fine(42, path.bulge(i));
            }
        }
    }
}
