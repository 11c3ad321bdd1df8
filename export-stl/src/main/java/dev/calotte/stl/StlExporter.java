package dev.calotte.stl;

import dev.calotte.document.Bedded;
import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.Rods;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import dev.calotte.stl.body.Bodies;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes meshes as binary STL: a header of 80 bytes, the number of facets, and 50 bytes a facet, little-endian. The
 * format knows no unit; coordinates are millimetres and the header says so. Each normal is the one of the facet's
 * written corners, counter-clockwise seen from outside, and the attribute is 0.
 *
 * <p>The format is that of the StereoLithography Interface Specification (3D Systems, 1989).
 *
 * <p>The dialect {@code ascii} writes the same numbers as text. A plate of jigs is modelled here, and becomes a file for
 * each piece and one in 3MF, which knows units, names and quantities.
 *
 * <p>Coordinates are rounded to single precision, and vertices that become one place become one vertex. Facets without
 * area after that are left out. Refused with an {@link IllegalArgumentException}, before the first byte is written: other
 * documents, numbers that single precision cannot hold, a surface that is no longer closed after rounding, that is
 * inside out, or of which nothing is left.
 */
public final class StlExporter implements Exporter {

    private static final String BINARY = "binary";
    private static final String ASCII = "ascii";

    /** Makes an exporter; it has no state. */
    public StlExporter() {}

    @Override
    public String format() {
        return "stl";
    }

    @Override
    public List<String> dialects() {
        return List.of(BINARY, ASCII);
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Mesh
                || document instanceof Rods
                || document instanceof Bedded
                || document instanceof PrintPlate;
    }

    /**
     * A mesh becomes one file; a plate one for each piece to print, called as the piece, and {@code stl/NAME.3mf}, which
     * holds them all. Where both dialects are asked for, each has its folder.
     */
    @Override
    public List<Rendition> renditions(Document document, Finish finish) {
        List<Rendition> files = new ArrayList<>();
        if (document instanceof PrintPlate plate) {
            List<Printed> bodies = Printed.of(plate);
            bodies.forEach(body -> files.addAll(renditions(body.mesh(), finish.dialects(this))));
            files.add(new Rendition(
                    "stl/" + plate.name() + ".3mf", out -> new PlateFile(plate.title(), bodies).write(out)));
        } else if (document instanceof Mesh mesh) {
            files.addAll(renditions(mesh, finish.dialects(this)));
        } else {
            Bodies.of(document).forEach(mesh -> files.addAll(renditions(mesh, finish.dialects(this))));
        }
        return List.copyOf(files);
    }

    private static List<Rendition> renditions(Mesh mesh, List<String> dialects) {
        return dialects.stream()
                .map(dialect -> {
                    String folder = dialects.size() == 1 ? "stl/" : "stl/" + dialect + "/";
                    return new Rendition(folder + mesh.name() + ".stl", out -> write(mesh, dialect.equals(ASCII), out));
                })
                .toList();
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        write(mesh(document), false, out);
    }

    private static Mesh mesh(Document document) {
        if (document instanceof Mesh mesh) {
            return mesh;
        }
        throw new IllegalArgumentException("STL holds meshes; " + document.name() + " is none");
    }

    private static void write(Mesh mesh, boolean ascii, OutputStream out) throws IOException {
        if (ascii) {
            new AsciiWriter(out).write(mesh.name(), proven(mesh));
        } else {
            new FacetWriter(out).write(mesh.name(), proven(mesh));
        }
    }

    private static Surface proven(Mesh mesh) {
        try {
            Surface surface = Surface.of(mesh);
            surface.prove();
            return surface;
        } catch (IllegalArgumentException torn) {
            throw new IllegalArgumentException(
                    mesh.name() + " cannot be written in single precision: " + torn.getMessage(), torn);
        }
    }
}
