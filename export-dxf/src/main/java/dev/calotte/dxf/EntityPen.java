package dev.calotte.dxf;

import dev.calotte.contour.Contours.Closing;
import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Wireframe;
import java.io.IOException;

/** A pen that writes. Circles, and what stands in space, are the same in all dialects. */
abstract class EntityPen implements Pen {

    private static final int FACE_CORNERS = 4;

    private final Entities entities;

    EntityPen(Entities entities) {
        this.entities = entities;
    }

    static EntityPen of(Dialect dialect, Entities entities, Closing closing) {
        return switch (dialect) {
            case POLYLINE -> new PolylinePen(entities, closing);
            case LWPOLYLINE -> new LightPen(entities, closing);
            case LINES -> new LinesPen(entities);
        };
    }

    /** Begins an entity of a path. */
    final TagWriter begin(String type, Layer layer, String subclass) throws IOException {
        return entities.begin(type, layer, subclass);
    }

    @Override
    public abstract void path(Layer layer, Polyline path) throws IOException;

    @Override
    public final void circle(Layer layer, Circle circle) throws IOException {
        TagWriter tags = begin("CIRCLE", layer, "AcDbCircle");
        tags.place(10, circle.xMm(), circle.yMm(), 0);
        tags.number(40, circle.radiusMm());
    }

    @Override
    public final void element(Layer layer, Wireframe.Layer elements, int element) throws IOException {
        switch (elements.sort()) {
            case POINTS -> corners(begin("POINT", layer, "AcDbPoint"), elements, element, 1);
            case LINES -> corners(begin("LINE", layer, "AcDbLine"), elements, element, 2);
            case FACES -> corners(begin("3DFACE", layer, "AcDbFace"), elements, element, FACE_CORNERS);
        }
    }

    /** Writes the corners of an element; one that has fewer repeats its last, as a face of three corners has to. */
    private static void corners(TagWriter tags, Wireframe.Layer elements, int element, int count) throws IOException {
        int last = elements.sort().corners() - 1;
        for (int i = 0; i < count; i++) {
            int corner = Math.min(i, last);
            tags.place(
                    10 + i,
                    elements.at(element, corner, 0),
                    elements.at(element, corner, 1),
                    elements.at(element, corner, 2));
        }
    }
}
