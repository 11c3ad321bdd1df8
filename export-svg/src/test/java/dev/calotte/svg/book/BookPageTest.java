package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Notice;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page as a whole, read back with jsoup. */
class BookPageTest {

    private static final Book BOOK = SampleBook.book();

    @Test
    void bookIsOneFileWhateverItsName() {
        List<Rendition> files = new BookExporter().renditions(BOOK, Finish.PLAIN);
        assertThat(files).extracting(Rendition::path).containsExactly("build-book.html");
    }

    @Test
    void strictReaderHasNothingToComplainOf() throws IOException {
        assertThat(Read.errors(BOOK)).isEmpty();
    }

    @Test
    void headSaysWhatBrowsersMustKnowFirst() throws IOException {
        Document page = Read.page(BOOK);
        assertThat(Read.text(BOOK)).startsWith("<!doctype html><html lang=\"en\"><head><meta charset=\"UTF-8\">");
        assertThat(page.title()).isEqualTo(BOOK.title());
        assertThat(page.select("meta[name=viewport]").attr("content")).contains("width=device-width");
    }

    @Test
    void chaptersStandInOrderAndAreInTheContents() throws IOException {
        Document page = Read.page(BOOK);
        List<String> titles = BOOK.chapters().stream().map(Chapter::title).toList();
        assertThat(page.select("main > section > h2").eachText()).isEqualTo(titles);
        assertThat(page.select("nav a").eachText()).isEqualTo(titles);
        assertThat(page.select("h1").eachText()).containsExactly(BOOK.title());
        assertThat(page.select("footer").text()).isEqualTo(BOOK.colophon());
    }

    @Test
    void chaptersBeginWithWhatIsNeededAndEndWithWhatIsDone() throws IOException {
        Element cut = Read.page(BOOK).select("section.chapter").get(2);
        assertThat(cut.child(1).text()).isEqualTo("At hand A saw with a stop, a tape, a pencil.");
        assertThat(cut.select(".done").text())
                .isEqualTo("By now you have 120 struts with their marks, in piles by kind.");
        assertThat(Read.page(BOOK).select("section.chapter").first().select(".need"))
                .isEmpty();
    }

    @Test
    void headingsNeverSkipALevel() throws IOException {
        int level = 0;
        for (Element heading : Read.page(BOOK).select("h1, h2, h3, h4")) {
            int next = heading.tagName().charAt(1) - '0';
            assertThat(next).as(heading.text()).isLessThanOrEqualTo(level + 1);
            level = next;
        }
        assertThat(level).isPositive();
    }

    @Test
    void idsAreUnique() throws IOException {
        List<String> ids = Read.page(BOOK).select("[id]").eachAttr("id");
        assertThat(ids).hasSizeGreaterThan(50).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"aria-labelledby", "aria-describedby", "for"})
    void namesPointToWhatIsThere(String attribute) throws IOException {
        Document page = Read.page(BOOK);
        assertThat(page.select("[id]").eachAttr("id"))
                .containsAll(page.select("[" + attribute + "]").eachAttr(attribute));
    }

    @Test
    void everyLinkStaysOnThePage() throws IOException {
        Document page = Read.page(BOOK);
        List<String> targets = new ArrayList<>(page.select("a, use").eachAttr("href"));
        assertThat(targets).isNotEmpty().allMatch(target -> target.startsWith("#"));
        assertThat(page.select("[id]").eachAttr("id"))
                .containsAll(targets.stream().map(target -> target.substring(1)).toList());
        assertThat(page.select("[src], [srcset], iframe, object, embed, base")).isEmpty();
        assertThat(page.select("link").eachAttr("href")).containsExactly("data:,");
        assertThat(page.select("style").first().data()).doesNotContain("url(", "@import");
    }

    /** Content Security Policy Level 3 (W3C), section 2.3.1: SHA-256 in Base64 of what stands between the tags. */
    @Test
    void policyLetsInTheScriptAndTheStyleAndNothingElse() throws IOException, GeneralSecurityException {
        Document page = Read.page(BOOK);
        String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
        assertThat(policy)
                .contains("default-src 'none'")
                .contains("script-src "
                        + hash(page.select("script:not([type])").first().data()) + ";")
                .contains("style-src " + hash(page.select("style").first().data()) + ";")
                .doesNotContain("unsafe");
        assertThat(page.select("[style], [onclick], [onload]")).isEmpty();
    }

    private static String hash(String text) throws GeneralSecurityException {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    @Test
    void linesEndWithLineFeedsOnly() throws IOException {
        assertThat(Read.text(BOOK)).doesNotContain("\r").endsWith("</html>\n");
    }

    @Test
    void noticeIsNamedByItsHeading() throws IOException {
        Element box = Read.page(SampleBook.with(new Notice("Snow", List.of("Ask.", "Wait."))))
                .selectFirst(".notice");
        assertThat(box.attr("role")).isEqualTo("note");
        assertThat(box.getElementById(box.attr("aria-labelledby")).text()).isEqualTo("Snow");
        assertThat(box.select("p").eachText()).containsExactly("Ask.", "Wait.");
    }

    @Test
    void noticeWithoutHeadingHasNone() throws IOException {
        Element box =
                Read.page(SampleBook.with(new Notice("", List.of("Ask.")))).selectFirst(".notice");
        assertThat(box.hasAttr("aria-labelledby")).isFalse();
        assertThat(box.select("h3")).isEmpty();
    }
}
