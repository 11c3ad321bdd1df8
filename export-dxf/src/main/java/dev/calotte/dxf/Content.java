package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.document.Wireframe;
import java.io.IOException;
import java.util.List;

/** The entities of a document in the order of the file; can be drawn as often as needed. */
interface Content {

    void drawWith(Pen pen) throws IOException;

    /** What there is to draw in a document, or an IllegalArgumentException. */
    static Content of(Document document) {
        if (document instanceof Drawing drawing) {
            List<Operation> operations = drawing.operations();
            return pen -> draw(drawing, operations, pen);
        }
        if (document instanceof Wireframe wireframe) {
            return pen -> draw(wireframe, pen);
        }
        throw new IllegalArgumentException("DXF holds drawings and wireframes; " + document.name() + " is neither");
    }

    private static void draw(Drawing drawing, List<Operation> operations, Pen pen) throws IOException {
        for (Operation operation : operations) {
            Layer layer = Layer.of(operation);
            for (Drawing.Part part : drawing.parts()) {
                for (Shape shape : part.shapes()) {
                    if (shape.operation() == operation) {
                        draw(shape, layer, pen);
                    }
                }
            }
        }
    }

    private static void draw(Shape shape, Layer layer, Pen pen) throws IOException {
        if (shape instanceof Circle circle) {
            pen.circle(layer, circle);
        } else if (shape instanceof Polyline path) {
            pen.path(layer, path);
        }
    }

    private static void draw(Wireframe wireframe, Pen pen) throws IOException {
        int place = 0;
        for (Wireframe.Layer elements : wireframe.layers()) {
            Layer layer = Layer.numbered(elements.name(), place++);
            for (int element = 0; element < elements.size(); element++) {
                pen.element(layer, elements, element);
            }
        }
    }
}
