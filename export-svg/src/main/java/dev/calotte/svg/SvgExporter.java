package dev.calotte.svg;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Picture;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * The SVG files of drawings and pictures, as {@link SvgWriter} writes them.
 */
public final class SvgExporter implements Exporter {

    /** Makes an exporter; it has no state. */
    public SvgExporter() {}

    @Override
    public String format() {
        return "svg";
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Drawing || document instanceof Picture;
    }

    @Override
    public List<Rendition> renditions(Document document, Finish finish) {
        SvgWriter writer = SvgWriter.of(finish);
        return List.of(new Rendition("svg/" + document.name() + ".svg", out -> writer.write(document, out)));
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        SvgWriter.of(Finish.PLAIN).write(document, out);
    }
}
