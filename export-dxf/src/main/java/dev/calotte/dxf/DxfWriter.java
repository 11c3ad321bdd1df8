package dev.calotte.dxf;

import dev.calotte.document.Document;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes one file of a dialect; can be used alone:
 *
 * <pre>{@code
 * Path triangle = Path.closed(Operation.CUT_OUTER, 0, 0, 600, 0, 300, 520);
 * Part part = new Part("P1", "a triangle", List.of(triangle));
 * Drawing drawing = new Drawing("p1", "A triangle", 600, 520, List.of(part));
 * try (OutputStream file = Files.newOutputStream(target)) {
 *     new DxfWriter(Dialect.LWPOLYLINE).write(drawing, file);
 * }
 * }</pre>
 *
 * <p>A document is drawn twice, first to learn extents and layers and to meet whatever cannot be written, then into the
 * file, so that a file of any length needs no memory and a refused document leaves no half file.
 *
 * @param dialect the dialect
 */
public record DxfWriter(Dialect dialect) {

    /**
     * Writes a file. The stream is flushed and left open.
     *
     * @param document a drawing or a wireframe
     * @param out where to write
     * @throws IOException if the stream does not take the bytes
     * @throws IllegalArgumentException if the document is neither, or holds what DXF cannot say; nothing is written then
     */
    public void write(Document document, OutputStream out) throws IOException {
        Content content = Content.of(document);
        Survey survey = new Survey(document.name());
        content.drawWith(survey);
        new DxfFile(new TagWriter(out), dialect).write(Ascii.line(document.title()), content, survey);
    }
}
