package dev.calotte.dxf;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Wireframe;
import dev.calotte.export.Exporter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Writes drawings and wireframes as DXF of release 12 (AC1009), the oldest dialect that is still read everywhere:
 * ASCII, lines ended by CR and LF, millimetres, y upwards, every coordinate rounded once to at most six decimals.
 *
 * <p>A drawing has one layer an operation, named after it, and its entities stand in working order: {@code ENGRAVE},
 * {@code SCORE}, {@code DRILL}, {@code CUT_INNER}, {@code CUT_OUTER}, then {@code REF} and {@code SHEET}; inside a layer
 * in the order of the drawing. A path is one {@code POLYLINE}, closed by its flag and never by a repeated corner; a
 * circle is a {@code CIRCLE}. There is no text: many machines cannot read it and the others set it in fonts of their
 * own. A wireframe keeps its layers, of {@code POINT}, {@code LINE} and {@code 3DFACE}.
 *
 * <p>The structure follows the AutoCAD Release 12 Customization Manual, chapter 11, "Drawing Interchange and File
 * Formats" (Autodesk 1992). {@code $MEASUREMENT} and {@code $INSUNITS} are younger and written all the same: readers
 * that know one of them get the scale right, the others pass over it.
 *
 * <p>Refused with an {@link IllegalArgumentException}, before the first byte is written: other documents, numbers that
 * are not finite, sides and lines without length and circles without radius after rounding, and layers named like a word
 * of the format.
 */
public final class DxfExporter implements Exporter {

    /** Makes an exporter; it has no state. */
    public DxfExporter() {}

    @Override
    public String format() {
        return "dxf";
    }

    @Override
    public List<String> dialects() {
        return List.of("polyline");
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Drawing || document instanceof Wireframe;
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        Content content = Content.of(document);
        Survey survey = new Survey(document.name());
        content.drawWith(survey);
        new DxfFile(new TagWriter(out)).write(document.title(), content, survey);
    }
}
