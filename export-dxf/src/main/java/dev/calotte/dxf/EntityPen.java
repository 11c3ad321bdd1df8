package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Path;
import dev.calotte.document.Wireframe;
import java.io.IOException;

/** A pen that writes. Colours and line types are those of the layers. */
final class EntityPen implements Pen {

    private static final int FACE_CORNERS = 4;

    private final TagWriter tags;

    EntityPen(TagWriter tags) {
        this.tags = tags;
    }

    @Override
    public void path(Layer layer, Path path) throws IOException {
        begin("POLYLINE", layer);
        tags.whole(66, 1);
        tags.place(10, 0, 0, 0);
        tags.whole(70, path.isClosed() ? 1 : 0);
        for (int i = 0; i < path.size(); i++) {
            begin("VERTEX", layer);
            tags.place(10, path.x(i), path.y(i), 0);
            if (!Decimals.same(path.bulge(i), 0)) {
                tags.number(42, path.bulge(i));
            }
        }
        begin("SEQEND", layer);
    }

    @Override
    public void circle(Layer layer, Circle circle) throws IOException {
        begin("CIRCLE", layer);
        tags.place(10, circle.xMm(), circle.yMm(), 0);
        tags.number(40, circle.radiusMm());
    }

    @Override
    public void element(Layer layer, Wireframe.Layer elements, int element) throws IOException {
        switch (elements.sort()) {
            case POINTS -> corners("POINT", layer, elements, element, 1);
            case LINES -> corners("LINE", layer, elements, element, 2);
            case FACES -> corners("3DFACE", layer, elements, element, FACE_CORNERS);
        }
    }

    /** Writes the corners of an element; one that has fewer repeats its last, as a face of three corners has to. */
    private void corners(String type, Layer layer, Wireframe.Layer elements, int element, int count)
            throws IOException {
        begin(type, layer);
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

    private void begin(String type, Layer layer) throws IOException {
        tags.text(0, type);
        tags.text(8, layer.name());
    }
}
