package dev.calotte.svg.book;

import dev.calotte.document.Picture;
import dev.calotte.export.Finish;
import dev.calotte.svg.SvgWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;

/**
 * Pictures inside the page, as {@link SvgWriter} writes them. A picture that comes again is drawn from the first one, by
 * the one id that it has.
 */
final class Pictures {

    private static final double SMALL_MM = 90;
    private static final double MIDDLE_MM = 150;

    /** Looked up only, never gone through. */
    private final Map<Picture, String> drawn = new HashMap<>();

    /** A picture on its card. */
    Element sheet(Picture picture, String caption) throws IOException {
        String style = picture.widthMm() < SMALL_MM ? "small" : picture.widthMm() < MIDDLE_MM ? "middle" : "large";
        return Html.styled("div", "sheet").addClass(style).appendChild(svg(picture, caption));
    }

    private Element svg(Picture picture, String caption) throws IOException {
        String before = drawn.get(picture);
        Element svg = before == null ? first(picture) : again(picture, before);
        return svg.attr("role", "img").attr("aria-label", Html.clean(caption.isEmpty() ? picture.title() : caption));
    }

    private Element first(Picture picture) throws IOException {
        String id = "picture-" + (drawn.size() + 1);
        drawn.put(picture, id);
        Element svg = read(picture);
        svg.select("> title").remove();
        svg.removeAttr("xmlns").removeAttr("xmlns:inkscape");
        compact(svg);
        Element whole = new Element("g").attr("id", id);
        whole.appendChildren(List.copyOf(svg.childNodes()));
        svg.appendChild(whole);
        return svg;
    }

    private static Element again(Picture picture, String id) throws IOException {
        Element frame = read(new Picture(picture.name(), "", picture.widthMm(), picture.heightMm(), List.of()));
        frame.removeAttr("xmlns").removeAttr("xmlns:inkscape");
        frame.empty();
        return frame.appendChild(new Element("use").attr("href", "#" + id));
    }

    private static Element read(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.of(Finish.PLAIN).write(picture, out);
        return Jsoup.parse(out.toString(StandardCharsets.UTF_8), "", Parser.xmlParser())
                .expectFirst("svg");
    }

    /** The line ends between elements are a fifth of a picture. */
    private static void compact(Element svg) {
        for (Element element : svg.getAllElements()) {
            if (!element.children().isEmpty()) {
                element.textNodes().forEach(TextNode::remove);
            }
        }
    }
}
