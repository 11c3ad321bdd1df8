package dev.calotte.stl;

import dev.calotte.document.Mesh;
import dev.calotte.units.NumberText;
import java.io.IOException;
import java.io.Writer;
import java.util.List;

/** The model part of a 3MF file: an object for each body, and an item on the plate for each piece that is needed. */
final class PlateModel {

    private static final String NAMESPACE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private static final int DECIMALS = 6;
    /** Rows end here; a slicer arranges them on its own bed. */
    private static final double ROW = 1000;

    private static final double GAP = 5;

    private final Writer out;

    PlateModel(Writer out) {
        this.out = out;
    }

    void write(String title, List<Printed> bodies) throws IOException {
        out.write("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.write("<model unit=\"millimeter\" xml:lang=\"en-US\" xmlns=\"" + NAMESPACE + "\">\n");
        out.write("<metadata name=\"Title\">" + escaped(title) + "</metadata>\n");
        List<String> lines = bodies.stream()
                .map(body -> body.mark() + ": " + body.mesh().title())
                .toList();
        out.write("<metadata name=\"Description\">" + escaped(String.join("; ", lines)) + "</metadata>\n");
        out.write("<metadata name=\"Application\">calotte</metadata>\n<resources>\n");
        for (int i = 0; i < bodies.size(); i++) {
            object(i + 1, bodies.get(i));
        }
        out.write("</resources>\n<build>\n");
        items(bodies);
        out.write("</build>\n</model>\n");
    }

    private void object(int id, Printed body) throws IOException {
        Mesh mesh = body.mesh();
        out.write("<object id=\"" + id + "\" type=\"model\" name=\"" + body.mark() + "\" partnumber=\"" + body.mark()
                + "\"><mesh>\n<vertices>\n");
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            out.write("<vertex x=\"" + text(mesh.at(vertex, 0)) + "\" y=\"" + text(mesh.at(vertex, 1)) + "\" z=\""
                    + text(mesh.at(vertex, 2)) + "\"/>\n");
        }
        out.write("</vertices>\n<triangles>\n");
        for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
            out.write("<triangle v1=\"" + mesh.corner(triangle, 0) + "\" v2=\"" + mesh.corner(triangle, 1) + "\" v3=\""
                    + mesh.corner(triangle, 2) + "\"/>\n");
        }
        out.write("</triangles>\n</mesh></object>\n");
    }

    /** Side by side in rows, each row as deep as its deepest piece. */
    private void items(List<Printed> bodies) throws IOException {
        double x = 0;
        double y = 0;
        double deepest = 0;
        for (int i = 0; i < bodies.size(); i++) {
            Printed body = bodies.get(i);
            for (int piece = 0; piece < body.count(); piece++) {
                if (x > 0 && x + body.sizeMm(0) > ROW) {
                    x = 0;
                    y += deepest + GAP;
                    deepest = 0;
                }
                out.write("<item objectid=\"" + (i + 1) + "\" transform=\"1 0 0 0 1 0 0 0 1 " + text(x) + " " + text(y)
                        + " 0\"/>\n");
                x += body.sizeMm(0) + GAP;
                deepest = Math.max(deepest, body.sizeMm(1));
            }
        }
    }

    private static String text(double mm) {
        return NumberText.trimmed(mm, DECIMALS);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
