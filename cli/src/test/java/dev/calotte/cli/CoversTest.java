package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Covers from the brief to the files. */
class CoversTest {

    private static final String DOME = "dome: { breakdown: 3, keep: 5/9 }\n";

    @TempDir
    private Path folder;

    private Runs.Result run(String command, String brief, String... more) throws IOException {
        Path file = folder.resolve("brief.yaml");
        Files.writeString(file, brief);
        return Runs.run(Stream.concat(Stream.of(command, file.toString()), Stream.of(more))
                .toArray(String[]::new));
    }

    /** The page in one line. */
    private String page(String brief, String... more) throws IOException {
        Runs.Result run = run("show", brief, more);
        assertThat(run.err()).isEmpty();
        return run.out().replaceAll("\\s+", " ");
    }

    private JsonNode made(String brief) throws IOException {
        Path out = folder.resolve("out");
        Runs.Result run = run("make", brief, "--out", out.toString());
        assertThat(run.err()).isEmpty();
        return new ObjectMapper().readTree(out.resolve("dome.json").toFile());
    }

    @Test
    void everyPieceHasItsPatternInEachFormat() throws IOException {
        JsonNode json = made(DOME + """
                size: { radius: 3 m }
                covers:
                  - name: glazing
                    spacing: 5 mm
                    stock: { sheet: [6000 mm, 2100 mm], margin: 10 mm }
                    plane: 12 mm
                    edge: -2 mm
                    hub-relief: 35 mm
                    fasteners: { hole: 6.5 mm, edge-distance: 40 mm, pitch: 400 mm }
                """);
        JsonNode patterns = json.get("covers").get(0).get("patterns");
        int count = 0;
        for (JsonNode pattern : patterns) {
            String name = "panels/glazing-" + pattern.get("mark").asText();
            assertThat(folder.resolve("out/dxf/" + name + ".dxf")).isNotEmptyFile();
            assertThat(folder.resolve("out/svg/" + name + ".svg")).isNotEmptyFile();
            assertThat(pattern.get("fits").asBoolean()).isTrue();
            assertThat(pattern.get("overBy").asDouble()).isZero();
            assertThat(pattern.get("net")).hasSize(3);
            assertThat(pattern.get("outline")).hasSize(6);
            assertThat(pattern.get("holes").size()).isGreaterThan(6);
            count += pattern.get("count").asInt();
        }
        assertThat(count).isEqualTo(105);
        assertThat(Files.readString(folder.resolve("out/tables/patterns.csv")).lines())
                .hasSize(patterns.size() + 1);
    }

    @Test
    void whatDoesNotFitIsNamedByHowMuchAndWithWhatHelps() throws IOException {
        String brief = DOME + """
                size: { radius: 3 m }
                covers:
                  - { name: cloth, stock: { roll: 1 m }, edge: 10 mm }
                """;
        JsonNode json = made(brief);
        JsonNode cover = json.get("covers").get(0);
        JsonNode largest = cover.get("patterns").get(1);
        double over = largest.get("cutAltitudes").get(0).asDouble() - 1000;
        assertThat(largest.get("overBy").asDouble())
                .isCloseTo(over, within(1e-5))
                .isPositive();
        assertThat(largest.get("fits").asBoolean()).isFalse();
        assertThat(cover.get("mends").get("seams").asInt()).isEqualTo(1);
        double radius = cover.get("mends").get("radius").asDouble();
        String page = run("show", brief).out();
        assertThat(page)
                .contains("no, over by ")
                .contains("What helps: ")
                .contains("split: seam, 1 seam a panel at most");
        assertThat(run("show", brief.replace("3 m }", radius + " mm }")).out()).doesNotContain("over by");
        assertThat(run("show", brief.replace("3 m }", radius + 0.01 + " mm }")).out())
                .contains("over by");
    }

    @Test
    void theLargestDomeForACoverIsFound() throws IOException {
        String brief = DOME + """
                size: { widest-for: cloth }
                covers:
                  - { name: cloth, stock: { roll: 1500 mm, margin: 10 mm }, spacing: 2 mm, edge: 15 mm, base-edge: 50 mm }
                """;
        assertThat(run("show", brief).out()).contains("Size: as large as the stock allows; P2");
        JsonNode patterns = made(brief).get("covers").get(0).get("patterns");
        double widest = 0;
        for (JsonNode pattern : patterns) {
            widest = Math.max(widest, pattern.get("cutAltitudes").get(0).asDouble());
        }
        assertThat(widest).isCloseTo(1480, within(1e-4));
    }

    @Test
    void theLargestDomeFromSoMuchStockIsFound() throws IOException {
        String sheets = DOME + """
                size: { widest-from: { cover: ply, count: 24 } }
                covers:
                  - { name: ply, stock: { sheet: [2440 mm, 1220 mm], margin: 10 mm }, spacing: 6 mm, faces: both }
                """;
        assertThat(page(sheets))
                .contains("Size: the largest dome found whose ply comes out of 24 sheets. No radius above");
        JsonNode made = made(sheets);
        assertThat(made.at("/covers/0/plan/stockUsed").asInt()).isBetween(20, 24);
        // half the area of 24 sheets at least becomes skin, and not more than all of it
        assertThat(made.at("/dome/surfaceArea").asDouble()).isBetween(12 * 2.42 * 1.2, 24 * 2.42 * 1.2);
        String roll = DOME + """
                size: { widest-from: { cover: cloth, length: 30 m } }
                openings: [ { name: door, remove: [P2-5.02] } ]
                covers:
                  - { name: cloth, stock: { roll: 1500 mm }, spacing: 6 mm }
                """;
        assertThat(page(roll))
                .contains("Size: the largest dome found whose cloth comes out of 30.0 m of roll. No radius above")
                .containsPattern("Uses (29.[5-9]|30.0) m of roll");
        String plenty = roll.replace("length: 30 m", "length: 300 m");
        assertThat(page(plenty)).contains("Size: the largest dome whose cloth comes out of 300.0 m of roll, proven.");
    }

    @Test
    void aSupplyIsKeptToWhateverWorkIsSpentOnPlans() throws IOException {
        String brief = DOME + """
                size: { widest-from: { cover: ply, count: 1 } }
                covers:
                  - { name: ply, stock: { sheet: [2440 mm, 1220 mm], margin: 10 mm, price: 46 }, split: seam }
                  - { name: liner, stock: { roll: 1 m } }
                """;
        for (String steps : List.of("0", "30")) {
            assertThat(page(brief, "--steps", steps))
                    .contains("ply comes out of 1 sheet. Whether a larger one")
                    .contains("Uses 1 sheet,");
        }
        Runs.Result above = run("show", brief.replace("keep: 5/9", "keep: { above: 1 m }"));
        assertThat(above.err()).contains("size.widest-from").contains(":2:9");
        Runs.Result unknown = run("show", brief + "openings: [ { name: door, remove: [P9-5.02] } ]\n");
        assertThat(unknown.err()).contains("openings[0].remove[0]");
    }

    /** By hand: triangles as large as their sheets waste half of each, and their halves do not. */
    @Test
    void seamsThatSaveStockAreMadeAndSaid() throws IOException {
        String brief = """
                dome: { breakdown: 1 }
                size: { longest-strut: 1 m }
                covers:
                  - { name: a, stock: { sheet: [1000.001, 866.026], price: 46 }, split: when-it-saves }
                  - { name: b, stock: { sheet: [6000, 4000] }, split: when-it-saves }
                output: { shared-edges: once }
                """;
        JsonNode json = made(brief);
        JsonNode saving = json.at("/covers/0/seamSaving");
        int saved = saving.get("saved").asInt();
        assertThat(saving.get("measure").asText()).isEqualTo("pieces");
        assertThat(saved).isGreaterThanOrEqualTo(6);
        assertThat(json.at("/covers/0/plan/stockUsed").asInt()).isEqualTo(20 - saved);
        double seam = json.at("/covers/0/patterns/0/seams/0").asDouble();
        assertThat(saving.get("seams").asDouble()).isCloseTo(20 * seam, within(1e-6));
        assertThat(json.at("/covers/1/seamSaving/saved").asDouble()).isZero();
        assertThat(json.at("/covers/1/patterns")).hasSize(1);
        assertThat(page(brief))
                .containsPattern("Seams that panels need not have save [0-9]+ sheets for [0-9.]+ m more of seam.")
                .contains("No seam that was tried saves a hundredth of the stock.");
    }

    @Test
    void partsBetweenSeamsAreFilesOfTheirOwn() throws IOException {
        JsonNode json = made(DOME + """
                size: { radius: 3 m }
                covers:
                  - { name: cloth, stock: [{ roll: 800 mm }, { sheet: [900, 700] }], edge: 10 mm, base-edge: 10 mm, split: seam, corner: mirrored }
                output: { shared-edges: once }
                """);
        List<String> marks = Stream.of("P1s1", "P1s2", "P2s1", "P2s2").toList();
        JsonNode patterns = json.get("covers").get(0).get("patterns");
        assertThat(patterns).extracting(p -> p.get("mark").asText()).containsExactlyElementsOf(marks);
        assertThat(patterns).allSatisfy(p -> assertThat(p.get("seams")).hasSize(1));
        assertThat(folder.resolve("out/svg/panels/cloth-P2s2.svg")).isNotEmptyFile();
    }

    @Test
    void codedNotchesAndBevelsReachTheFiles() throws IOException {
        JsonNode json = made(DOME + """
                size: { radius: 3 m }
                covers:
                  - name: boards
                    thickness: 18 mm
                    edge-cut: bevelled
                    grain: along
                    notches: coded
                    faces: both
                  - name: liner
                    edge: { narrow: 8 mm, wide: 18 mm }
                    corner: blunt
                    notches: coded
                """);
        JsonNode board = json.get("covers").get(0).get("patterns").get(0);
        assertThat(board.get("outerOutline")).hasSize(3);
        assertThat(board.get("grain").isNumber()).isTrue();
        assertThat(board.get("sides").get(0).get("bevel").asDouble()).isBetween(5.0, 8.0);
        JsonNode liner = json.get("covers").get(1).get("patterns").get(0);
        assertThat(liner.get("sides").get(0).get("notches").get(0).get(1).asDouble())
                .isEqualTo(4);
        assertThat(liner.get("sides")).extracting(s -> s.get("lap").asText()).containsAnyOf("over", "under");
        String svg = Files.readString(folder.resolve("out/svg/panels/boards-P1.1.svg"));
        assertThat(svg).contains("ENGRAVE").contains("REF");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{ stock: { roll: 1 m } } | covers[0].name | the key is missing",
                "{ name: a/b } | covers[0].name | cannot be part of a file",
                "{ name: .a } | covers[0].name | cannot be part of a file",
                "{ name: a, edge: { narrow: 9, wide: 8 } } | covers[0].edge | below the narrow one",
                "{ name: a, edge: { narrow: 9 } } | covers[0].edge.wide | the key is missing",
                "{ name: a, split: when-it-save } | covers[0].split | Did you mean when-it-saves?",
                "{ name: a, spacing: -8 mm } | covers[0].spacing | below 0",
                "{ name: a, fasteners: { hole: 6, edge-distance: 3, pitch: 99 } } | covers[0].fasteners | reach over",
                "{ name: a, fasteners: { hole: 6, pitch: 99 } } | covers[0].fasteners.edge-distance | missing",
                "{ name: a, stock: { roll: 1 m, sheet: [1, 2] } } | covers[0].stock | given together",
                "{ name: a, stock: { margin: 1 } } | covers[0].stock.sheet | missing",
                "{ name: a, stock: { sheet: [1 m] } } | covers[0].stock.sheet | a list of 1",
                "{ name: a, stock: { sheet: 1 m } } | covers[0].stock.sheet | the text 1 m",
                "{ name: a, stock: { roll: 1 m, margin: 500 } } | covers[0].stock.margin | use up the stock",
                "{ name: a, stock: { roll: 1 m, price: 5 } } | covers[0].stock.price | not a key",
                "{ name: a, stock: { roll: 1 m, price-per-metre: 5 EUR } } | covers[0].stock.price-per-metre | not a price",
                "{ name: a, stock: { roll: 1 m, mass-per-area: 5 } } | covers[0].stock.mass-per-area | has no unit",
                "{ name: a, stock: { sheet: [6 m, 2 m], have: 0 } } | covers[0].stock.have | no number of pieces",
                "{ name: a, stock: { sheet: [6 m, 2 m], have: x } } | covers[0].stock.have | not a whole number",
                "{ name: a, stock: { sheet: [6 m, 2 m], have: 2 } } | covers[0].stock.have | do not hold all",
                "{ name: a, stock: { roll: 1 m, outline: x.dxf } } | covers[0].stock | roll and outline are given together",
                "{ name: a, stock: [{ roll: 1 m }, 5] } | covers[0].stock[1] | the text 5",
                "{ name: a, hub-relief: 900 } | covers[0].hub-relief | uses up a side of panel P1",
                "{ name: a, edge: -900 } | covers[0].edge | uses up a side",
                "{ name: a, fasteners: { hole: 6, edge-distance: 900, pitch: 99 } } | covers[0].fasteners | no room",
                "{ name: a }, { name: A } | covers[1].name | another cover is called A",
            })
    void whatIsWrongWithACoverIsSaidWithItsPlace(String covers, String where, String what) throws IOException {
        Runs.Result run = run("show", DOME + "size: { radius: 3 m }\ncovers: [ " + covers + " ]\n");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(where).contains(what).contains(":3:");
    }

    @Test
    void aCoverWithoutStockCannotSizeADome() throws IOException {
        Runs.Result run = run("show", DOME + "size: { widest-for: a }\ncovers: [ { name: a } ]\n");
        assertThat(run.err()).contains("size.widest-for").contains("has no stock");
        Runs.Result above = run("show", """
                dome: { breakdown: 3, keep: { above: 1 m } }
                size: { widest-for: a }
                covers: [ { name: a, stock: { roll: 1 m } } ]
                """);
        assertThat(above.err()).contains("size.widest-for").contains("2:9");
    }
}
