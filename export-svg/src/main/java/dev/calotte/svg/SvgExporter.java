package dev.calotte.svg;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Picture;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import dev.calotte.svg.paper.Leaf;
import dev.calotte.svg.paper.PdfFile;
import dev.calotte.svg.paper.Template;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The SVG files of drawings and pictures, as {@link SvgWriter} writes them, and for each single pattern a paper template
 * at full size: {@code svg/templates/<name>.svg}, which is the only page or the overview,
 * {@code svg/templates/<name>-r2c3.svg} for each page, and all of them once more in {@code svg/templates/<name>.pdf}, which
 * is easier to print.
 */
public final class SvgExporter implements Exporter {

    private static final String TEMPLATES = "svg/templates/";

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
        List<Rendition> files = new ArrayList<>();
        files.add(new Rendition("svg/" + document.name() + ".svg", out -> writer.write(document, out)));
        if (document instanceof Drawing drawing && Template.suits(drawing)) {
            files.addAll(templates(Template.of(drawing, finish.page())));
        }
        return files;
    }

    private static List<Rendition> templates(Template template) {
        List<Rendition> files = new ArrayList<>();
        List<Leaf> leaves = template.leaves();
        for (Leaf leaf : leaves) {
            files.add(new Rendition(
                    TEMPLATES + leaf.name() + ".svg", out -> new TemplatePage(leaf.page()).write(new Xml(out))));
        }
        files.add(new Rendition(TEMPLATES + template.name() + ".pdf", out -> PdfFile.write(leaves, out)));
        return files;
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        SvgWriter.of(Finish.PLAIN).write(document, out);
    }
}
