package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.export.PageSize;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatePageTest {

    private static Drawing plate(String name) {
        return Samples.pattern(
                name,
                new Circle(Operation.CUT_OUTER, 60, 60, 50),
                new Circle(Operation.DRILL, 60, 90, 4),
                Polyline.open(Operation.SCORE, 30, 40, 90, 40));
    }

    @Test
    void whatFitsOnAPageIsOneFile() throws IOException {
        assertThat(Printed.files(plate("hubs/H1"), PageSize.A4).keySet()).containsExactly("H1.pdf", "H1.svg");
        Document page = Printed.pages(plate("hubs/H1"), PageSize.A4).get("H1");
        assertThat(page.select("path").eachAttr("id"))
                .contains("CUT_OUTER", "DRILL", "SCORE", "CENTRES")
                .doesNotContain("TRIM", "CROSSES", "REF");
        assertThat(page.select("text").eachText()).contains("Cover glazing, P1, cut 5", "on one page");
    }

    @Test
    void whatDoesNotIsAnOverviewAndItsPagesWithoutEmptyOnes() throws IOException {
        Map<String, Document> pages = Printed.pages(Printed.triangle("panels/glazing-P1", 600), PageSize.A4);
        assertThat(pages.keySet())
                .contains("glazing-P1", "glazing-P1-r2c1")
                .doesNotContain("glazing-P1-r1c1", "glazing-P1-r2c3");
        List<String> overview = pages.get("glazing-P1").select("text").eachText();
        pages.keySet().stream()
                .filter(name -> name.contains("-r"))
                .forEach(name -> assertThat(overview).contains(name.substring(name.lastIndexOf('-') + 1)));
        assertThat(String.join(" ", overview)).contains(pages.size() - 1 + " pages, in 3 rows and 4 columns");
        assertThat(pages.get("glazing-P1-r2c1").select("text").eachText()).contains("row 2, column 1 of 3 x 4", "r2c1");
    }

    /** The upper right page would show 3 mm at its lower left, which those on its left and below it show as well. */
    @ParameterizedTest
    @CsvSource({"A4, 165.5, 230", "LETTER, 171.4, 212.4"})
    void aPageThatShowsOnlyWhatItsNeighboursDoIsLeftOut(PageSize size, double across, double down) throws IOException {
        double right = 2 * across + 10;
        double high = 2 * down + 10;
        Polyline steep =
                Polyline.closed(Operation.CUT_OUTER, 0, 0, right, 0, right, 20, across + 5, down + 7, 20, high);
        Map<String, Document> pages = Printed.pages(Samples.pattern("panels/P1", steep), size);
        assertThat(pages.keySet()).containsExactly("P1", "P1-r1c1", "P1-r2c1", "P1-r2c2");
    }

    /** On the overview, and in the corner of each page. */
    @ParameterizedTest
    @ValueSource(doubles = {300, 500, 700})
    void marksOfPagesCrossNoLineOfThePattern(double side) throws IOException {
        Map<String, Document> pages = Printed.pages(Printed.triangle("panels/P1", side), PageSize.A4);
        assertThat(pages).hasSizeGreaterThan(3);
        pages.values().forEach(page -> {
            List<double[]> lines = Printed.sides(page, "CUT_OUTER", PageSize.A4);
            page.select("text").stream()
                    .filter(text -> text.text().matches("r\\d+c\\d+"))
                    .forEach(text -> {
                        double x = Double.parseDouble(text.attr("x"));
                        double y = PageSize.A4.heightMm() - Double.parseDouble(text.attr("y")) + 1.25;
                        assertThat(lines)
                                .allSatisfy(line -> assertThat(crosses(line, x, y))
                                        .as(text.text())
                                        .isFalse());
                    });
        });
    }

    /** Whether a line crosses the middle line of a mark of 8 mm. */
    private static boolean crosses(double[] line, double x, double y) {
        double at = line[0] + (y - line[1]) / (line[3] - line[1]) * (line[2] - line[0]);
        return Math.min(line[1], line[3]) < y && y < Math.max(line[1], line[3]) && Math.abs(at - x) < 4;
    }

    @Test
    void wherePagesWouldBeTooManyTheOverviewSaysWhatToDo() throws IOException {
        for (double side : List.of(1500, 6000)) {
            Map<String, Document> pages = Printed.pages(Printed.triangle("panels/P1", side), PageSize.A4);
            assertThat(pages.keySet()).containsExactly("P1");
            assertThat(String.join(" ", pages.get("P1").select("text").eachText()))
                    .contains("more than 24 pages")
                    .contains("Have svg/panels/P1.svg printed at full size on one sheet");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"sheets/glazing-01", "model/kit", "drawings/plan", "P1"})
    void otherDrawingsHaveNoTemplate(String name) throws IOException {
        assertThat(Printed.files(plate(name), PageSize.A4)).isEmpty();
    }

    @Test
    void aDrawingWithoutAnythingToMakeHasNoTemplate() throws IOException {
        assertThat(Printed.files(Samples.pattern("panels/P1", Polyline.open(Operation.REF, 0, 0, 9, 9)), PageSize.A4))
                .isEmpty();
    }

    @Test
    void aPatternIsTurnedWhereThatSavesPages() throws IOException {
        Polyline flat = Polyline.closed(Operation.CUT_OUTER, 0, 0, 230, 0, 230, 160, 0, 160);
        assertThat(Printed.pages(Samples.pattern("panels/P1", flat), PageSize.A4))
                .hasSize(1);
        Polyline high = Polyline.closed(Operation.CUT_OUTER, 0, 0, 160, 0, 160, 230, 0, 230);
        Document page =
                Printed.pages(Samples.pattern("panels/P1", high), PageSize.A4).get("P1");
        List<double[]> sides = Printed.sides(page, "CUT_OUTER", PageSize.A4);
        assertThat(sides.get(0)[2] - sides.get(0)[0]).as("upright").isCloseTo(160, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "LETTER, 215.9, 279.4"})
    void everyPageIsAsLargeAsThePaper(PageSize size, String width, String height) throws IOException {
        for (Document page :
                Printed.pages(Printed.triangle("panels/P1", 500), size).values()) {
            Element svg = page.root().firstElementChild();
            assertThat(svg.attr("width")).isEqualTo(width + "mm");
            assertThat(svg.attr("height")).isEqualTo(height + "mm");
            assertThat(svg.attr("viewBox")).isEqualTo("0 0 " + width + " " + height);
        }
    }

    /** Ten millimetres and half of the widest line. */
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void nothingIsNearerToTheEdgeThanTenMillimetres(PageSize size) throws IOException {
        for (double side : List.of(100, 500, 2000)) {
            for (Document page :
                    Printed.pages(Printed.triangle("panels/P1", side), size).values()) {
                for (Element path : page.select("path")) {
                    double half = Double.parseDouble(path.attr("stroke-width")) / 2;
                    Printed.sides(path, size).forEach(s -> {
                        assertThat(List.of(s[0], s[2]))
                                .allMatch(x -> x >= 10 + half && x <= size.widthMm() - 10 - half + 1e-9);
                        assertThat(List.of(s[1], s[3]))
                                .allMatch(y -> y >= 10 + half - 1e-9 && y <= size.heightMm() - 10 - half + 1e-9);
                    });
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void everyPageHasRulersInBothDirectionsAndUnits(PageSize size) throws IOException {
        for (double side : List.of(100, 500, 2000)) {
            for (Document page :
                    Printed.pages(Printed.triangle("panels/P1", side), size).values()) {
                assertThat(ruler(page, "RULER-100MM-X", size)).containsExactly(new double[] {100, 0}, within(1e-9));
                assertThat(ruler(page, "RULER-100MM-Y", size)).containsExactly(new double[] {0, 100}, within(1e-9));
                assertThat(ruler(page, "RULER-4IN-X", size)).containsExactly(new double[] {101.6, 0}, within(1e-9));
                assertThat(ruler(page, "RULER-4IN-Y", size)).containsExactly(new double[] {0, 101.6}, within(1e-9));
                assertThat(page.select("text").eachText())
                        .contains("100 mm", "4 in", "Print at 100 % (actual size)", "Cover glazing, P1, cut 5");
            }
        }
    }

    private static double[] ruler(Document page, String id, PageSize size) {
        double[] line = Printed.sides(page, id, size).get(0);
        return new double[] {line[2] - line[0], line[3] - line[1]};
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "\"&'>",
                "]]>",
                "\u0645\u0631\u062d\u0628\u0627 \u05e9\u05dc\u05d5\u05dd",
                "\ud83d\ude00 \ud83c\udf31"
            })
    void textsReadBackAsTheyWereAndNothingElseComesIn(String text) throws IOException {
        Drawing whole = Printed.triangle("panels/P1", 500);
        Drawing named = new Drawing(
                whole.name(),
                text,
                7000,
                7000,
                List.of(new Drawing.Part("P1", text, whole.parts().get(0).shapes())));
        for (Document page : Printed.pages(named, PageSize.A4).values()) {
            assertThat(page.selectFirst("svg > title").wholeText()).startsWith(text);
            assertThat(page.select("text").eachText()).contains(text);
            assertThat(page.select("*").stream().map(Element::tagName).distinct())
                    .containsOnly("#root", "svg", "title", "g", "path", "text");
            assertThat(page.select("[href], [xlink:href], [style], [onload], [transform]"))
                    .isEmpty();
        }
    }

    @Test
    void aLongTitleEndsOnThePage() throws IOException {
        Drawing whole = Printed.triangle("panels/P1", 100);
        Drawing named = new Drawing(whole.name(), "Long ".repeat(60), 7000, 7000, whole.parts());
        List<String> texts =
                Printed.pages(named, PageSize.A4).get("P1").select("text").eachText();
        assertThat(texts).anyMatch(text -> text.startsWith("Long Long") && text.endsWith("...") && text.length() < 90);
    }

    @Test
    void lineWidthsAreThoseOfTheStandard() throws IOException {
        Document page = Printed.pages(plate("hubs/H1"), PageSize.A4).get("H1");
        assertThat(page.getElementById("CUT_OUTER").attr("stroke-width")).isEqualTo("0.5");
        assertThat(page.getElementById("SCORE").attr("stroke-width")).isEqualTo("0.25");
        assertThat(page.getElementById("SCORE").attr("stroke-dasharray")).isEqualTo("3 1.5");
        assertThat(page.getElementById("DRILL").hasAttr("stroke-dasharray")).isFalse();
        assertThat(page.select("text").eachAttr("font-size"))
                .allMatch(height -> Double.parseDouble(height) * 0.72 >= 2.5 - 1e-3);
    }
}
