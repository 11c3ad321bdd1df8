package dev.calotte.svg.book;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Notice;
import dev.calotte.document.Book.Source;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Book.View;
import dev.calotte.document.Picture;
import java.io.IOException;
import org.jsoup.nodes.Element;

/** The parts of chapters as elements, in the order of the page. */
final class Blocks {

    /** Pictures as long as this, as parts of their height, need the whole width: a bar with its cuts, for example. */
    private static final double LONG = 2.5;

    private final Pictures pictures = new Pictures();
    private final Tables tables;
    private final TickLists ticks = new TickLists(pictures);
    private final ViewPart view;
    private int headings;

    Blocks(Book book) {
        tables = new Tables(BookNames.shown(book));
        view = new ViewPart(book.scene().isPresent(), pictures);
    }

    Element element(Block block) throws IOException {
        if (block instanceof Text text) {
            return text(text);
        } else if (block instanceof Notice notice) {
            return notice(notice);
        } else if (block instanceof Table table) {
            return tables.element(table);
        } else if (block instanceof Figure figure) {
            return figure(figure);
        } else if (block instanceof Ticks list) {
            return ticks.element(list);
        } else if (block instanceof View shown) {
            return view.element(shown);
        } else {
            return source((Source) block);
        }
    }

    private Element text(Text text) {
        Element part = Html.styled("div", "text");
        heading(part, text.heading());
        text.paragraphs().forEach(paragraph -> Html.line(part, Html.of("p", paragraph)));
        return part;
    }

    private Element notice(Notice notice) {
        Element box = Html.styled("div", "notice").attr("role", "note");
        String id = heading(box, notice.heading());
        if (!id.isEmpty()) {
            box.attr("aria-labelledby", id);
        }
        notice.lines().forEach(line -> Html.line(box, Html.of("p", line)));
        return box;
    }

    private Element source(Source source) {
        Element part = Html.styled("div", "source");
        heading(part, source.heading());
        // A code element keeps an empty first line, which readers of HTML take out of a pre element.
        part.appendChild(Html.of("pre").attr("tabindex", "0").appendChild(Html.of("code", source.text())));
        return part;
    }

    private Element figure(Figure figure) throws IOException {
        Element alone = figure(figure.picture(), figure.caption());
        if (figure.beside().isEmpty()) {
            return alone;
        }
        Element pair = Html.styled("div", "beside");
        if (figure.picture().widthMm() > LONG * figure.picture().heightMm()) {
            pair.addClass("stacked");
        }
        Html.line(pair, alone);
        pair.appendChild(tables.element(figure.beside().get()));
        return pair;
    }

    private Element figure(Picture picture, String caption) throws IOException {
        Element figure = Html.of("figure");
        figure.appendChild(pictures.sheet(picture, caption));
        if (!caption.isEmpty()) {
            figure.appendChild(Html.of("figcaption", caption));
        }
        return figure;
    }

    private String heading(Element part, String text) {
        if (text.isEmpty()) {
            return "";
        }
        headings++;
        String id = "heading-" + headings;
        Html.line(part, Html.of("h3", text).attr("id", id));
        return id;
    }
}
