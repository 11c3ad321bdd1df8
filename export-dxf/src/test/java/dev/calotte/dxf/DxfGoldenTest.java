package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A small file for each kind of entity. Read the tags of a new one before it replaces an old one. */
class DxfGoldenTest {

    static List<Arguments> files() {
        return List.of(
                Arguments.of(
                        "closed-polyline",
                        Samples.drawing(Path.closed(Operation.CUT_OUTER, 10, 10, 130, 10, 10, 99.0 + 2.0 / 3))),
                Arguments.of("open-polyline", Samples.drawing(Path.open(Operation.SCORE, 10, 10, 20.5, 30))),
                Arguments.of("circle", Samples.drawing(new Circle(Operation.DRILL, 25, 30, 4.25))),
                Arguments.of("point", Samples.points()),
                Arguments.of("line", Samples.lines()),
                Arguments.of("face", Samples.faces()));
    }

    @ParameterizedTest
    @MethodSource("files")
    void fileIsTheOneThatWasRead(String name, Document document) throws IOException {
        byte[] written = Samples.bytes(document);
        try (InputStream file = DxfGoldenTest.class.getResourceAsStream(name + ".dxf")) {
            byte[] expected = file.readAllBytes();
            assertThat(Tags.parse(written).tags())
                    .containsExactlyElementsOf(Tags.parse(expected).tags());
            assertThat(written).isEqualTo(expected);
        }
    }
}
