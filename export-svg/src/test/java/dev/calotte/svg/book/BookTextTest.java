package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Notice;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Source;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Text;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Book.View;
import dev.calotte.document.Picture;
import dev.calotte.document.Scene;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of any characters, wherever a book may have them. */
class BookTextTest {

    private static final String NASTY = SampleBook.NASTY;
    private static final String CLEAN = NASTY.replace('\u0007', '\uFFFD').replace('\u0000', '\uFFFD');

    private static Book everywhere() {
        Picture picture = new Picture("book/x", NASTY, 50, 50, List.of());
        Scene scene = new Scene(
                List.of(0.0, 0.0, 0.0, 1.0, 0.0, 0.0), List.of(new Scene.Piece(NASTY, NASTY, 1, List.of(0, 1), NASTY)));
        Table table = new Table(NASTY, List.of(new Column(NASTY, true)), List.of(new Row(NASTY, List.of(NASTY))));
        return new Book(
                "build-book",
                NASTY,
                "k",
                List.of(new Chapter(
                        NASTY,
                        NASTY,
                        List.of(
                                new Text(NASTY, List.of(NASTY)),
                                new Notice(NASTY, List.of(NASTY)),
                                new Figure(picture, NASTY, Optional.of(table)),
                                new Ticks(NASTY, List.of(new Tick("t", NASTY, Optional.of(picture)))),
                                new Source(NASTY, NASTY),
                                new View(NASTY, picture)),
                        NASTY)),
                Optional.of(scene),
                NASTY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "title",
                "h1",
                "nav a",
                "h2:not(nav h2)",
                ".need span",
                ".text h3",
                ".text p",
                ".notice h3",
                ".notice p",
                "caption",
                "thead th:first-child",
                "tbody th",
                ".beside figcaption",
                ".ticks h3",
                ".ticks label span",
                ".source h3",
                ".source code",
                ".view figcaption",
                ".done span",
                "footer p"
            })
    void textsReadBackAsTheyWere(String place) throws IOException {
        assertThat(Read.page(everywhere()).selectFirst(place).wholeText()).isEqualTo(CLEAN);
    }

    @Test
    void attributesReadBackAsTheyWere() throws IOException {
        Document page = Read.page(everywhere());
        assertThat(page.select("svg").eachAttr("aria-label")).hasSize(3).containsOnly(CLEAN);
        assertThat(page.select("tbody th").attr("data-label")).isEqualTo(CLEAN);
        assertThat(page.select("tbody tr").attr("data-about")).isEqualTo(CLEAN);
        assertThat(page.select("canvas").attr("aria-label")).isEqualTo(CLEAN);
    }

    @Test
    void noTextBecomesMarkup() throws IOException {
        Document page = Read.page(everywhere());
        assertThat(page.select("script")).hasSize(2);
        assertThat(page.select("script#scene").first().data()).doesNotContain("<", ">", "&");
        assertThat(Read.errors(everywhere())).isEmpty();
    }

    @Test
    void sourceKeepsItsLines() throws IOException {
        String brief = "\n\n  dome:\n\tx: 1\n\n";
        Book book = SampleBook.with(new Source("The brief", brief.replace("\n", "\r\n")));
        assertThat(Read.page(book).selectFirst("pre").wholeText()).isEqualTo(brief);
    }

    @Test
    void halfOfAPairOfSurrogatesIsReplaced() throws IOException {
        Book book = SampleBook.with(new Text("", List.of("a\ud83cb")));
        assertThat(Read.page(book).selectFirst(".text p").text()).isEqualTo("a\uFFFDb");
    }

    /** The first and the last of each range that HTML reads as it stands, and what lies just beside them. */
    @Test
    void onlyCharactersThatHtmlDoesNotAllowAreReplaced() {
        String kept = "\t \n ~\u00a0\ud7ff\ue000\ufffd\ud800\udc00";
        assertThat(Html.clean(kept)).isEqualTo(kept);
        assertThat(Html.clean("\u0008\u000b\u001f\u007f\u009f\udfff\ud800\ufffe\uffff"))
                .isEqualTo("\uFFFD".repeat(9));
    }
}
