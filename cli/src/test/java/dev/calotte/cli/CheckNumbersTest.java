package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.cli.check.ResultCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Changes one value of a record that no file beside it shows, and asks that the rest of the record tells. */
class CheckNumbersTest {

    private static final String BRIEF = """
            dome: { breakdown: 2, keep: 1/2, riser: 1 m }
            size: { radius: 1.2 m }
            frame: { hub-gap: 20 mm, bar: [{ length: 3 m, kerf: 2 mm, price: 7 }, { length: 4 m, kerf: 2 mm, price: 9 }] }
            covers:
              - name: skin
                stock: { sheet: [2500 mm, 1250 mm], margin: 5 mm, price: 40 }
                spacing: 6 mm
                plane: 4 mm
                grain: along
                thickness: 8 mm
                edge: -1 mm
                edge-cut: bevelled
            files: [tables]
            """;

    @TempDir
    private static Path made;

    private static String record;

    @BeforeAll
    static void make() throws IOException {
        Path brief = Files.writeString(made.resolve("brief.yaml"), BRIEF);
        Path out = made.resolve("out");
        Runs.Result run = Runs.run("make", brief.toString(), "--out", out.toString(), "--steps", "20");
        assertThat(run.err()).isEmpty();
        record = Files.readString(out.resolve("dome.json"));
    }

    /** What is found besides that the sum of the record is another. */
    private static List<String> found(String changed) throws IOException {
        Path file = made.resolve("out/dome.json");
        Files.writeString(file, changed);
        List<String> found = ResultCheck.of(made.resolve("out")).findings().stream()
                .filter(finding -> finding.fault() != Fault.CHANGED)
                .map(Finding::place)
                .toList();
        Files.writeString(file, record);
        return found;
    }

    @Test
    void nothingIsFoundInARightRecord() throws IOException {
        assertThat(found(record)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"dome\":.*?\"floorDiameter\":([0-9.]+) | 2401 | dome.floorDiameter",
                "\"floorArea\":([0-9.]+) | 4.31 | dome.floorArea",
                "\"volume\":([0-9.]+) | 3.21 | dome.volume",
                "\"baseSpread\":([0-9.]+) | 1 | dome.baseSpread",
                "\"baseRing\":\\[([0-9]+) | 3 | dome.baseRing",
                "\"frequency\":([0-9]+) | 3 | dome.frequency",
                "\"triangulation\":([0-9]+) | 5 | dome.triangulation",
                "\"hubKinds\":.*?\"hand\":\"(none)\" | left | H",
                "\"patch\":\"(A1-01)\" | A1-02 | P",
                "\"kinds\":.*?\"count\":([0-9]+) | 9 | patches.kinds A1",
                "\"kinds\":.*?\"panels\":\\[\"(P[12])\" | P9 | patches.patches A1-01",
                "\"seams\":.*?\"length\":([0-9.]+) | 700 | patches.kinds A1, seam 1",
                "\"these\":\\[([0-9]+) | 1 | patches.kinds A1, seam 1",
                "\"patches\":\\[.*?\"mark\":\"(A1-01)\" | A1-07 | patches.patches A1-07",
                "\"patches\":\\[.*?\"kind\":\"(A1)\" | A7 | patches.patches A1-01",
                "\"patches\":\\[.*?\"panels\":\\[([0-9]+) | 39 | patches.patches A1",
                "\"joins\":.*?\"patch\":\"(A1-02)\" | A1-01 | patches.joins 1",
                "\"joins\":.*?\"to\":\"(A1-01)\" | A1-02 | patches.joins 1",
                "\"joins\":.*?\"length\":([0-9.]+) | 700 | patches.joins 1",
                "\"lastSeam\":([0-9.]+) | 700 | patches.lastSeam",
                "\"way\":\"([a-z]+)\" | moons | patches.way",
                "\"riser\":\\{.*?\"height\":([0-9.]+) | 1001 | riser.totalHeight",
                "\"totalHeight\":([0-9.]+) | 2201 | riser.totalHeight",
                "\"baysLeftOut\":([0-9]+) | 1 | riser.baysLeftOut",
                "\"walls\":.*?\"hand\":\"(none)\" | left | riser.walls W1",
                "\"outline\":\\[\\[[^]]*\\],\\[([0-9.]+) | 650.5 | skin P1.1 outline",
                "\"sides\":\\[.{0,20}\"strut\".*?\"length\":([0-9.]+) | 700 | skin P1.1 side 1",
                "\"grain\":([-0-9.]+) | 3 | skin sheet",
                "\"stockUsed\":([0-9]+) | 77 | skin plan.stockUsed",
                "\"utilisation\":([0-9.]+) | 0.5 | skin plan.utilisation",
                "\"measure\":\"(price)\" | prize | skin plan.measure",
                "\"spent\":([0-9.]+) | 1 | skin plan.spent",
                "\"bound\":([0-9.]+) | 4000 | skin plan.bound",
                "\"proven\":(false) | true | skin plan.proven",
                "\"proof\":\"([-a-z]+)\" | guess | skin plan.proof",
                "\"stock\":(0) | 1 | skin plan.sheets",
                "\"bars\":.{0,9}\"used\":([0-9]+) | 3 | bars.used",
                "\"bars\":.{0,9}\"used\".*?\"utilisation\":([0-9.]+) | 0.5 | bars.utilisation",
                "\"bars\":.{0,9}\"used\".*?\"spent\":([0-9.]+) | 5 | bars.spent",
                "\"bars\":.{0,9}\"used\".*?\"bound\":([0-9.]+) | 5 | bars.proven",
                "\"bars\":.{0,9}\"used\".*?\"offcut\":([0-9.]+) | 5 | bars.offcut",
                "\"bars\":.{0,9}\"used\".*?\"steps\":.*?\"saves\":([-0-9.]+) | 99 | bars.steps",
                "\"dimples\":.*?\"mark\":\"(S1)\" | S2 | accuracy.dimples",
                "\"factor\":([0-9.]+) | 4 | accuracy.dimples S1",
                "\"factor\":.*?\"height\":([0-9.]+) | 4 | accuracy.dimples S1",
                "\"baseRadius\":([0-9.]+) | 4 | accuracy.baseRadius"
            })
    void oneChangedValueIsFound(String where, String value, String place) throws IOException {
        Matcher matcher = Pattern.compile(where, Pattern.DOTALL).matcher(record);
        assertThat(matcher.find()).as(where).isTrue();
        assertThat(matcher.group(1)).isNotEqualTo(value);
        String changed = record.substring(0, matcher.start(1)) + value + record.substring(matcher.end(1));
        assertThat(found(changed)).anySatisfy(each -> assertThat(each).startsWith(place));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"baseRing\":\\[([0-9]+) | 1e9",
                "\"these\":\\[([0-9]+)\\] | 0",
                "\"these\":\\[([0-9]+)\\] | -5",
                "\"patches\":\\[.*?\"panels\":\\[([0-9,]+)\\] | ",
                "\"patches\":\\[.*?\"panels\":\\[([0-9]+) | -1",
                "\"seams\":(\\[.*?\\]) | 7",
                "\"stock\":(0) | -3",
                "\"needed\":([0-9.]+) | 0",
                "\"steps\":(\\{) | [{",
                "\"by\":\"([-a-z]+)\" | weight"
            })
    void whatIsNoRecordAnyMoreIsToldToo(String where, String value) throws IOException {
        Matcher matcher = Pattern.compile(where, Pattern.DOTALL).matcher(record);
        assertThat(matcher.find()).as(where).isTrue();
        String changed =
                record.substring(0, matcher.start(1)) + (value == null ? "" : value) + record.substring(matcher.end(1));
        Path file = Files.writeString(made.resolve("out/dome.json"), changed);
        assertThat(ResultCheck.of(made.resolve("out")).findings()).hasSizeGreaterThan(1);
        Files.writeString(file, record);
    }
}
