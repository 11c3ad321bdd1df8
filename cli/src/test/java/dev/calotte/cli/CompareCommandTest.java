package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompareCommandTest {

    private static final String ORCHARD = "examples/orchard-house.yaml";

    @TempDir
    private Path folder;

    static List<Path> examples() throws IOException {
        return Runs.examples();
    }

    private String brief(String text) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, text);
        return brief.toString();
    }

    /** Rows by column; no cell of ours but the last holds a comma. */
    private static List<Map<String, String>> rows(String csv) {
        List<String> lines = csv.lines().toList();
        String[] head = lines.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", head.length);
            assertThat(cells).hasSize(head.length);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static Map<String, String> own(List<Map<String, String>> rows) {
        return rows.stream()
                .filter(row -> row.get("own").equals("yes"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theTableIsAlignedAndNoWiderThanATerminal(Path brief) {
        Runs.Result result = Runs.run("compare", brief.toString(), "--at-most", "30", "--plans", "3");
        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        List<String> lines = result.out().lines().toList();
        assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
        int head = lines.indexOf(
                lines.stream().filter(l -> l.startsWith("  dome")).findFirst().orElseThrow());
        List<String> rows = lines.subList(head + 2, head + 22);
        Matcher column = Pattern.compile(" hubs(?= )").matcher(lines.get(head));
        assertThat(column.find()).isTrue();
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.substring(0, column.end())).matches(".* [0-9]+");
            assertThat(row.charAt(column.end())).isEqualTo(' ');
        });
        assertThat(lines).filteredOn(line -> line.startsWith("  =")).hasSize(1);
        assertThat(result.out()).contains("~ what covers take").contains("* no other dome is as good in");
    }

    @Test
    void theOwnRowIsWhatShowSays() {
        String page = Runs.run("show", ORCHARD).out();
        Map<String, String> own =
                own(rows(Runs.run("compare", ORCHARD, "--csv", "--at-most", "6").out()));
        assertThat(page)
                .contains(own.get("struts") + " struts, " + own.get("strut_kinds") + " kinds")
                .contains(own.get("panels") + " panels, " + own.get("panel_kinds") + " kinds")
                .contains(own.get("hubs") + " hubs, " + own.get("hub_kinds") + " kinds")
                .contains("Bars: " + own.get("bars") + " of 6.0 m")
                .contains("Uses " + own.get("sheets") + " sheets")
                .contains("radius " + Math.round(Double.parseDouble(own.get("radius_mm"))) + " mm, height "
                        + Math.round(Double.parseDouble(own.get("height_mm"))) + " mm");
        assertThat(own.get("planned")).isEqualTo("yes");
        assertThat(own.get("keep")).isEqualTo("5/9");
    }

    @Test
    void bothFormatsHoldTheSame() throws IOException {
        String[] options = {"--at-most", "25", "--plans", "4", "--sort", "near"};
        List<Map<String, String>> rows = rows(run("--csv", options));
        JsonNode json = new ObjectMapper().readTree(run("--json", options));
        assertThat(json.get("format").asText()).isEqualTo("calotte-compare/1");
        assertThat(json.get("same").get("floorDiameter").asDouble()).isEqualTo(6400);
        assertThat(json.get("sortedBy").asText()).isEqualTo("near");
        assertThat(json.get("domes").size() + json.get("ruledOut").size())
                .isEqualTo(25)
                .isEqualTo(rows.size());
        for (int i = 0; i < json.get("domes").size(); i++) {
            JsonNode dome = json.get("domes").get(i);
            Map<String, String> row = rows.get(i);
            assertThat(row.get("rank")).isEqualTo(Integer.toString(i + 1));
            assertThat(row.get("solid")).isEqualTo(dome.get("solid").asText());
            assertThat(row.get("best").equals("yes")).isEqualTo(dome.get("best").asBoolean());
            assertThat(row.get("planned").equals("yes"))
                    .isEqualTo(dome.get("planned").asBoolean());
            assertThat(Double.parseDouble(row.get("price")))
                    .isEqualTo(dome.get("price").asDouble());
            assertThat(Double.parseDouble(row.get("joints_m")))
                    .isCloseTo(dome.get("joints").asDouble() / 1000, within(1e-3));
            boolean above = row.get("keep").equals("above");
            assertThat(dome.get("keep").isObject()).isEqualTo(above);
        }
    }

    private static String run(String format, String... options) {
        List<String> all = new ArrayList<>(List.of("compare", ORCHARD, format));
        all.addAll(List.of(options));
        Runs.Result result = Runs.run(all.toArray(String[]::new));
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        return result.out();
    }

    /** What the table says can be written into a brief, and gives the same dome. */
    @Test
    void aRowIsABriefOfItsOwn() throws IOException {
        List<Map<String, String>> rows = rows(run("--csv", "--at-most", "12", "--plans", "1"));
        assertThat(rows).anyMatch(row -> row.get("keep").equals("above"));
        for (Map<String, String> row : rows) {
            String keep =
                    row.get("keep").equals("above") ? "{ above: " + row.get("above_mm") + " mm }" : row.get("keep");
            String dome = String.join(
                    ", ",
                    "solid: " + row.get("solid"),
                    "breakdown: [" + row.get("breakdown_b") + ", " + row.get("breakdown_c") + "]",
                    "spacing: " + row.get("spacing"),
                    "up: " + row.get("up"),
                    "keep: " + keep);
            String size = "{ radius: " + row.get("radius_mm") + " mm }";
            String page = Runs.run("show", brief("dome: { " + dome + " }\nsize: " + size + "\n"))
                    .out();
            assertThat(page)
                    .contains(row.get("panels") + " panels, ")
                    .contains(row.get("hubs") + " hubs, ")
                    .contains("height " + Math.round(Double.parseDouble(row.get("height_mm"))) + " mm");
        }
    }

    @Test
    void rowsAreSortedAsAsked() {
        List<Map<String, String>> rows = rows(run("--csv", "--at-most", "20", "--plans", "2", "--sort", "hubs"));
        List<Integer> hubs = rows.stream()
                .filter(row -> !row.get("hubs").isEmpty())
                .map(row -> Integer.valueOf(row.get("hubs")))
                .toList();
        assertThat(hubs).isSorted().hasSizeGreaterThan(10);
    }

    @Test
    void aBriefWithoutCoversAndBarsWorks() throws IOException {
        Runs.Result result = Runs.run(
                "compare", brief("dome: { breakdown: 2, keep: 1/2 }\nsize: { height: 2 m }\n"), "--at-most", "15");
        assertThat(result.code()).isZero();
        assertThat(result.out())
                .contains("all with a height of 2000 mm; sorted by kinds")
                .doesNotContain("price");
    }

    @Test
    void aWholeSphereWorks() throws IOException {
        Runs.Result result =
                Runs.run("compare", brief("dome: { breakdown: 3 }\nsize: { radius: 2 m }\n"), "--spacing", "chord");
        assertThat(result.code()).isZero();
        assertThat(result.out()).contains("=").doesNotContain(" up");
    }

    @Test
    void openingsAreLeftOutAndThatIsSaid() throws IOException {
        String text = """
                dome: { breakdown: 2, keep: 1/2 }
                size: { radius: 3 m }
                openings: [{ name: door, remove: [P1-4.01] }]
                """;
        assertThat(Runs.run("compare", brief(text), "--at-most", "3").out()).contains("without its openings");
    }

    @Test
    void anOwnDomeThatCannotBeBuiltIsTold() throws IOException {
        String text = "dome: { breakdown: 2, keep: 1/2 }\nsize: { radius: 3 m }\nframe: { bar: { length: 1700 mm } }\n";
        Runs.Result result = Runs.run("compare", brief(text), "--at-most", "40");
        assertThat(result.code()).isZero();
        assertThat(result.out()).contains("The brief's own dome: frame.bar.length: 1700 mm is shorter");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--sort prise",
                "--same weight",
                "--solid cube",
                "--class 4",
                "--at-most 0",
                "--reach 99",
                "--plans 0",
                "--csv --json"
            })
    void wrongChoicesAreRefused(String options) {
        List<String> all = new ArrayList<>(List.of("compare", ORCHARD));
        all.addAll(List.of(options.split(" ")));
        Runs.Result result = Runs.run(all.toArray(String[]::new));
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).isNotBlank();
    }

    @Test
    void whatCannotBeTheSameIsRefused() throws IOException {
        String whole = brief("dome: { breakdown: 3 }\nsize: { radius: 2 m }\n");
        assertThat(Runs.run("compare", whole, "--same", "floor-diameter").code())
                .isEqualTo(2);
        assertThat(Runs.run("compare", whole, "--same", "stock").err()).contains("no cover has a stock");
        assertThat(Runs.run("compare", ORCHARD, "--same", "stock", "--cover", "cloth")
                        .err())
                .contains("no cover cloth");
    }
}
