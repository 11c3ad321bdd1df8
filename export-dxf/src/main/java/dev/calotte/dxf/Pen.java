package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Polyline;
import dev.calotte.document.Wireframe;
import java.io.IOException;

/** What a document is drawn with, entity by entity, in the order of the file. */
interface Pen {

    void path(Layer layer, Polyline path) throws IOException;

    void circle(Layer layer, Circle circle) throws IOException;

    /** Draws one point, line or face. */
    void element(Layer layer, Wireframe.Layer elements, int element) throws IOException;
}
