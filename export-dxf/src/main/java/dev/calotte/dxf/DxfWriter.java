package dev.calotte.dxf;

import dev.calotte.contour.Contours;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes one file of a dialect; can be used alone:
 *
 * <pre>{@code
 * Polyline triangle = Polyline.closed(Operation.CUT_OUTER, 0, 0, 600, 0, 300, 520);
 * Drawing.Part part = new Drawing.Part("P1", "a triangle", List.of(triangle));
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
 * @param contours how tools follow the lines of drawings
 */
public record DxfWriter(Dialect dialect, Contours contours) {

    /**
     * A writer with plain contours.
     *
     * @param dialect the dialect
     */
    public DxfWriter(Dialect dialect) {
        this(dialect, Contours.PLAIN);
    }

    /**
     * Writes a file. The stream is flushed and left open.
     *
     * @param document a drawing or a wireframe
     * @param out where to write
     * @throws IOException if the stream does not take the bytes
     * @throws IllegalArgumentException if the document is neither, holds what DXF cannot say, or two cuts lie on each
     *     other; nothing is written then
     */
    public void write(Document document, OutputStream out) throws IOException {
        Document followed = document instanceof Drawing drawing ? contours.of(drawing) : document;
        Content content = Content.of(followed);
        Survey survey = new Survey(followed.name());
        content.drawWith(survey);
        new DxfFile(new TagWriter(out), dialect, contours.closing())
                .write(Title.comment(followed.title()), content, survey);
    }
}
