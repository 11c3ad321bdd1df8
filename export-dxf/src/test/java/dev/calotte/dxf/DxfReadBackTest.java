package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.document.Shape;
import dev.calotte.document.Wireframe;
import dev.calotte.export.Reading;
import dev.calotte.testing.SameShapes;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written is read back. */
class DxfReadBackTest {

    private static final double ROUNDING_MM = 2e-6;

    private final Locale locale = Locale.getDefault();

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
    }

    private static Reading readBack(Drawing drawing, Dialect dialect) throws IOException {
        return new DxfShapeReader().reading(new ByteArrayInputStream(Samples.bytes(drawing, dialect)));
    }

    /** In lines, circles come before what is joined. */
    @ParameterizedTest
    @EnumSource(Dialect.class)
    void linesComeBackWithTheirOperationsFromEveryDialect(Dialect dialect) throws IOException {
        for (String tag : List.of("tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US")) {
            Locale.setDefault(Locale.forLanguageTag(tag));
            for (Drawing drawing : List.of(Samples.letterF(), Samples.rounded())) {
                Reading read = readBack(drawing, dialect);
                SameShapes.assertSame(sorted(read.shapes()), sorted(SameShapes.inOrder(drawing)), 10 * ROUNDING_MM);
                assertThat(read.lines()).allMatch(line -> line.mark().isEmpty());
            }
        }
    }

    private static List<Shape> sorted(List<Shape> shapes) {
        return shapes.stream().sorted(Comparator.comparing(Shape::operation)).toList();
    }

    @Test
    void titleComesBackAndTheCommentsOfOthersAreNone() throws IOException {
        assertThat(readBack(Samples.letterF(), Dialect.LWPOLYLINE).title()).contains("Panel F, \u00d8 8");
        assertThat(readBack(Samples.rounded(), Dialect.LINES).title()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG-u-nu-arab", "en-US"})
    void wireframesComeBack(String tag) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(tag));
        for (Wireframe wireframe : List.of(Samples.tetrahedron(), Samples.points(), Samples.lines(), Samples.faces())) {
            for (Dialect dialect : Dialect.values()) {
                List<Wireframe.Layer> read =
                        new DxfWireReader().read(new ByteArrayInputStream(Samples.bytes(wireframe, dialect)));
                List<Wireframe.Layer> written = wireframe.layers().stream()
                        .filter(layer -> layer.size() > 0)
                        .toList();
                assertThat(read).hasSameSizeAs(written);
                for (int i = 0; i < read.size(); i++) {
                    assertThat(read.get(i).name()).isEqualTo(written.get(i).name());
                    assertThat(read.get(i).sort()).isEqualTo(written.get(i).sort());
                    assertThat(numbers(read.get(i))).containsExactly(numbers(written.get(i)), within(ROUNDING_MM));
                }
            }
        }
    }

    private static double[] numbers(Wireframe.Layer layer) {
        int corners = layer.sort().corners();
        return Stream.iterate(0, i -> i < 3 * corners * layer.size(), i -> i + 1)
                .mapToDouble(i -> layer.at(i / 3 / corners, i / 3 % corners, i % 3))
                .toArray();
    }

    private static byte[] entities(String entities) {
        String text = "0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF";
        return text.replace(' ', '\n').getBytes(StandardCharsets.US_ASCII);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 CIRCLE 8 A 10 0 20 0 40 5",
                "0 3DFACE 8 A 10 0 20 0 30 0 11 1 21 0 31 0 12 1 22 1 32 0 13 0 23 1 33 0",
                "0 LINE 8 A 10 0 20 0 30 0 11 1 21 0",
                "0 POINT 8 a 10 0 20 0 30 0"
            })
    void whatIsNoPartOfAWireframeIsRefused(String entity) throws IOException {
        byte[] bytes = entities(entity);
        if (entity.contains("LINE")) {
            // heights that are left out are 0
            assertThat(new DxfWireReader()
                            .read(new ByteArrayInputStream(bytes))
                            .get(0)
                            .at(0, 1, 2))
                    .isZero();
        } else {
            assertThatThrownBy(() -> new DxfWireReader().read(new ByteArrayInputStream(bytes)))
                    .isInstanceOf(DxfFormatException.class)
                    .hasMessageStartingWith("line 6: " + entity.substring(2, entity.indexOf(' ', 2)));
        }
    }
}
