package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.document.Picture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTextTest {

    static List<Document> documents() {
        return Samples.all();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P4L-3.07",
                "<\"&'>",
                "]]>",
                "<!-- & --> &amp;",
                "\u00d8 8 \u2013 4\u2032 7\u00bd\u2033",
                "\ud83d\ude00",
                "\ud7ff\ue000\ufffd",
                "\ud800\udc00",
                "\u0645\u0631\u062d\u0628\u0627",
                "a\tb\nc\rd"
            })
    void textReadsBackAsItWas(String text) throws IOException {
        Picture page = new Picture("p", text, 10, 10, List.of(Samples.label(text)));
        var read = Svg.strict(Samples.bytes(page));
        assertThat(read.getElementsByTagName("title").item(0).getTextContent()).isEqualTo(text);
        assertThat(read.getElementsByTagName("text").item(0).getTextContent()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\0b", "a\u001bb", "a\ufffeb", "a\uffffb", "a\ud800b", "a\udc00b"})
    void charactersThatXmlForbidsAreReplaced(String text) throws IOException {
        var read = Svg.strict(Samples.bytes(Samples.picture(Samples.label(text))));
        assertThat(read.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("a\ufffdb");
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linesEndWithLfAndTheLastOneToo(Document document) throws IOException {
        assertThat(Samples.text(document))
                .doesNotContain("\r")
                .doesNotContain("\n\n")
                .endsWith("</svg>\n");
    }

    @ParameterizedTest
    @MethodSource("documents")
    void numbersHaveFourDecimalsAtMostAndNoExponent(Document document) throws IOException {
        String paths = String.join(" ", Svg.of(document).select("path").eachAttr("d"));
        assertThat(paths)
                .doesNotContainPattern("\\.\\d{5}")
                .doesNotContainPattern("[eE]")
                .doesNotContain("-0 ");
    }

    @Test
    void fileSaysThatItIsUtf8AndIs() throws IOException {
        byte[] bytes = Samples.bytes(Samples.plan());
        String text = new String(bytes, StandardCharsets.UTF_8);
        assertThat(text)
                .startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .contains("\ud83d\ude00");
        assertThat(text.getBytes(StandardCharsets.UTF_8)).isEqualTo(bytes);
    }
}
