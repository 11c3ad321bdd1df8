package dev.calotte.svg.book;

import dev.calotte.document.Book;
import dev.calotte.document.Document;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The build book: {@code build-book.html}, one page of HTML in UTF-8 with lines ended by LF, which holds its pictures, its
 * look and its script and may load nothing else. It can be read without a script, on paper, on a telephone and by a screen
 * reader; with a script, ticks are remembered on the device, and the scene turns and answers a touch.
 *
 * <p>Texts stand on the page as they are, whatever characters they have; those that no text has become U+FFFD.
 *
 * <p>Refused with an {@link IllegalArgumentException}, before the first byte is written: other documents, a key or an id of
 * a tick of other characters than the book promises, an id that comes twice, and what {@link dev.calotte.svg.SvgWriter}
 * refuses in a picture.
 */
public final class BookExporter implements Exporter {

    private static final String PATH = "build-book.html";

    /** Makes an exporter; it has no state. */
    public BookExporter() {}

    @Override
    public String format() {
        return "book";
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Book;
    }

    @Override
    public List<Rendition> renditions(Document document, Finish finish) {
        return List.of(new Rendition(PATH, out -> write(document, out)));
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        if (!(document instanceof Book book)) {
            throw new IllegalArgumentException(document.name() + " is no book");
        }
        out.write(BookPage.text(book).getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
