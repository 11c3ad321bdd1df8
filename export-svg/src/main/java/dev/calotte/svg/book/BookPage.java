package dev.calotte.svg.book;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Scene;
import java.io.IOException;
import java.util.List;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.DocumentType;
import org.jsoup.nodes.Element;

/** The page as a whole: head, contents, chapters, and what works without a hand at the end. */
final class BookPage {

    private final Book book;
    private final Blocks blocks;

    private BookPage(Book book) {
        this.book = book;
        this.blocks = new Blocks(book);
    }

    static String text(Book book) throws IOException {
        BookNames.check(book);
        return new BookPage(book).document().outerHtml() + "\n";
    }

    private Document document() throws IOException {
        Document page = new Document("");
        page.outputSettings().prettyPrint(false);
        page.appendChild(new DocumentType("html", "", ""));
        Element html = Html.of("html").attr("lang", "en");
        Html.line(html, head());
        Html.line(html, body());
        page.appendChild(html);
        return page;
    }

    private Element head() throws IOException {
        Element head = Html.of("head");
        Html.line(head, Html.of("meta").attr("charset", "UTF-8"));
        Html.line(
                head,
                Html.of("meta").attr("http-equiv", "Content-Security-Policy").attr("content", Inlined.policy()));
        Html.line(
                head, Html.of("meta").attr("name", "viewport").attr("content", "width=device-width, initial-scale=1"));
        Html.line(head, Html.of("meta").attr("name", "color-scheme").attr("content", "light dark"));
        Html.line(head, Html.of("title", book.title()));
        // Else browsers ask a server for a picture of their own accord.
        Html.line(head, Html.of("link").attr("rel", "icon").attr("href", "data:,"));
        Html.line(head, Html.of("style").appendChild(new DataNode(Inlined.style())));
        return head;
    }

    private Element body() throws IOException {
        Element body = Html.of("body").attr("data-key", book.key());
        Html.line(body, Html.styled("a", "skip", "Skip to the chapters").attr("href", "#main"));
        Element header = Html.of("header");
        header.appendChild(Html.of("h1", book.title()));
        Html.line(body, header);
        Html.line(body, contents());
        Html.line(body, main());
        Element footer = Html.of("footer");
        footer.appendChild(Html.of("p", book.colophon()));
        Html.line(body, footer);
        book.scene().ifPresent(scene -> Html.line(body, scene(scene)));
        Html.line(body, Html.of("script").appendChild(new DataNode(Inlined.script())));
        return body;
    }

    private Element contents() {
        Element nav = Html.of("nav").attr("id", "contents").attr("aria-labelledby", "contents-heading");
        nav.appendChild(Html.of("h2", "Contents").attr("id", "contents-heading"));
        Element list = Html.of("ol");
        List<Chapter> chapters = book.chapters();
        for (int i = 0; i < chapters.size(); i++) {
            Element link = Html.of("a", chapters.get(i).title()).attr("href", "#" + anchor(i));
            Html.line(list, Html.of("li").appendChild(link));
        }
        nav.appendChild(list);
        return nav;
    }

    private Element main() throws IOException {
        Element main = Html.of("main").attr("id", "main").attr("tabindex", "-1");
        List<Chapter> chapters = book.chapters();
        for (int i = 0; i < chapters.size(); i++) {
            Html.line(main, chapter(anchor(i), chapters.get(i)));
        }
        return main;
    }

    private Element chapter(String anchor, Chapter chapter) throws IOException {
        String heading = anchor + "-heading";
        Element section = Html.styled("section", "chapter").attr("id", anchor).attr("aria-labelledby", heading);
        Html.line(section, Html.of("h2", chapter.title()).attr("id", heading));
        edge(section, "need", "At hand", chapter.need());
        for (Block block : chapter.blocks()) {
            Html.line(section, blocks.element(block));
        }
        edge(section, "done", "By now you have", chapter.done());
        Html.line(section, Html.styled("a", "up", "Contents").attr("href", "#contents"));
        return section;
    }

    private static void edge(Element section, String style, String heading, String text) {
        if (!text.isEmpty()) {
            Element edge = Html.styled("p", style);
            edge.appendChild(Html.of("strong", heading)).appendText(" ").appendChild(Html.of("span", text));
            Html.line(section, edge);
        }
    }

    private static Element scene(Scene scene) {
        return Html.of("script")
                .attr("type", "application/json")
                .attr("id", "scene")
                .appendChild(new DataNode(new SceneText(scene).text()));
    }

    private static String anchor(int chapter) {
        return "chapter-" + (chapter + 1);
    }
}
