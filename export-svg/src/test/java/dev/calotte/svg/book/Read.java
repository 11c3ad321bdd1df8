package dev.calotte.svg.book;

import dev.calotte.document.Book;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.ParseErrorList;
import org.jsoup.parser.Parser;

/** Writes books and reads the pages back. */
final class Read {

    private Read() {}

    static String text(Book book) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new BookExporter().write(book, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    static Document page(Book book) throws IOException {
        return Jsoup.parse(text(book));
    }

    /** What a strict reader of HTML complains of. */
    static ParseErrorList errors(Book book) throws IOException {
        Parser parser = Parser.htmlParser().setTrackErrors(50);
        parser.parseInput(text(book), "");
        return parser.getErrors();
    }
}
