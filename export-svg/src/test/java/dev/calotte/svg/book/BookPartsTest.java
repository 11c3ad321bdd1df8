package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Column;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Book.View;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Tables, ticks and the view. */
class BookPartsTest {

    private static final View VIEW = new View("Turn it", new RingDome(1, 3).plan(100));
    private static final Table TABLE = new Table(
            "Panels",
            List.of(new Column("Kind", false), new Column("Length, mm", true)),
            List.of(
                    new Row("P1", List.of("P1", "1,000")),
                    new Row("P1-1.02", List.of("one of them", "1,000")),
                    new Row("P77", List.of("not in the scene", "0"))));

    @Test
    void tableHasItsHeadingsAndCells() throws IOException {
        Element table = Read.page(SampleBook.with(TABLE)).selectFirst("table");
        assertThat(table.selectFirst("caption").text()).isEqualTo("Panels");
        assertThat(table.select("thead th[scope=col]").eachText()).containsExactly("Kind", "Length, mm");
        assertThat(table.select("tbody th[scope=row]").eachText())
                .containsExactly("P1", "one of them", "not in the scene");
        assertThat(table.select("tbody td").eachText()).containsExactly("1,000", "1,000", "0");
    }

    @Test
    void cellsRepeatTheirHeadingForCards() throws IOException {
        Element row = Read.page(SampleBook.with(TABLE)).selectFirst("tbody tr");
        assertThat(row.children().eachAttr("data-label")).containsExactly("Kind", "Length, mm");
        assertThat(row.select(".number").eachText()).containsExactly("1,000");
    }

    @Test
    void rowsAboutPiecesAndKindsOfTheSceneLinkToTheView() throws IOException {
        Document page = Read.page(SampleBook.with(VIEW, TABLE));
        assertThat(page.select("tr[data-about]").eachAttr("data-about")).containsExactly("P1", "P1-1.02");
        assertThat(page.select("a.show").eachAttr("aria-label")).containsExactly("Show P1", "Show P1-1.02");
        assertThat(page.select("tbody tr").last().select("td.where").text()).isEmpty();
    }

    @Test
    void tableWithoutPiecesHasNoColumnForTheView() throws IOException {
        assertThat(Read.page(SampleBook.with(VIEW, SampleBook.table("Bill", 2))).select(".where"))
                .isEmpty();
    }

    @Test
    void everyTickHasItsBoxAndLabel() throws IOException {
        Document page = Read.page(SampleBook.book());
        List<String> ids = SampleBook.book().chapters().stream()
                .flatMap(chapter -> chapter.blocks().stream())
                .filter(Ticks.class::isInstance)
                .flatMap(block -> ((Ticks) block).ticks().stream())
                .map(Tick::id)
                .toList();
        assertThat(page.select("input[data-tick]").eachAttr("data-tick"))
                .hasSize(7)
                .isEqualTo(ids);
        assertThat(page.select(".ticks label").eachAttr("for"))
                .isEqualTo(ids.stream().map(id -> "tick-" + id).toList());
        assertThat(page.body().attr("data-key")).isEqualTo("a1b2c3");
    }

    @Test
    void listOfTicksSaysHowManyThereAre() throws IOException {
        Ticks two = new Ticks("", List.of(tick("a"), tick("b")));
        Element list = Read.page(SampleBook.with(two)).selectFirst(".ticks");
        assertThat(list.select(".count").text()).isEqualTo("2 to do");
        assertThat(list.select("h3").text()).isEqualTo("To do");
        assertThat(list.select("button").hasAttr("hidden")).isTrue();
    }

    @Test
    void viewStandsOnceAndShowsItsPictureWithoutAScript() throws IOException {
        Document page = Read.page(SampleBook.with(VIEW, VIEW));
        assertThat(page.select("canvas")).hasSize(1);
        assertThat(page.select("#view .live").hasAttr("hidden")).isTrue();
        assertThat(page.select("figure.view .instead svg")).hasSize(2);
        assertThat(page.select("[data-move]").eachAttr("aria-label")).hasSize(7).doesNotContain("");
    }

    @Test
    void withoutASceneThereIsOnlyThePicture() throws IOException {
        Book with = SampleBook.with(VIEW, TABLE);
        Book without =
                new Book(with.name(), with.title(), with.key(), with.chapters(), Optional.empty(), with.colophon());
        Document page = Read.page(without);
        assertThat(page.select("canvas, #scene, a.show")).isEmpty();
        assertThat(page.select("#view .instead svg")).hasSize(1);
    }

    @Test
    void pictureStandsBesideItsTableUnlessItIsLong() throws IOException {
        Document page = Read.page(SampleBook.with(
                new Figure(new RingDome(1, 3).plan(100), "Plan", Optional.of(TABLE)),
                new Figure(SampleBook.bar(4), "Bar", Optional.of(TABLE))));
        assertThat(page.select(".beside"))
                .hasSize(2)
                .allMatch(pair -> pair.select("figure + .listed").size() == 1);
        assertThat(page.select(".stacked figcaption").eachText()).containsExactly("Bar");
    }

    private static Tick tick(String id) {
        return new Tick(id, "Do it.", Optional.empty());
    }
}
