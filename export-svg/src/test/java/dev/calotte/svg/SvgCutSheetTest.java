package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgCutSheetTest {

    @Test
    void oneUnitIsOneMillimetre() throws IOException {
        Element svg = Svg.of(Samples.letterF()).root().firstElementChild();
        assertThat(svg.attr("width")).isEqualTo("140mm");
        assertThat(svg.attr("height")).isEqualTo("180mm");
        assertThat(svg.attr("viewBox")).isEqualTo("0 0 140 180");
    }

    @Test
    void operationsAreLayersInWorkingOrder() throws IOException {
        List<Element> layers = Svg.of(Samples.letterF()).select("svg > g");
        assertThat(layers)
                .extracting(layer -> layer.attr("inkscape:label"))
                .containsExactly("ENGRAVE", "SCORE", "DRILL", "CUT_INNER", "CUT_OUTER", "REF", "SHEET");
        assertThat(layers).allMatch(layer -> layer.attr("inkscape:groupmode").equals("layer"));
        assertThat(layers).allMatch(layer -> layer.id().equals(layer.attr("inkscape:label")));
    }

    @Test
    void thereIsNothingThatMachinesReadDifferently() throws IOException {
        Document svg = Svg.of(Samples.letterF());
        assertThat(svg.select("[transform], [class], [style], use, symbol, style, text, clipPath"))
                .isEmpty();
        assertThat(svg.select("path")).hasSize(7).allSatisfy(path -> {
            assertThat(path.attr("d")).matches("M[-0-9. ]+([LA][-0-9. ]+)+Z?");
            assertThat(path.attr("fill")).isEqualTo("none");
            assertThat(path.attr("stroke-width")).isEqualTo("0.1");
        });
    }

    @Test
    void linesOfALargeSheetCanStillBeSeen() throws IOException {
        Polyline line = Polyline.open(Operation.SCORE, 0, 0, 6000, 10);
        Drawing.Part part = new Drawing.Part("P1", "a long line", List.of(line));
        Drawing large = new Drawing("large", "large", 6000, 2000, List.of(part));
        assertThat(Svg.of(large).select("path").attr("stroke-width")).isEqualTo("0.6");
    }

    @ParameterizedTest
    @CsvSource({
        "ENGRAVE, #000000",
        "SCORE, #0000ff",
        "DRILL, #ff00ff",
        "CUT_INNER, #ff0000",
        "CUT_OUTER, #ff0000",
        "REF, #00ff00",
        "SHEET, #00ffff"
    })
    void colourTellsTheOperation(Operation operation, String colour) throws IOException {
        assertThat(Svg.of(Samples.letterF()).select("#" + operation + " path"))
                .isNotEmpty()
                .allMatch(path -> path.attr("stroke").equals(colour));
    }

    @Test
    void partsAreGroupsWithTitleAndDescription() throws IOException {
        Element part = Svg.of(Samples.letterF()).getElementById("F.CUT_OUTER");
        assertThat(part.parent().id()).isEqualTo("CUT_OUTER");
        assertThat(part.selectFirst("> title").text()).isEqualTo("F");
        assertThat(part.selectFirst("> desc").text()).isEqualTo("a <letter>");
        assertThat(part.select("> path")).hasSize(1);
    }

    @Test
    void yPointsDown() throws IOException {
        String outline =
                Svg.of(Samples.letterF()).getElementById("F.CUT_OUTER.1").attr("d");
        assertThat(outline).isEqualTo("M10 170L40 170L40 120L110 120L110 90L40 90L40 60L120 60L120 30L10 30Z");
    }

    @Test
    void lineWithTwoEndsIsNotClosed() throws IOException {
        assertThat(outline(Polyline.open(Operation.SCORE, 1, 2, 3, 4))).isEqualTo("M1 178L3 176");
    }

    @Test
    void circleIsTwoHalvesOnTheSameSideOfTheirWay() throws IOException {
        assertThat(outline(new Circle(Operation.DRILL, 25, 135, 4.25)))
                .isEqualTo("M29.25 45A4.25 4.25 0 0 0 20.75 45A4.25 4.25 0 0 0 29.25 45Z");
    }

    /** By hand, round (20, 20) on a page of 180 mm: counter-clockwise is counter-clockwise on the page, too. */
    @Test
    void arcsKeepTheirSense() throws IOException {
        double quarter = Math.tan(Math.PI / 8);
        double[] corners = {30, 20, 20, 30, 20, 20};
        assertThat(outline(Polyline.closed(Operation.CUT_OUTER, corners, new double[] {quarter, 0, 0})))
                .isEqualTo("M30 160A10 10 0 0 0 20 150L20 160Z");
        assertThat(outline(Polyline.closed(Operation.CUT_OUTER, corners, new double[] {-quarter, 0, 0})))
                .isEqualTo("M30 160A10 10 0 0 1 20 150L20 160Z");
    }

    @Test
    void anArcMayCloseThePath() throws IOException {
        double quarter = Math.tan(Math.PI / 8);
        double[] corners = {20, 30, 20, 20, 30, 20};
        assertThat(outline(Polyline.closed(Operation.CUT_OUTER, corners, new double[] {0, 0, quarter})))
                .isEqualTo("M20 150L20 160L30 160A10 10 0 0 0 20 150Z");
    }

    /** By hand: three quarters of a circle in three parts. */
    @Test
    void longArcsAreWrittenInParts() throws IOException {
        double bulge = Math.tan(3 * Math.PI / 8 - 1e-13);
        double[] corners = {30, 20, 20, 10, 20, 20};
        assertThat(outline(Polyline.closed(Operation.CUT_OUTER, corners, new double[] {bulge, 0, 0})))
                .isEqualTo("M30 160A10 10 0 0 0 20 150A10 10 0 0 0 10 160A10 10 0 0 0 20 170L20 160Z");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void numbersReadBackToHalfATenThousandthOfAMillimetre(long seed) throws IOException {
        double[] xy = new Random(seed).doubles(60, 0, 140).toArray();
        List<Double> read = Svg.numbers(outline(Polyline.open(Operation.ENGRAVE, xy)));
        assertThat(read).hasSize(xy.length);
        for (int i = 0; i < xy.length; i++) {
            double expected = i % 2 == 0 ? xy[i] : 180 - xy[i];
            assertThat(read.get(i)).isBetween(expected - 0.50000001e-4, expected + 0.50000001e-4);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "_1", "-1", ".1", "P4L-3.07", "CUT_OUTER", "x.CUT_OUTER", "x"})
    void idsAreNamesInXml(String mark) throws IOException {
        Document svg = Svg.of(Samples.drawing(mark, Polyline.open(Operation.SCORE, 1, 2, 3, 4)));
        assertThat(svg.select("[id]"))
                .hasSize(3)
                .allMatch(element -> element.id().matches("[A-Za-z_][A-Za-z0-9._-]*"));
    }

    @Test
    void idsAreUniqueWhateverTheMarks() throws IOException {
        List<Drawing.Part> parts = List.of("x", "x.SCORE", "x.SCORE.1", "SCORE", "1", "_1").stream()
                .map(mark -> new Drawing.Part(
                        mark,
                        "",
                        List.of(
                                Polyline.open(Operation.SCORE, 1, 2, 3, 4),
                                Polyline.open(Operation.SCORE, 1, 2, 3, 5))))
                .toList();
        Document svg = Svg.of(new Drawing("x", "", 10, 10, parts));
        assertThat(svg.select("[id]"))
                .hasSize(1 + 3 * 6)
                .extracting(Element::id)
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Operation.class)
    void layersWithoutShapesAreLeftOut(Operation operation) throws IOException {
        assertThat(Svg.of(Samples.drawing(Polyline.open(operation, 1, 2, 3, 4))).select("svg > g"))
                .extracting(Element::id)
                .containsExactly(operation.name());
    }

    private static String outline(Shape shape) throws IOException {
        return Svg.of(Samples.drawing(shape)).selectFirst("path").attr("d");
    }
}
