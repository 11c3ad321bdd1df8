package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Tone;
import dev.calotte.document.Picture.Weight;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class SvgPageTest {

    /** The first channel of orange is 0xE6 = 230, and 230 / 4 + 255 * 3 / 4 = 248.75. */
    @Test
    void facetIsFilledWithAQuarterOfItsColour() throws IOException {
        Element path = onlyPath(Samples.facet(1, Hatch.NONE, ""));
        assertThat(path.attr("fill")).isEqualTo("#f9e7bf");
        assertThat(path.hasAttr("fill-opacity")).isFalse();
        assertThat(path.attr("stroke")).isEqualTo("#000000");
        assertThat(path.attr("d")).isEqualTo("M10 170L40 170L25 144Z");
    }

    @Test
    void facetWithoutColourIsWhite() throws IOException {
        assertThat(onlyPath(Samples.facet(0, Hatch.NONE, "")).attr("fill")).isEqualTo("#ffffff");
    }

    @Test
    void firstEightColoursDifferWithoutLines() {
        assertThat(IntStream.rangeClosed(1, 8).mapToObj(colour -> Palette.tint(colour, Tone.USUAL)))
                .doesNotHaveDuplicates();
        assertThat(IntStream.rangeClosed(1, 8).mapToObj(colour -> new Hatching(colour, Hatch.NONE)))
                .noneMatch(Hatching::isVisible);
    }

    @Test
    void coloursThatComeAgainHaveLinesAsASecondCue() throws IOException {
        Document page = Svg.of(Samples.picture(
                Samples.facet(1, Hatch.NONE, ""), Samples.facet(9, Hatch.NONE, ""), Samples.facet(17, Hatch.NONE, "")));
        List<String> fills = page.select("g > g > path").stream()
                .map(path -> path.attr("fill"))
                .toList();
        assertThat(fills).containsExactly("#f9e7bf", "#f9e7bf", "none", "none", "#f9e7bf", "none", "none");
        assertThat(hatchings(page)).hasSize(2).doesNotHaveDuplicates();
    }

    /** What fills nothing and is not as strong as a border. */
    private static List<String> hatchings(Document page) {
        return page.select("path[stroke-width=0.13]").eachAttr("d");
    }

    @Test
    void secondCueIsNoHatchThatAPictureCanAskFor() throws IOException {
        Document page = Svg.of(Samples.plan());
        List<String> first = lines(page, 1, 8);
        List<String> second = lines(page, 9, 16);
        List<String> third = lines(page, 17, 24);
        assertThat(first).isNotEmpty().doesNotContainAnyElementsOf(second).doesNotContainAnyElementsOf(third);
        assertThat(second).doesNotContainAnyElementsOf(third);
    }

    /** Lines of a grid inside a triangle 30 wide and 26 high: JTS cuts the same ones out of it. */
    @ParameterizedTest
    @EnumSource(Hatch.class)
    void hatchIsTheGridInsideTheOutline(Hatch hatch) throws IOException {
        Facet facet = Samples.facet(1, hatch, "");
        List<Element> paths = Svg.of(Samples.picture(facet)).select("path[stroke-width=0.13]");
        GeometryFactory jts = new GeometryFactory();
        Polygon inside = jts.createPolygon(new Coordinate[] {
            new Coordinate(10, 170), new Coordinate(40, 170), new Coordinate(25, 144), new Coordinate(10, 170)
        });
        double expected = 0;
        for (int line = -600; line <= 600; line += 3) {
            // upwards on paper: x - y is a multiple of 3 where it rises, x + y where it falls
            expected += hatch == Hatch.RISING || hatch == Hatch.CROSSED ? length(inside, line, 1) : 0;
            expected += hatch == Hatch.FALLING || hatch == Hatch.CROSSED ? length(inside, line, -1) : 0;
        }
        double drawn = 0;
        for (Element path : paths) {
            for (double[] line : segments(path.attr("d"))) {
                LineString segment = jts.createLineString(
                        new Coordinate[] {new Coordinate(line[0], line[1]), new Coordinate(line[2], line[3])});
                assertThat(inside.buffer(1e-3).contains(segment)).isTrue();
                drawn += segment.getLength();
            }
        }
        assertThat(drawn).isCloseTo(expected, within(0.1));
    }

    /** How long the line x - slope y = level is inside, on a page 180 high whose y points down. */
    private static double length(Polygon inside, double level, int slope) {
        LineString line = inside.getFactory().createLineString(new Coordinate[] {
            new Coordinate(level - 500, 180 + slope * 500), new Coordinate(level + 500, 180 - slope * 500)
        });
        return inside.intersection(line).getLength();
    }

    private static List<double[]> segments(String path) {
        return Pattern.compile("M([-0-9.]+) ([-0-9.]+)L([-0-9.]+) ([-0-9.]+)")
                .matcher(path)
                .results()
                .map(m -> IntStream.rangeClosed(1, 4)
                        .mapToDouble(group -> Double.parseDouble(m.group(group)))
                        .toArray())
                .toList();
    }

    @Test
    void titleOfAFacetIsShownWhenPointedAt() throws IOException {
        Document page = Svg.of(Samples.picture(Samples.facet(1, Hatch.NONE, "P4L & <co>")));
        assertThat(page.selectFirst("g > g > title").text()).isEqualTo("P4L & <co>");
    }

    @Test
    void facetWithoutATitleHasNone() throws IOException {
        assertThat(Svg.of(Samples.picture(Samples.facet(1, Hatch.NONE, ""))).select("g title"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"STRONG, 0.5", "FINE, 0.25", "FAINT, 0.13"})
    void lineWidthsAreThoseOfTheStandard(Weight weight, String widthMm) throws IOException {
        Element path = Svg.of(Samples.picture(Samples.line(weight, false))).selectFirst("path");
        assertThat(path.attr("stroke-width")).isEqualTo(widthMm);
        assertThat(path.attr("d")).isEqualTo("M10 160L110 159.5");
        assertThat(path.hasAttr("stroke-dasharray")).isFalse();
    }

    @Test
    void whatStandsAlreadyIsGrey() throws IOException {
        Element path = Svg.of(Samples.picture(Samples.line(Weight.PALE, false))).selectFirst("path");
        assertThat(path.attr("stroke")).isEqualTo("#8c8c8c");
        assertThat(path.attr("stroke-width")).isEqualTo("0.25");
    }

    @Test
    void facetsMayHaveNoBorder() throws IOException {
        Facet bare = new Facet(List.of(10.0, 10.0, 40.0, 10.0, 25.0, 36.0), 1, Hatch.NONE, Weight.NONE, "");
        assertThat(onlyPath(bare).hasAttr("stroke")).isFalse();
    }

    @Test
    void discIsFilledLikeAFacet() throws IOException {
        Element circle = Svg.of(Samples.picture(Samples.disc("H1"))).selectFirst("circle");
        assertThat(circle.attr("cx") + " " + circle.attr("cy") + " " + circle.attr("r"))
                .isEqualTo("30 160 2.5");
        assertThat(circle.attr("fill")).isEqualTo("#f9e7bf");
        assertThat(circle.attr("stroke-width")).isEqualTo("0.25");
        assertThat(circle.selectFirst("title").text()).isEqualTo("H1");
        assertThat(Svg.of(Samples.picture(Samples.disc(""))).select("circle title"))
                .isEmpty();
    }

    @Test
    void hiddenLinesAreBroken() throws IOException {
        Element path = Svg.of(Samples.picture(Samples.line(Weight.FINE, true))).selectFirst("path");
        assertThat(path.attr("stroke-dasharray")).isEqualTo("3 1.5");
    }

    /** Capitals of 3.6 mm are 0.72 of a type of 5 mm; the base line is half of them below the middle. */
    @Test
    void labelIsSizedAndPlacedByItsCapitals() throws IOException {
        Element text = Svg.of(Samples.picture(Samples.label("P1"))).selectFirst("text");
        assertThat(text.attr("font-size")).isEqualTo("5");
        assertThat(text.attr("x")).isEqualTo("25");
        assertThat(text.attr("y")).isEqualTo("161.8");
    }

    @ParameterizedTest
    @CsvSource({"START, start", "MIDDLE, middle", "END, end"})
    void labelIsPlacedByItsAnchor(Anchor anchor, String word) throws IOException {
        Label label = new Label("P1", 1, 2, 2.5, anchor);
        assertThat(Svg.of(Samples.picture(label)).selectFirst("text").attr("text-anchor"))
                .isEqualTo(word);
    }

    @Test
    void itemsKeepTheirOrder() throws IOException {
        Document page = Svg.of(Samples.picture(
                Samples.label("a"),
                Samples.facet(1, Hatch.NONE, ""),
                Samples.line(Weight.FINE, false),
                Samples.label("b")));
        assertThat(page.select("svg > g > *"))
                .extracting(Element::tagName)
                .containsExactly("text", "g", "path", "text");
    }

    private static List<String> lines(Document page, int from, int to) {
        return page.select("g:has(> title)").stream()
                .filter(facet -> facet.selectFirst("title").text().matches("P\\d+"))
                .filter(facet -> {
                    int colour =
                            Integer.parseInt(facet.selectFirst("title").text().substring(1));
                    return from <= colour && colour <= to;
                })
                .flatMap(facet -> facet.select("> path[stroke-width=0.13]").eachAttr("d").stream())
                .distinct()
                .toList();
    }

    private static Element onlyPath(Item item) throws IOException {
        List<Element> paths = Svg.of(Samples.picture(item)).select("path");
        assertThat(paths).hasSize(1);
        return paths.get(0);
    }
}
