package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DxfFileTest {

    /** Bulge, start angle, end angle. */
    private static final Set<Integer> FINE = Set.of(42, 50, 51);

    static List<Document> documents() {
        return Samples.all();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyByteIsAsciiAndEveryLineEndsWithCrLf(Document document) throws IOException {
        String text = new String(Samples.bytes(document), StandardCharsets.ISO_8859_1);
        assertThat(text).matches("([ -~]+\r\n)+").endsWith("0\r\nEOF\r\n");
    }

    @ParameterizedTest
    @MethodSource("documents")
    void numbersHaveAPointAndOneToSixDecimalsButForAnglesAndBulgesNine(Document document) throws IOException {
        assertThat(Tags.of(document).tags())
                .filteredOn(tag -> tag.code() >= 10 && tag.code() < 60)
                .allMatch(tag -> tag.value().matches("-?\\d+\\.\\d{1," + (FINE.contains(tag.code()) ? 9 : 6) + "}"))
                .noneMatch(tag -> tag.value().matches("-0\\.0+"));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void thereIsNothingButPlainEntities(Document document) throws IOException {
        assertThat(Tags.of(document).entities())
                .extracting(Tags.Entry::type)
                .isSubsetOf("POLYLINE", "VERTEX", "SEQEND", "CIRCLE", "POINT", "LINE", "3DFACE");
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyLayerInUseIsDeclaredVisibleAndWithAColour(Document document) throws IOException {
        Tags tags = Tags.of(document);
        List<Tags.Entry> layers = tags.entries("LAYER");
        assertThat(tags.entities())
                .extracting(entity -> entity.text(8))
                .isSubsetOf(layers.stream().map(layer -> layer.text(2)).toList());
        assertThat(layers).allSatisfy(layer -> {
            assertThat(layer.tags().tags()).extracting(Tags.Tag::code).containsExactly(70, 2, 62, 6);
            assertThat(layer.text(70)).isEqualTo("0");
            assertThat(layer.number(62)).isBetween(1.0, 255.0);
            assertThat(layer.text(6)).isEqualTo("CONTINUOUS");
        });
    }

    @Test
    void sectionsAreThoseOfReleaseTwelve() throws IOException {
        Tags tags = Tags.of(Samples.letterF());
        assertThat(tags.entries("SECTION"))
                .extracting(section -> section.text(2))
                .containsExactly("HEADER", "TABLES", "BLOCKS", "ENTITIES");
        assertThat(tags.entries("TABLE")).extracting(table -> table.text(2)).containsExactly("LTYPE", "LAYER");
        assertThat(tags.entries("LTYPE")).extracting(type -> type.text(2)).containsExactly("CONTINUOUS");
        assertThat(tags.variable("$ACADVER").text(1)).isEqualTo("AC1009");
    }

    @Test
    void headerSaysMillimetresTwice() throws IOException {
        Tags tags = Tags.of(Samples.letterF());
        assertThat(tags.variables()).containsExactly("$ACADVER", "$MEASUREMENT", "$INSUNITS", "$EXTMIN", "$EXTMAX");
        assertThat(tags.variable("$MEASUREMENT").text(70)).isEqualTo("1");
        assertThat(tags.variable("$INSUNITS").text(70)).isEqualTo("4");
    }

    @Test
    void extentsAreThoseOfTheShapesAndNotOfTheSheet() throws IOException {
        Tags tags = Tags.of(Samples.letterF());
        assertThat(place(tags.variable("$EXTMIN"))).containsExactly("10.0", "10.0", "0.0");
        assertThat(place(tags.variable("$EXTMAX"))).containsExactly("120.0", "170.0", "0.0");
    }

    /** By hand: three quarters of a circle of radius 10 round (20, 20), and a chord. */
    @Test
    void extentsReachAroundArcs() throws IOException {
        double bulge = Math.tan(3 * Math.PI / 8);
        Tags tags = Tags.of(Samples.drawing(Polyline.closed(
                Operation.CUT_OUTER, new double[] {20, 10, 10, 20, 15, 15}, new double[] {bulge, 0, 0})));
        assertThat(place(tags.variable("$EXTMIN"))).containsExactly("10.0", "10.0", "0.0");
        assertThat(place(tags.variable("$EXTMAX"))).containsExactly("30.0", "30.0", "0.0");
    }

    @Test
    void extentsDoNotReachAroundWhatAnArcLeavesOut() throws IOException {
        double bulge = -Math.tan(Math.PI / 8);
        Tags tags = Tags.of(Samples.drawing(Polyline.closed(
                Operation.CUT_INNER, new double[] {20, 10, 10, 20, 20, 20}, new double[] {bulge, 0, 0})));
        assertThat(place(tags.variable("$EXTMIN"))).containsExactly("10.0", "10.0", "0.0");
        assertThat(place(tags.variable("$EXTMAX"))).containsExactly("20.0", "20.0", "0.0");
    }

    @Test
    void extentsOfAWireframeHaveAHeight() throws IOException {
        Tags tags = Tags.of(Samples.points());
        assertThat(place(tags.variable("$EXTMIN"))).containsExactly("-0.5", "0.333333", "0.0");
        assertThat(place(tags.variable("$EXTMAX"))).containsExactly("1.0", "2.0", "3.0");
    }

    @Test
    void emptyDrawingHasItsExtentsAtTheOrigin() throws IOException {
        Tags tags = Tags.of(new Drawing("empty", "", 10, 10, List.of()));
        assertThat(tags.entities()).isEmpty();
        assertThat(place(tags.variable("$EXTMAX"))).containsExactly("0.0", "0.0", "0.0");
    }

    @Test
    void titleIsTheOnlyCommentAndComesFirst() throws IOException {
        List<Tags.Tag> tags = Tags.of(Samples.letterF()).tags();
        assertThat(tags.get(0)).isEqualTo(new Tags.Tag(999, "Panel F, \\U+00D8 8, millimetres"));
        assertThat(tags).filteredOn(tag -> tag.code() == 999).hasSize(1);
    }

    @Test
    void titleKeepsToOneLineOf255Characters() {
        assertThat(Ascii.line("a\r\nb\u007f", "")).isEqualTo("a\\U+000D\\U+000Ab\\U+007F");
        assertThat(Ascii.line("\u00e9".repeat(100), ", mm")).hasSize(249).endsWith("\\U+00E9, mm");
    }

    @Test
    void withoutATitleTheCommentNamesTheUnit() throws IOException {
        assertThat(Tags.of(Samples.lines()).tags().get(0)).isEqualTo(new Tags.Tag(999, "millimetres"));
    }

    private static List<String> place(Tags variable) {
        return List.of(variable.text(10), variable.text(20), variable.text(30));
    }
}
