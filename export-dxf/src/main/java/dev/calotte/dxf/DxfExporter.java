package dev.calotte.dxf;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Wireframe;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes drawings and wireframes as DXF in one or several dialects ({@link Dialect}): ASCII, lines ended by CR and LF,
 * millimetres, y upwards, every coordinate rounded once to at most six decimals. One dialect gives
 * {@code dxf/<name>.dxf}, several give {@code dxf/<dialect>/<name>.dxf}.
 *
 * <p>A drawing has one layer an operation, named after it, and its entities stand in working order: {@code ENGRAVE},
 * {@code SCORE}, {@code DRILL}, {@code CUT_INNER}, {@code CUT_OUTER}, then {@code REF} and {@code SHEET}; inside a layer
 * in the order of the drawing. An outline is one polyline, closed by its flag and never by a repeated corner, its arcs
 * given by their bulge; or, in lines, one side after another. A circle is a {@code CIRCLE}. There is no text: many
 * machines cannot read it and the others set it in fonts of their own. A wireframe keeps its layers, of {@code POINT},
 * {@code LINE} and {@code 3DFACE}.
 *
 * <p>The structure follows the AutoCAD Release 12 Customization Manual, chapter 11, "Drawing Interchange and File
 * Formats" (Autodesk 1992), and the AutoCAD 2000 DXF Reference (Autodesk 1999). {@code $MEASUREMENT} and
 * {@code $INSUNITS} are younger than release 12 and written all the same: readers that know one of them get the scale
 * right, the others pass over it.
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
        return Dialect.words();
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Drawing || document instanceof Wireframe;
    }

    @Override
    public List<Rendition> renditions(Document document, Finish finish) {
        List<String> dialects = finish.dialects(this);
        List<Rendition> files = new ArrayList<>();
        for (String word : dialects) {
            DxfWriter writer = new DxfWriter(Dialect.of(word), finish.contours());
            String folder = dialects.size() > 1 ? word + "/" : "";
            files.add(new Rendition(
                    "dxf/" + folder + document.name() + ".dxf", stream -> writer.write(document, stream)));
        }
        return List.copyOf(files);
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        new DxfWriter(Dialect.POLYLINE).write(document, out);
    }
}
