package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a dome is put together and in which order its cover is cut, from the brief to the files. */
class AssemblyTest {

    private static final String ROLL = """
            dome: { breakdown: 3, keep: 5/9 }
            size: { radius: 2 m }
            covers:
              - name: cloth
                stock: { roll: 1500, margin: 10 }
                spacing: 5
                cut-by: patches
            """;
    private static final String SHEETS = ROLL.replace("{ roll: 1500, margin: 10 }", "{ sheet: [2440, 1220] }");

    @TempDir
    private Path folder;

    private String brief(String text) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, text);
        return brief.toString();
    }

    /** What {@code show} says, its lines joined. */
    private String page(String text) throws IOException {
        return Runs.run("show", brief(text)).out().replaceAll("\\s+", " ");
    }

    private JsonNode json(String text) throws IOException {
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", brief(text), "--steps", "50", "--out", out.toString())
                        .err())
                .isEmpty();
        return new ObjectMapper().readTree(out.resolve("dome.json").toFile());
    }

    @Test
    void aRollIsCutPatchByPatchAtACostThatIsSaid() throws IOException {
        JsonNode json = json(ROLL);
        JsonNode plan = json.at("/covers/0/plan");
        JsonNode byPatches = plan.get("byPatches");
        double extra = byPatches.get("extraMm").asDouble();
        assertThat(plan.get("spent").asDouble() - byPatches.get("stockSpent").asDouble())
                .isCloseTo(extra, within(1e-6));
        assertThat(byPatches.has("extraSheets")).isFalse();
        assertThat(plan.get("proven").asBoolean()).isFalse();
        assertThat(plan.has("steps")).isFalse();
        assertThat(byPatches.get("stretches")).hasSize(byPatches.get("groups").asInt());
        int next = 0;
        for (JsonNode stretch : byPatches.get("stretches")) {
            for (JsonNode patch : stretch.get("patches")) {
                assertThat(patch.asInt()).isEqualTo(next++);
            }
            assertThat(stretch.at("/on/0/to").asDouble())
                    .isGreaterThan(stretch.at("/on/0/from").asDouble());
        }
        assertThat(next).isEqualTo(json.at("/patches/patches").size());
        assertThat(page(ROLL))
                .containsPattern("Cut patch by patch[^:]*: [0-9.]+ m (more|less) than [0-9.]+ m of roll in any order");
    }

    @Test
    void sheetsAreCutPatchByPatch() throws IOException {
        JsonNode plan = json(SHEETS + "output: { shared-edges: once }\n").at("/covers/0/plan");
        int extra = plan.at("/byPatches/extraSheets").asInt();
        assertThat(plan.get("stockUsed").asInt())
                .isEqualTo(plan.at("/byPatches/stockSpent").asInt() + extra);
        assertThat(plan.at("/byPatches/mostInAGroup").asInt()).isBetween(1, 4);
        assertThat(page(SHEETS))
                .containsPattern(
                        "Cut patch by patch[^:]*: [0-9]+ sheets? (more|fewer) than [0-9]+ sheets in any order");
    }

    @Test
    void theLargestDomeFromSoMuchStockIsLaidInAnyOrder() throws IOException {
        String text = ROLL.replace("{ radius: 2 m }", "{ widest-from: { cover: cloth, length: 60 m } }");
        assertThat(Runs.run("show", brief(text)).err())
                .contains("covers[0].cut-by: size.widest-from looks for plans that use the least of this stock.")
                .contains("cut-by: patches");
    }

    @Test
    void tooLittleStockForTheOrderIsToldAtTheCover() throws IOException {
        // 105 panels come out of 30 sheets in any order by first plans, but not patch by patch
        String least = Runs.run("show", brief(SHEETS.replace("cut-by: patches", "cut-by: stock")))
                .out()
                .replaceAll("(?s).*Uses ([0-9]+) sheets.*", "$1");
        String text = SHEETS.replace("1220] }", "1220], have: " + least + " }");
        assertThat(Runs.run("show", brief(text)).err()).contains("covers[0].cut-by: the sheets and rolls at hand");
    }

    @Test
    void whoAsksForRowsGetsRows() throws IOException {
        JsonNode json = json(ROLL + "assembly: { patches: rows, raise: crown }\n");
        assertThat(json.at("/patches/way").asText()).isEqualTo("rows");
        assertThat(json.at("/patches/patches")).hasSize(5);
        assertThat(json.get("cautions").findValuesAsText("topic")).contains("Lifting");
        Path steps = folder.resolve("out/svg/drawings");
        assertThat(Files.readString(steps.resolve("step-01.svg")))
                .contains("Step 1 of 5: row 1")
                .contains("on the ground, under the mast");
        assertThat(Files.readString(steps.resolve("step-05.svg")))
                .contains("row 5")
                .contains("Lift what is there by at least")
                .contains("Let it down on the marks of its base hubs");
    }

    @Test
    void starsThatDoNotCoverTheDomeAreRefused() throws IOException {
        String text = ROLL.replace("breakdown: 3, keep: 5/9", "breakdown: 4, keep: 1/2");
        assertThat(Runs.run("show", brief(text + "assembly: { patches: stars }\n"))
                        .err())
                .contains("assembly.patches: no choice of hubs")
                .contains("Write sectors");
        assertThat(Runs.run("show", brief("""
                dome: { breakdown: 4 }
                size: { radius: 2 m }
                assembly: { patches: stars }
                """)).err()).contains("assembly.patches: no choice of hubs");
        assertThat(Runs.run("show", brief(ROLL + "assembly: { patches: petals, rise: crown }\n"))
                        .err())
                .contains("The words are fewest, stars, rows and sectors")
                .contains("rise");
    }
}
