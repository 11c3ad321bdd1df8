package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A small file for each kind of entity and each dialect. Read the tags of a new one before it replaces an old one. */
class DxfGoldenTest {

    static Map<String, Document> documents() {
        Map<String, Document> documents = new TreeMap<>();
        documents.put(
                "closed-polyline",
                Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 10, 10, 130, 10, 10, 99.0 + 2.0 / 3)));
        documents.put("open-polyline", Samples.drawing(Polyline.open(Operation.SCORE, 10, 10, 20.5, 30)));
        documents.put("arcs", Samples.rounded());
        documents.put("circle", Samples.drawing(new Circle(Operation.DRILL, 25, 30, 4.25)));
        documents.put("point", Samples.points());
        documents.put("line", Samples.lines());
        documents.put("face", Samples.faces());
        return documents;
    }

    static List<Arguments> files() {
        return documents().entrySet().stream()
                .flatMap(named -> Arrays.stream(Dialect.values())
                        .map(dialect -> Arguments.of(dialect.word() + "/" + named.getKey(), named.getValue(), dialect)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("files")
    void fileIsTheOneThatWasRead(String name, Document document, Dialect dialect) throws IOException {
        byte[] written = Samples.bytes(document, dialect);
        try (InputStream file = DxfGoldenTest.class.getResourceAsStream(name + ".dxf")) {
            byte[] expected = file.readAllBytes();
            assertThat(Tags.parse(written).tags())
                    .containsExactlyElementsOf(Tags.parse(expected).tags());
            assertThat(written).isEqualTo(expected);
        }
    }
}
