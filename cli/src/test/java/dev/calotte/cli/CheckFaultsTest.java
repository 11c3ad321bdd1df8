package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.cli.check.ResultCheck;
import dev.calotte.cli.folder.Manifest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plants one fault in a result, writes the sums of its files anew so that they tell nothing, and asks that the check names
 * the file and the piece.
 */
class CheckFaultsTest {

    private static final String BRIEF = """
            dome: { breakdown: 3, keep: 5/9 }
            size: { radius: 1.2 m }
            frame:
              hub-gap: 20 mm
              bar: { length: 4 m, kerf: 2 mm }
              hub-plate: { diameter: 120 mm, hole: 8 mm, hole-circle: 80 mm }
            covers:
              - name: skin
                stock: { sheet: [2500 mm, 1250 mm], margin: 5 mm }
                spacing: 6 mm
                plane: 4 mm
                grain: along
                fasteners: { hole: 4 mm, edge-distance: 15 mm, pitch: 200 mm }
            model: { scale: 1:10, sheet: [600 mm, 300 mm], thickness: 3 mm }
            files: [tables, dxf, svg, stl]
            """;

    @TempDir
    private static Path made;

    @TempDir
    private Path folder;

    @BeforeAll
    static void make() throws IOException {
        Planted.make(made, BRIEF);
    }

    @BeforeEach
    void copy() throws IOException {
        new Planted(folder).copy(made);
    }

    private void change(String name, UnaryOperator<String> change) throws IOException {
        new Planted(folder).change(name, change);
    }

    private String found() throws IOException {
        return new Planted(folder).found();
    }

    /** Every coordinate of a DXF file, as a scale would change it. */
    private static String scaled(String dxf, double scale) {
        int entities = dxf.indexOf("ENTITIES");
        return dxf.substring(0, entities)
                + Pattern.compile("(?m)^( *(?:10|20|30|11|21|31|12|22|32|13|23|33|40)\\r\\n)(-?[0-9.]+)")
                        .matcher(dxf.substring(entities))
                        .replaceAll(tag -> tag.group(1)
                                + String.format(Locale.ROOT, "%.6f", scale * Double.parseDouble(tag.group(2))));
    }

    private static String mirrored(String dxf) {
        return Pattern.compile("(?m)^( *10\\r\\n)(-?[0-9.]+)")
                .matcher(dxf)
                .replaceAll(tag ->
                        tag.group(1) + String.format(Locale.ROOT, "%.6f", 2000 - Double.parseDouble(tag.group(2))));
    }

    /** The first closed cut outline of a DXF file is moved along x. */
    private static String moved(String dxf, double by) {
        int from = dxf.indexOf("CUT_OUTER", dxf.indexOf("ENTITIES"));
        int end = dxf.indexOf("SEQEND", from);
        return dxf.substring(0, from)
                + Pattern.compile("(?m)^( *10\\r\\n)(-?[0-9.]+)")
                        .matcher(dxf.substring(from, end))
                        .replaceAll(tag -> tag.group(1)
                                + String.format(Locale.ROOT, "%.6f", by + Double.parseDouble(tag.group(2))))
                + dxf.substring(end);
    }

    @ParameterizedTest
    @CsvSource({
        "dxf/sheets/skin-01.dxf, 25.4",
        "dxf/sheets/skin-01.dxf, 1.001",
        "dxf/panels/skin-P2.1.dxf, 25.4",
        "dxf/panels/skin-P2.1.dxf, 1.001",
        "dxf/hubs/H3.dxf, 1.001",
        "dxf/frame-3d.dxf, 25.4",
        "dxf/frame-3d.dxf, 1.001"
    })
    void aScaledDrawingIsFound(String file, double scale) throws IOException {
        change(file, dxf -> scaled(dxf, scale));
        assertThat(found()).contains(file).contains(scale + " times its size");
    }

    @Test
    void aScaledModelToCutIsFoundByItsOtherFormat() throws IOException {
        String file;
        try (Stream<Path> files = Files.list(folder.resolve("dxf/model"))) {
            file = "dxf/model/" + files.sorted().findFirst().orElseThrow().getFileName();
        }
        change(file, dxf -> scaled(dxf, 1.001));
        assertThat(found()).contains("/model/");
    }

    /** So that no format tells it from the other: the angles between the struts do. */
    @Test
    void aHoleOfAPlateThatMovedInEveryFormatIsFound() throws IOException {
        Matcher hole = Pattern.compile("CIRCLE\r\n *8\r\nDRILL\r\n *10\r\n([0-9.]+)")
                .matcher(Files.readString(folder.resolve("dxf/hubs/H3.dxf")));
        assertThat(hole.find()).isTrue();
        double right = Double.parseDouble(hole.group(1));
        change("dxf/hubs/H3.dxf", dxf -> dxf.replaceFirst("(DRILL\r\n *10\r\n)[0-9.]+", "$1" + (right + 0.25)));
        change(
                "svg/hubs/H3.svg",
                svg -> Pattern.compile("(?<=id=\"H3\\.DRILL\\.1\" d=\")[^\"]+")
                        .matcher(svg)
                        .replaceFirst(path -> Pattern.compile("(?<=[M ])[0-9.]+(?= [0-9.]+[AZ])")
                                .matcher(path.group())
                                .replaceAll(x -> String.valueOf(Double.parseDouble(x.group()) + 0.25))));
        assertThat(found())
                .contains("dxf/hubs/H3.dxf, H3: no hole of 8 mm is drilled for strut 1, S1.")
                .contains("svg/hubs/H3.svg, H3: no hole of 8 mm is drilled for strut 1, S1.");
    }

    @Test
    void aTitleDoesNotMoveTheCursorOfATerminal() throws IOException {
        change("dome.json", json -> json.replaceFirst("\"title\":\\s*\"", "$0\\\\u001b[2J"));
        assertThat(Runs.run("check", folder.toString()).out()).contains("?[2J").doesNotContain("\u001b");
    }

    @Test
    void aMirroredPanelIsFound() throws IOException {
        change("dxf/panels/skin-P2.2.dxf", CheckFaultsTest::mirrored);
        assertThat(found()).contains("dxf/panels/skin-P2.2.dxf");
    }

    @Test
    void aMirroredPatternOfTheRecordIsFound() throws IOException {
        change("dome.json", json -> {
            int at = json.indexOf("\"net\":", json.indexOf("\"covers\""));
            int end = json.indexOf("]]", at);
            return json.substring(0, at)
                    + json.substring(at, end)
                            .replaceAll("\\[(-?[0-9.]+),", "[-$1,")
                            .replace("--", "")
                    + json.substring(end);
        });
        assertThat(found()).contains("dome.json, skin P1.1").contains("mirror image");
    }

    @Test
    void anOutlineOfTheRecordThatEnclosesNothingIsRefused() throws IOException {
        change("dome.json", json -> json.replaceFirst("\"net\":\\[.*?\\]\\]", "\"net\":[[0,0],[5,5],[9,9]]"));
        assertThat(found()).contains("dome.json: ").contains("has all its corners on one line");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 400, -3000})
    void aMovedPartOfASheetIsFound(double by) throws IOException {
        change("dxf/sheets/skin-01.dxf", dxf -> moved(dxf, by));
        assertThat(found()).containsPattern("dxf/sheets/skin-01.dxf, P[12]-\\d\\.\\d\\d: its outline lies ");
    }

    @Test
    void aPartMovedInTheRecordLiesOnAnotherOrOutside() throws IOException {
        change(
                "dome.json",
                json -> Pattern.compile("(\"panel\":\"P2-1?[0-9.]+\",\"x\":)([0-9.]+)")
                        .matcher(json)
                        .replaceFirst(part -> part.group(1) + (Double.parseDouble(part.group(2)) + 100)));
        assertThat(found()).contains("dome.json, skin sheet").contains("from where x, y and rotation have it");
    }

    @ParameterizedTest
    @ValueSource(strings = {"struts", "panels", "hubs", "hub-schedule", "patterns", "sheets", "bars", "bill", "base"})
    void aDeletedRowIsFound(String table) throws IOException {
        String name = "tables/" + table + ".csv";
        String row = Files.readAllLines(folder.resolve(name)).get(2);
        change(name, csv -> csv.replaceFirst("(?m)^" + Pattern.quote(row) + "\\n", ""));
        assertThat(found()).contains(name).contains("its row is missing");
    }

    @ParameterizedTest
    @CsvSource({"struts, S1, S2", "panels, P1, P2", "hub-schedule, H4-1.01, H4-1.02", "sheets, P2-2.06, P2-2.03"})
    void twoSwappedMarksOfATableAreFound(String table, String one, String other) throws IOException {
        String name = "tables/" + table + ".csv";
        change(
                name,
                csv -> swapped(
                        csv,
                        "(?m)(?<=^|,)" + Pattern.quote(one) + "(?=,)",
                        "(?m)(?<=^|,)" + Pattern.quote(other) + "(?=,)",
                        one,
                        other));
        assertThat(found()).contains(name + ", ").contains(one);
    }

    private static String swapped(String text, String one, String other, String oneText, String otherText) {
        return text.replaceAll(one, "\u0001").replaceAll(other, oneText).replaceAll("\u0001", otherText);
    }

    @ParameterizedTest
    @CsvSource({"P1-1.01, P1-1.02", "S1-1.01, S2-1.02", "H4-1.01, H4-1.02", "P2-3.01, P2-3.02"})
    void twoSwappedMarksOfTheRecordAreFound(String one, String other) throws IOException {
        change("dome.json", json -> {
            String key = "\"mark\":\"";
            return swapped(json, key + one + "\"", key + other + "\"", key + one + '"', key + other + '"');
        });
        assertThat(found()).containsPattern("dome.json, (" + one + "|" + other + "): ");
    }

    @Test
    void twoSwappedNamesOfOutlinesAreFound() throws IOException {
        String file = "svg/sheets/skin-01.svg";
        String svg = Files.readString(folder.resolve(file));
        List<String> marks = Pattern.compile("id=\"(P[12]-[0-9.]+)\\.CUT_OUTER\"")
                .matcher(svg)
                .results()
                .map(MatchResult::group)
                .map(id -> id.replaceAll("id=\"|\\.CUT_OUTER\"", ""))
                .toList();
        String one = marks.get(0);
        String other = marks.get(1);
        change(file, text -> text.replace(one, "\u0001").replace(other, one).replace("\u0001", other));
        assertThat(found()).contains(file + ", " + one);
    }

    @Test
    void twoSwappedEngravedMarksAreFound() throws IOException {
        String first = "dxf/panels/skin-P1.1.dxf";
        String second = "dxf/panels/skin-P1.2.dxf";
        String one = Files.readString(folder.resolve(first));
        String other = Files.readString(folder.resolve(second));
        change(first, text -> engravedAs(one, other));
        assertThat(found()).contains(first + ", P1.1: its mark is not engraved on it");
    }

    /** One drawing with what is engraved on another: both begin with it. */
    private static String engravedAs(String one, String other) {
        Pattern block = Pattern.compile(
                "(?s)(?<=ENTITIES\\r\\n).*?(?= *0\\r\\n(?:POLYLINE|CIRCLE)\\r\\n *8\\r\\n(?:DRILL|CUT_OUTER))");
        String engraved =
                block.matcher(other).results().findFirst().orElseThrow().group();
        return block.matcher(one).replaceFirst(match -> engraved);
    }

    @ParameterizedTest
    @ValueSource(doubles = {25.4, 1.001})
    void aScaledSolidIsFound(double scale) throws IOException {
        ByteBuffer stl = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("stl/model.stl")))
                .order(ByteOrder.LITTLE_ENDIAN);
        for (int facet = 84; facet < stl.capacity(); facet += 50) {
            for (int at = facet + 12; at < facet + 48; at += 4) {
                stl.putFloat(at, (float) (scale * stl.getFloat(at)));
            }
        }
        Files.write(folder.resolve("stl/model.stl"), stl.array());
        assertThat(found()).contains("stl/model.stl").contains(" mm along x, not ");
    }

    @Test
    void aFlippedFacetIsFound() throws IOException {
        ByteBuffer stl = ByteBuffer.wrap(Files.readAllBytes(folder.resolve("stl/model.stl")))
                .order(ByteOrder.LITTLE_ENDIAN);
        for (int at = 84 + 50 * 3 + 12; at < 84 + 50 * 3 + 24; at += 4) {
            int bits = stl.getInt(at);
            stl.putInt(at, stl.getInt(at + 12));
            stl.putInt(at + 12, bits);
        }
        Files.write(folder.resolve("stl/model.stl"), stl.array());
        assertThat(found()).contains("stl/model.stl, facet ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"dxf/panels/skin-P1.1.dxf", "tables/struts.csv", "svg/drawings/plan.svg", "dxf/frame-3d.dxf"})
    void aMissingFileIsFound(String name) throws IOException {
        Files.delete(folder.resolve(name));
        assertThat(found()).contains(name + ": this file is missing.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"dxf/panels/skin-P9.1.dxf", "notes.txt", "tables/struts-old.csv"})
    void aForeignFileIsFound(String name) throws IOException {
        Files.copy(folder.resolve("dxf/panels/skin-P1.1.dxf"), folder.resolve(name));
        assertThat(found()).contains(name + ": this file is not one of the result.");
    }

    @Test
    void aLinkIsNotFollowed() throws IOException {
        Path file = folder.resolve("tables/struts.csv");
        Path elsewhere = made.resolve("out/tables/struts.csv");
        Files.delete(file);
        Files.createSymbolicLink(file, elsewhere);
        assertThat(found()).contains("tables/struts.csv: it is no regular file");
    }

    @Test
    void aDoubledPartIsFound() throws IOException {
        String file = "dxf/sheets/skin-01.dxf";
        change(file, dxf -> {
            int name = dxf.indexOf("CUT_OUTER", dxf.indexOf("ENTITIES"));
            int from = dxf.lastIndexOf("\n", dxf.lastIndexOf("0\r\nPOLYLINE", name)) + 1;
            int end = dxf.indexOf("0\r\n", dxf.indexOf("SEQEND", from));
            end = dxf.lastIndexOf("\n", end) + 1;
            String outline = dxf.substring(from, end);
            return dxf.substring(0, end) + outline + dxf.substring(end);
        });
        assertThat(found()).contains(file).contains("once more").contains("cut twice");
    }

    @Test
    void aFlippedByteOfAnyFileIsFoundByItsSum() throws IOException {
        Random random = new Random(6);
        List<String> names = new ArrayList<>(Runs.contents(folder).keySet());
        names.removeAll(List.of("dome.json", Manifest.NAME));
        for (String name : names) {
            flip(folder.resolve(name), random);
        }
        assertThat(ResultCheck.of(folder).findings().stream()
                        .filter(finding -> finding.fault() == Fault.CHANGED)
                        .map(Finding::file))
                .containsExactlyElementsOf(names);
    }

    private static int flip(Path file, Random random) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int at = random.nextInt(bytes.length);
        bytes[at] ^= (byte) (1 << random.nextInt(8));
        Files.write(file, bytes);
        return at;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void aFlippedByteOfTheRecordOrTheSumsIsFound(int seed) throws IOException {
        for (String name : List.of("dome.json", Manifest.NAME)) {
            Path file = folder.resolve(name);
            int at = flip(file, new Random(seed));
            assertThat(Runs.run("check", folder.toString()).code())
                    .as(name + " at " + at)
                    .isEqualTo(3);
            Files.copy(made.resolve("out").resolve(name), file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
