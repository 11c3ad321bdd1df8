package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written of a frame whose struts do not simply end before their hubs; cells without commas only. */
class FrameFilesTest {

    private static final String DOME = "dome: { breakdown: 3, keep: 5/9 }\nsize: { radius: 3 m }\n";

    @TempDir
    private Path folder;

    private Path brief(String frame) throws IOException {
        return Files.writeString(folder.resolve("brief.yaml"), DOME + "frame: {" + frame + "}\n");
    }

    private Path made(String frame) throws IOException {
        Path out = folder.resolve("out");
        assertThat(Calotte.run("make", brief(frame).toString(), "--out", out.toString()))
                .isZero();
        return out;
    }

    private static List<Map<String, String>> table(Path out, String name) throws IOException {
        List<String> lines = Files.readAllLines(out.resolve("tables/" + name));
        String[] head = lines.get(0).split(",", -1);
        return lines.subList(1, lines.size()).stream()
                .map(line -> row(head, line.split(",", -1)))
                .toList();
    }

    private static Map<String, String> row(String[] head, String[] cells) {
        assertThat(cells).hasSameSizeAs(head);
        Map<String, String> row = new LinkedHashMap<>();
        IntStream.range(0, head.length).forEach(i -> row.put(head[i], cells[i]));
        return row;
    }

    private static JsonNode json(Path out) throws IOException {
        return new ObjectMapper().readTree(out.resolve("dome.json").toFile());
    }

    /** S1 of a 3V is 0.348615489 of the radius, its axial angle 10.0384 degrees; 2 x 40 mm x (1 - cos) is 1.225 mm. */
    @Test
    void flattenedEndsAreMarkedOut() throws IOException {
        Path out = made("ends: {flatten: 60, hole: 8.5, hole-edge: 20, wall: 1.25}");
        Map<String, String> strut = table(out, "struts.csv").get(0);
        assertThat(strut)
                .containsEntry("mark", "S1")
                .containsEntry("length_mm", "1045.846")
                .containsEntry("cut_length_mm", "1087.071")
                .containsEntry("gap_small_mm", "-20.000")
                .containsEntry("gap_large_mm", "-20.000")
                .containsEntry("merge_error_mm", "")
                .containsEntry("hole_to_hole_mm", "1047.071")
                .containsEntry("hole_to_hole", "1047 mm")
                .containsEntry("hole_from_end_mm", "20.000")
                .containsEntry("bend_from_end_mm", "60.000")
                .containsEntry("bend_angle_deg", "10.0384")
                .containsEntry("outside_chord_mm", "6.972");
        JsonNode kind = json(out).get("strutKinds").get(0);
        assertThat(kind.get("gaps").toString()).isEqualTo("[-20,-20]");
        assertThat(kind.get("mergeError").asDouble()).isZero();
        assertThat(kind.get("holeToHole").asDouble()).isCloseTo(1047.071, within(5e-4));
        assertThat(kind.get("holeFromEnd").asDouble()).isEqualTo(20);
        assertThat(kind.get("bendFromEnd").asDouble()).isEqualTo(60);
        assertThat(kind.get("bendAngle").asDouble()).isCloseTo(10.0384, within(5e-5));
        assertThat(kind.get("outsideChord").asDouble()).isCloseTo(6.972, within(5e-4));
        assertThat(json(out).has("rails")).isFalse();
        assertThat(out.resolve("tables/rails.csv")).doesNotExist();
    }

    /** Six ends of 2 x 1.25 mm and M8: 15 + 9.6 + 2.5 mm, so 30 mm; four at the base: 10 + 12.1 mm, so 25 mm. */
    @Test
    void boltsAreListedByHub() throws IOException {
        Path out = made("ends: {flatten: 60, hole: 8.5, hole-edge: 20, wall: 1.25}");
        for (JsonNode kind : json(out).get("hubKinds")) {
            int struts = kind.get("struts").size();
            assertThat(kind.at("/boltStack/struts").asInt()).isEqualTo(struts);
            assertThat(kind.at("/boltStack/diameter").asDouble()).isEqualTo(8);
            assertThat(kind.at("/boltStack/grip").asDouble()).isEqualTo(2.5 * struts);
            assertThat(kind.at("/boltStack/length").asDouble()).isEqualTo(struts == 6 ? 30 : 25);
        }
        assertThat(table(out, "hub-schedule.csv"))
                .allSatisfy(row -> assertThat(row)
                        .containsEntry("bolt_length_mm", row.get("strut_count").equals("6") ? "30.000" : "25.000"));
        Path plain = made("hub-gap: 45");
        assertThat(json(plain).get("hubKinds").get(0).has("boltStack")).isFalse();
        assertThat(json(plain).get("strutKinds").get(0).has("holeToHole")).isFalse();
        assertThat(table(plain, "hub-schedule.csv").get(0)).containsEntry("bolt_length_mm", "");
        assertThat(table(plain, "struts.csv").get(0))
                .containsEntry("hole_to_hole_mm", "")
                .containsEntry("hole_to_hole", "")
                .containsEntry("bend_angle_deg", "");
    }

    @Test
    void everyHubHasARowInTheSchedule() throws IOException {
        Path out = made("hub-gap: 45");
        List<Map<String, String>> rows = table(out, "hub-schedule.csv");
        JsonNode json = json(out);
        assertThat(rows).hasSize(61);
        for (int i = 0; i < rows.size(); i++) {
            Map<String, String> row = rows.get(i);
            assertThat(row)
                    .containsEntry("mark", json.get("hubs").get(i).get("mark").asText());
            String kind = row.get("kind");
            List<String> struts = List.of(row.get("struts_ccw").split(" ", -1));
            List<String> expected = json.get("hubKinds").findParents("mark").stream()
                    .filter(k -> k.get("mark").asText().equals(kind))
                    .flatMap(k -> IntStream.range(0, k.get("struts").size())
                            .mapToObj(s -> k.get("struts").get(s).asText()))
                    .toList();
            assertThat(struts.stream()
                            .map(mark -> mark.substring(0, mark.indexOf('-')))
                            .toList())
                    .isEqualTo(expected);
            int open = row.get("base").equals("yes") ? 1 : 0;
            assertThat(row).containsEntry("strut_count", Integer.toString(struts.size()));
            assertThat(row.get("gaps_deg").split(" ", -1)).hasSize(struts.size() - open);
            assertThat(row.get("axial_angles_deg").split(" ", -1)).hasSize(struts.size());
            assertThat(row.get("panels_ccw").split(" ", -1)).hasSize(struts.size() - open);
        }
        assertThat(rows.get(0))
                .containsEntry("mark", "H3-0.01")
                .containsEntry("row", "0")
                .containsEntry("place", "1")
                .containsEntry("panels_ccw", "P1-1.01 P1-1.02 P1-1.03 P1-1.04 P1-1.05")
                .containsEntry("gaps_deg", "72.0000 72.0000 72.0000 72.0000 72.0000");
    }

    /** A rail at the crown: 54 degrees at the hub of five struts; two rails for each strut but those of the base ring. */
    @Test
    void mitredRailsAreTheCutList() throws IOException {
        Path out = made("ends: {mitred: [45, 95]}");
        List<Map<String, String>> rails = table(out, "rails.csv");
        assertThat(rails.stream()
                        .mapToInt(row -> Integer.parseInt(row.get("count")))
                        .sum())
                .isEqualTo(2 * 165 - 15);
        assertThat(rails.get(0))
                .containsEntry("mark", "R1")
                .containsEntry("strut", "S1")
                .containsEntry("panel", "P1")
                .containsEntry("long_point_mm", "1045.846")
                .containsEntry("top_outer_mm", "1045.846")
                .containsEntry("tilt_deg", "7.2176")
                .containsEntry("start_blade_tilt_deg", "54.0000")
                .containsEntry("start_gauge_deg", "10.0384");
        assertThat(rails.get(0).get("short_point_mm")).isEqualTo(rails.get(0).get("bottom_inner_mm"));
        assertThat(rails.get(1))
                .containsEntry("end_blade_tilt_deg", "54.0000")
                .containsEntry("end_gauge_deg", "10.0384");
        JsonNode rail = json(out).get("rails").get(0);
        assertThat(json(out).get("rails")).hasSize(rails.size());
        assertThat(rail.get("mark").asText()
                        + rail.get("panelKind").asText()
                        + rail.get("strutKind").asText())
                .isEqualTo("R1P1S1");
        assertThat(rail.get("count").asInt()).isEqualTo(30);
        assertThat(rail.get("longPoint").asDouble())
                .isEqualTo(rail.at("/arrises/0").asDouble());
        assertThat(rail.get("shortPoint").asDouble())
                .isEqualTo(rail.at("/arrises/3").asDouble());
        assertThat(rail.get("tilt").asDouble()).isCloseTo(7.2176, within(5e-5));
        assertThat(rail.at("/start/bladeTilt").asDouble()).isCloseTo(54, within(1e-6));
        assertThat(rail.at("/end/gauge").asDouble()).isCloseTo(11.8686, within(5e-5));
        List<Map<String, String>> bill = table(out, "bill.csv");
        assertThat(bill.stream().filter(row -> row.get("item").equals("rail"))).hasSameSizeAs(rails);
        assertThat(bill).noneMatch(row -> row.get("item").equals("strut"));
        assertThat(bill.stream().filter(row -> row.get("item").equals("rail")))
                .first()
                .satisfies(row -> assertThat(row)
                        .containsEntry("mark", "R1")
                        .containsEntry("needed", "30")
                        .containsEntry("spare", "2")
                        .containsEntry("total_m", "33.467"));
    }

    @Test
    void notesAreOnThePageAndInTheFile() throws IOException {
        String frame = "merge-within: 30, hub-gap: {base: 50, other: 45}";
        String note =
                "Struts that differ by no more than 30.0 mm are one kind: a strut is up to 13.3 mm off its own length.";
        Path out = made(frame);
        assertThat(json(out).get("notes").get(0).asText()).isEqualTo(note);
        assertThat(table(out, "struts.csv").get(1)).containsEntry("merge_error_mm", "13.295");
        assertThat(Runs.run("show", brief(frame).toString()).out().replaceAll("\\s+", " "))
                .contains(" Notes " + note);
    }

    @Test
    void railsAreOnThePage() throws IOException {
        String page =
                Runs.run("show", brief("ends: {mitred: [45, 95]}").toString()).out();
        assertThat(page)
                .contains("\n315 rails, 18 kinds, blade and gauge at the start and at the end\n")
                .contains("\n  R1       30    S1     P1   1045.8 mm     859.7 mm  54.0°  10.0°  62.0°  11.9°\n")
                .contains("\n  and 6 more: tables/rails.csv of `make`\n");
        assertThat(page.lines()).allMatch(line -> line.length() <= 80);
        assertThat(Runs.run("show", brief("hub-gap: 45").toString()).out()).doesNotContain("rails");
    }

    @Test
    void platesAreWrittenForEveryKindOfHub() throws IOException {
        Path out = made("hub-gap: 35, hub-plate: {diameter: 140, hole: 10, hole-circle: 100}");
        for (String mark : List.of("H1L", "H1R", "H2", "H3", "H4", "H5")) {
            assertThat(out.resolve("svg/hubs/" + mark + ".svg")).isRegularFile();
            assertThat(out.resolve("dxf/hubs/" + mark + ".dxf")).isRegularFile();
        }
    }
}
