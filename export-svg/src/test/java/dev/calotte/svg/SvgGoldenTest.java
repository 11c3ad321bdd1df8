package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.document.Polyline;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A small file for each kind of element. Look at a new one before it replaces an old one. */
class SvgGoldenTest {

    static List<Arguments> files() {
        return List.of(
                Arguments.of(
                        "closed-path",
                        Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 10, 10, 130, 10, 10, 99.0 + 2.0 / 3))),
                Arguments.of("open-path", Samples.drawing(Polyline.open(Operation.SCORE, 10, 10, 20.5, 30))),
                Arguments.of("circle", Samples.drawing(new Circle(Operation.DRILL, 25, 30, 4.25))),
                Arguments.of(
                        "facets",
                        Samples.picture(Samples.facet(2, Hatch.NONE, "P2"), Samples.facet(10, Hatch.RISING, ""))),
                Arguments.of(
                        "lines", Samples.picture(Samples.line(Weight.FINE, false), Samples.line(Weight.FAINT, true))),
                Arguments.of("disc", Samples.picture(Samples.disc("H1"))),
                Arguments.of("label", Samples.picture(Samples.label("\u00d8 8 & more"))));
    }

    @ParameterizedTest
    @MethodSource("files")
    void fileIsTheOneThatWasLookedAt(String name, Document document) throws IOException {
        byte[] written = Samples.bytes(document);
        try (InputStream file = SvgGoldenTest.class.getResourceAsStream(name + ".svg")) {
            byte[] expected = file.readAllBytes();
            assertThat(elements(written)).containsExactlyElementsOf(elements(expected));
            assertThat(written).isEqualTo(expected);
        }
    }

    private static List<String> elements(byte[] bytes) {
        return Jsoup.parse(new String(bytes, StandardCharsets.UTF_8), "", Parser.xmlParser()).getAllElements().stream()
                .map(SvgGoldenTest::describe)
                .toList();
    }

    private static String describe(Element element) {
        return element.tagName() + element.attributes() + " " + element.ownText();
    }
}
