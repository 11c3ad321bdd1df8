package dev.calotte.svg;

import dev.calotte.document.Drawing;
import dev.calotte.export.Finish;
import dev.calotte.export.PageSize;
import dev.calotte.export.Rendition;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The templates of a drawing, written and read back. */
final class Printed {

    private static final String FOLDER = "svg/templates/";

    private Printed() {}

    /** The bytes of every file of a template, by its name without folder. */
    static Map<String, byte[]> files(Drawing drawing, PageSize size) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (Rendition file : new SvgExporter().renditions(drawing, Finish.PLAIN.withPage(size))) {
            if (file.path().startsWith(FOLDER)) {
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                file.content().writeTo(out);
                files.put(file.path().substring(FOLDER.length()), out.toByteArray());
            }
        }
        return files;
    }

    /** The pages as SVG. */
    static Map<String, Document> pages(Drawing drawing, PageSize size) throws IOException {
        Map<String, Document> pages = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : files(drawing, size).entrySet()) {
            if (file.getKey().endsWith(".svg")) {
                pages.put(file.getKey().replace(".svg", ""), Svg.of(file.getValue()));
            }
        }
        return pages;
    }

    /** Straight sides of a path, four numbers each, y upwards. */
    static List<double[]> sides(Element path, PageSize size) {
        List<double[]> sides = new ArrayList<>();
        for (String chain : path.attr("d").substring(1).split("M", -1)) {
            List<Double> numbers = Svg.numbers("M" + chain);
            int points = numbers.size() / 2;
            for (int i = 1; i < points + (chain.endsWith("Z") ? 1 : 0); i++) {
                int to = i % points;
                sides.add(new double[] {
                    numbers.get(2 * i - 2),
                    size.heightMm() - numbers.get(2 * i - 1),
                    numbers.get(2 * to),
                    size.heightMm() - numbers.get(2 * to + 1)
                });
            }
        }
        return sides;
    }

    static List<double[]> sides(Document page, String id, PageSize size) {
        Element path = page.getElementById(id);
        return path == null ? List.of() : sides(path, size);
    }

    static Drawing triangle(String name, double side) {
        return Samples.pattern(
                name,
                dev.calotte.document.Polyline.closed(
                        dev.calotte.document.Operation.CUT_OUTER,
                        10,
                        20,
                        10 + side,
                        20,
                        10 + side / 2,
                        20 + 0.866 * side));
    }
}
