package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Document;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What releases from 2000 on ask for: records in full, in order, each with a handle and an owner. */
class Release2000Test {

    private static final Set<Integer> REFERENCES = Set.of(330, 340, 350, 390);

    static List<Document> documents() {
        return Samples.all();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void handlesAreUniqueHexadecimalAndBelowTheSeed(Document document) throws IOException {
        Tags tags = light(document);
        List<String> handles = handles(tags);
        long seed = Long.parseLong(tags.variable("$HANDSEED").text(5), 16);
        assertThat(handles)
                .doesNotHaveDuplicates()
                .allMatch(handle -> handle.matches("[1-9A-F][0-9A-F]*"))
                .allMatch(handle -> Long.parseLong(handle, 16) < seed);
        assertThat(seed).isEqualTo(handles.size() + 1);
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyReferenceLeadsToARecord(Document document) throws IOException {
        Tags tags = light(document);
        List<String> handles = handles(tags);
        assertThat(records(tags))
                .flatExtracting(entry -> entry.tags().tags())
                .filteredOn(tag -> REFERENCES.contains(tag.code()))
                .extracting(Tags.Tag::value)
                .filteredOn(value -> !value.equals("0"))
                .hasSizeGreaterThan(30)
                .isSubsetOf(handles);
    }

    /** Each entity is owned by the block record of the space it lies in. */
    @ParameterizedTest
    @MethodSource("documents")
    void entitiesBelongToTheModelSpace(Document document) throws IOException {
        Tags tags = light(document);
        String space = tags.entries("BLOCK_RECORD").get(0).text(5);
        assertThat(tags.entries("BLOCK_RECORD").get(0).text(2)).isEqualTo("*Model_Space");
        assertThat(tags.entities())
                .isNotEmpty()
                .allMatch(entity -> entity.text(330).equals(space));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void groupCodesOfEachRecordStandInThePublishedOrder(Document document) throws IOException {
        Map<String, List<Integer>> published = published();
        for (Tags.Entry record : records(light(document))) {
            assertThat(codes(record)).as(record.type()).isEqualTo(published.get(name(record)));
        }
    }

    /** Autodesk, AutoCAD 2000 DXF Reference, "Group Code Value Types". */
    @ParameterizedTest
    @MethodSource("documents")
    void valuesAreOfTheSortOfTheirGroupCode(Document document) throws IOException {
        for (Tags.Tag tag : light(document).tags()) {
            assertThat(tag.value()).as("code %s", tag.code()).matches(sort(tag.code()));
        }
    }

    private static String sort(int code) {
        if (code == 5 || code == 105 || in(code, 320, 369) || in(code, 390, 399)) {
            return "[0-9A-F]{1,16}";
        }
        if (in(code, 10, 59) || in(code, 140, 149)) {
            return "-?\\d+\\.\\d+";
        }
        if (in(code, 290, 299)) {
            return "[01]";
        }
        boolean whole = in(code, 60, 99) || in(code, 170, 179) || in(code, 270, 389);
        return whole ? "-?\\d{1,9}" : "[ -~]{0,255}";
    }

    private static boolean in(int code, int least, int most) {
        return code >= least && code <= most;
    }

    @Test
    void sectionsAndTablesAreThoseOfTheRelease() throws IOException {
        Tags tags = light(Samples.letterF());
        assertThat(tags.variable("$ACADVER").text(1)).isEqualTo("AC1015");
        assertThat(tags.entries("SECTION"))
                .extracting(section -> section.text(2))
                .containsExactly("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS");
        assertThat(tags.entries("TABLE"))
                .extracting(table -> table.text(2))
                .containsExactly(
                        "VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD");
    }

    @Test
    void everyTableSaysHowManyEntriesItHas() throws IOException {
        Tags tags = light(Samples.letterF());
        for (Tags.Entry table : tags.entries("TABLE")) {
            assertThat(table.text(70))
                    .as(table.text(2))
                    .isEqualTo(String.valueOf(tags.entries(table.text(2)).size()));
        }
    }

    @Test
    void everyLayerHasAPlotStyle() throws IOException {
        Tags tags = light(Samples.letterF());
        String style = tags.entries("ACDBPLACEHOLDER").get(0).text(5);
        assertThat(tags.entries("LAYER"))
                .hasSize(7)
                .allMatch(layer -> layer.text(390).equals(style));
    }

    @Test
    void firstViewShowsAllOfTheDrawing() throws IOException {
        Tags.Entry view = light(Samples.letterF()).entries("VPORT").get(0);
        assertThat(List.of(12, 22, 40)).extracting(view::number).containsExactly(65.0, 90.0, 160.0);
    }

    private static Tags light(Document document) throws IOException {
        return Tags.of(document, Dialect.LWPOLYLINE);
    }

    private static List<Tags.Entry> records(Tags tags) {
        return tags.entries().stream()
                .filter(entry -> !Set.of("SECTION", "ENDSEC", "ENDTAB", "EOF").contains(entry.type()))
                .toList();
    }

    private static List<String> handles(Tags tags) {
        return records(tags).stream()
                .filter(record -> !record.type().equals("CLASS"))
                .map(record -> record.text(record.type().equals("DIMSTYLE") ? 105 : 5))
                .toList();
    }

    private static String name(Tags.Entry record) {
        boolean dimensions = record.type().equals("TABLE") && record.text(2).equals("DIMSTYLE");
        return dimensions ? "TABLE-DIMSTYLE" : record.type();
    }

    /** Without what repeats: entries of a dictionary, corners of a polyline. */
    private static List<Integer> codes(Tags.Entry record) {
        Set<Integer> repeated = switch (record.type()) {
            case "DICTIONARY" -> Set.of(3, 350);
            case "LWPOLYLINE" -> Set.of(10, 20, 42);
            default -> Set.of();
        };
        return record.tags().codes().stream()
                .filter(code -> !repeated.contains(code))
                .toList();
    }

    private static Map<String, List<Integer>> published() throws IOException {
        Map<String, List<Integer>> codes = new TreeMap<>();
        try (InputStream file = Release2000Test.class.getResourceAsStream("release-2000-codes.txt")) {
            new String(file.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> List.of(line.split(" ")))
                    .forEach(words -> codes.put(
                            words.get(0),
                            words.stream().skip(1).map(Integer::valueOf).toList()));
        }
        return codes;
    }
}
