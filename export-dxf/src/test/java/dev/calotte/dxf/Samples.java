package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.document.Wireframe;
import dev.calotte.testing.LetterF;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Documents made by hand. */
final class Samples {

    private static final double[] TETRAHEDRON = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25};

    private Samples() {}

    static Drawing drawing(Shape... shapes) {
        return new Drawing("panels/P1", "", 140, 180, List.of(new Drawing.Part("P1", "by hand", List.of(shapes))));
    }

    static Drawing letterF() {
        return new Drawing(
                "panels/F",
                "Panel F, \u00d8 8",
                140,
                180,
                List.of(
                        new Drawing.Part(
                                "F",
                                "a letter",
                                List.of(
                                        LetterF.OUTLINE,
                                        new Circle(Operation.DRILL, 25, 135, 4),
                                        Polyline.closed(Operation.CUT_INNER, 50, 70, 50, 80, 60, 75),
                                        Polyline.open(Operation.ENGRAVE, 20, 20, 25, 30, 30, 20),
                                        Polyline.open(Operation.SCORE, 10, 100, 40, 100))),
                        new Drawing.Part(
                                "R", "100 mm", List.of(Polyline.open(Operation.REF, 10, 170, 110.0000004, 170)))));
    }

    /** Two rounded corners, one of them cut in, and a long one of half a circle. */
    static Drawing rounded() {
        double quarter = Math.sqrt(2) - 1;
        return drawing(Polyline.closed(
                Operation.CUT_OUTER,
                new double[] {20, 10, 120, 10, 130, 20, 130, 60, 70, 60, 60, 70, 20, 70},
                new double[] {0, quarter, 0, 0, -quarter, 0, 1}));
    }

    static Wireframe points() {
        return wireframe(new Wireframe.Layer("HUBS", Wireframe.Sort.POINTS, 1, 2, 3, -0.5, 1.0 / 3, 0));
    }

    static Wireframe lines() {
        return wireframe(
                new Wireframe.Layer("STRUTS-S1", Wireframe.Sort.LINES, 0, 0, 0, 30, 0, 0, 0, 0, 0, 0, 0, 7.25));
    }

    static Wireframe faces() {
        return wireframe(new Wireframe.Layer("PANELS-P1", Wireframe.Sort.FACES, 0, 0, 0, 30, 0, 0, 10, 10, 25));
    }

    static Wireframe tetrahedron() {
        List<Double> lines = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (int j = i + 1; j < 4; j++) {
                addVertex(lines, i);
                addVertex(lines, j);
            }
        }
        return wireframe(
                new Wireframe.Layer("HUBS", Wireframe.Sort.POINTS, TETRAHEDRON),
                new Wireframe.Layer(
                        "STRUTS-S1",
                        Wireframe.Sort.LINES,
                        lines.stream().mapToDouble(Double::doubleValue).toArray()),
                new Wireframe.Layer("EMPTY", Wireframe.Sort.FACES));
    }

    private static void addVertex(List<Double> xyz, int vertex) {
        for (int axis = 0; axis < 3; axis++) {
            xyz.add(TETRAHEDRON[3 * vertex + axis]);
        }
    }

    static Wireframe wireframe(Wireframe.Layer... layers) {
        return new Wireframe("frame-3d", "", List.of(layers));
    }

    static List<Document> all() {
        return List.of(letterF(), rounded(), tetrahedron(), points(), lines(), faces());
    }

    static byte[] bytes(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DxfExporter().write(document, out);
        return out.toByteArray();
    }

    static byte[] bytes(Document document, Dialect dialect) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DxfWriter(dialect).write(document, out);
        return out.toByteArray();
    }
}
