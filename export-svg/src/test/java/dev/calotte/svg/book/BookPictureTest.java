package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Picture;
import dev.calotte.export.Finish;
import dev.calotte.svg.SvgWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** Pictures inside the page. */
class BookPictureTest {

    private static final Picture BAR = SampleBook.bar(3);

    private static Figure figure(Picture picture, String caption) {
        return new Figure(picture, caption, Optional.empty());
    }

    @Test
    void pictureIsDrawnAsInItsOwnFile() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SvgWriter.of(Finish.PLAIN).write(BAR, out);
        Element own = Jsoup.parse(out.toString(StandardCharsets.UTF_8), "", Parser.xmlParser())
                .expectFirst("svg");
        Element svg = Read.page(SampleBook.with(figure(BAR, "A bar"))).expectFirst("svg");
        assertThat(svg.select("path").eachAttr("d"))
                .isNotEmpty()
                .isEqualTo(own.select("path").eachAttr("d"));
        assertThat(svg.select("text").eachText()).isEqualTo(own.select("text").eachText());
        assertThat(svg.attr("viewBox")).isEqualTo("0 0 140 28");
        assertThat(svg.attr("width")).isEqualTo("140mm");
    }

    @Test
    void pictureIsNamedByItsCaptionOrElseItsTitle() throws IOException {
        Document page = Read.page(SampleBook.with(figure(BAR, "The first bar"), figure(SampleBook.bar(2), "")));
        assertThat(page.select("svg[role=img]").eachAttr("aria-label"))
                .containsExactly("The first bar", "A bar with 2 cuts");
        assertThat(page.select("figcaption").eachText()).containsExactly("The first bar");
    }

    @Test
    void pictureThatComesAgainIsDrawnFromTheFirst() throws IOException {
        Document page = Read.page(SampleBook.with(figure(BAR, "One"), figure(SampleBook.bar(3), "Another")));
        Element again = page.select("svg").get(1);
        assertThat(again.select("path")).isEmpty();
        assertThat(again.attr("viewBox")).isEqualTo("0 0 140 28");
        assertThat(again.attr("aria-label")).isEqualTo("Another");
        String id = again.selectFirst("use").attr("href").substring(1);
        assertThat(page.getElementById(id).select("text").eachText()).containsExactly("S1", "S2", "S3");
    }

    @Test
    void picturesHaveOneIdEachAndReferToNothing() throws IOException {
        Document page = Read.page(SampleBook.with(figure(BAR, ""), figure(SampleBook.bar(2), "")));
        assertThat(page.select("svg [id]").eachAttr("id")).containsExactly("picture-1", "picture-2");
        assertThat(page.select("svg [fill^=url]")).isEmpty();
    }

    @Test
    void pageIsNotMuchLargerThanItsPictures() throws IOException {
        Book book = SampleBook.book();
        assertThat(Read.text(book).length()).isLessThan(130_000);
    }
}
