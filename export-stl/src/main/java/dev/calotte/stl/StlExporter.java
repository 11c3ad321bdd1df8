package dev.calotte.stl;

import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import dev.calotte.export.Exporter;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes meshes as binary STL: a header of 80 bytes, the number of facets, and 50 bytes a facet, little-endian. The
 * format knows no unit; coordinates are millimetres and the header says so. Each normal is the one of the facet's
 * written corners, counter-clockwise seen from outside, and the attribute is 0.
 *
 * <p>The format is that of the StereoLithography Interface Specification (3D Systems, 1989).
 *
 * <p>Coordinates are rounded to single precision, and vertices that become one place become one vertex. Facets without
 * area after that are left out. Refused with an {@link IllegalArgumentException}, before the first byte is written: other
 * documents, numbers that single precision cannot hold, a surface that is no longer closed after rounding, that is
 * inside out, or of which nothing is left.
 */
public final class StlExporter implements Exporter {

    /** Makes an exporter; it has no state. */
    public StlExporter() {}

    @Override
    public String format() {
        return "stl";
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Mesh;
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        if (!(document instanceof Mesh mesh)) {
            throw new IllegalArgumentException("STL holds meshes; " + document.name() + " is none");
        }
        new FacetWriter(out).write(mesh.name(), proven(mesh));
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
