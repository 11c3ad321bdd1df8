package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.export.Colour;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SvgFinishTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Operation.class)
    void operationHasTheColourOfTheFinishAndTheOthersTheirs(Operation operation) throws IOException {
        Finish finish = Finish.PLAIN.withStroke(operation, new Colour(1, 2, 171));
        List<Element> layers = file(Samples.letterF(), finish).select("svg > g");
        assertThat(layers).hasSize(Operation.values().length).allSatisfy(layer -> {
            String colour = finish.stroke(Operation.valueOf(layer.id())).hex();
            assertThat(layer.select("path").eachAttr("stroke")).isNotEmpty().containsOnly(colour);
        });
        assertThat(finish.stroke(operation).hex()).isEqualTo("#0102ab");
    }

    @Test
    void linesAreAsWideAsTheFinishSaysHoweverLargeTheSheet() throws IOException {
        Polyline line = Polyline.open(Operation.SCORE, 0, 0, 6000, 10);
        Drawing large = new Drawing("large", "large", 6000, 2000, List.of(new Part("P1", "", List.of(line))));
        assertThat(file(large, Finish.PLAIN.withLine(0.01)).select("path").eachAttr("stroke-width"))
                .containsExactly("0.01");
    }

    @Test
    void picturesForPeopleKeepTheirLook() throws IOException {
        Finish finish = Finish.PLAIN.withLine(0.01).withStroke(Operation.CUT_OUTER, new Colour(1, 2, 3));
        assertThat(bytes(Samples.plan(), finish)).isEqualTo(bytes(Samples.plan(), Finish.PLAIN));
    }

    /** The lines of the class comment of {@link SvgWriter}. */
    @Test
    void writerIsUsedAlone() throws IOException {
        Path file = folder.resolve("P1.svg");
        Polyline triangle = Polyline.closed(Operation.CUT_OUTER, 10, 10, 310, 10, 160, 270);
        Part part = new Part("P1", "a panel of the model", List.of(triangle));
        Drawing drawing = new Drawing("P1", "Panel P1", 320, 280, List.of(part));
        try (OutputStream out = Files.newOutputStream(file)) {
            SvgWriter.of(Finish.PLAIN.withLine(0.01)).write(drawing, out);
        }
        Element path = Svg.of(Files.readAllBytes(file)).selectFirst("path");
        assertThat(path.attr("d")).isEqualTo("M10 270L310 270L160 10Z");
        assertThat(path.attr("stroke-width")).isEqualTo("0.01");
    }

    private static org.jsoup.nodes.Document file(Document document, Finish finish) throws IOException {
        return Svg.of(bytes(document, finish));
    }

    private static byte[] bytes(Document document, Finish finish) throws IOException {
        Rendition file = new SvgExporter().renditions(document, finish).get(0);
        assertThat(file.path()).isEqualTo("svg/" + document.name() + ".svg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.content().writeTo(out);
        return out.toByteArray();
    }
}
