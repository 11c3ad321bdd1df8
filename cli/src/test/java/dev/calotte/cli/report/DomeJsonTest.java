package dev.calotte.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.calotte.cli.Calotte;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads {@code dome.json} of the planetarium with another reader. */
class DomeJsonTest {

    @TempDir
    private static Path folder;

    private static JsonNode json;

    @BeforeAll
    static void makeThePlanetarium() throws IOException {
        Calotte.run(
                "make",
                "examples/planetarium.yaml",
                "--out",
                folder.resolve("out").toString());
        json = new ObjectMapper().readTree(folder.resolve("out/dome.json").toFile());
    }

    @Test
    void theHeadSaysWhatItIs() {
        assertThat(json.get("format").asText()).isEqualTo("calotte-dome/1");
        assertThat(json.get("title").asText()).isEqualTo("School planetarium");
        assertThat(json.at("/dome/keep").asText()).isEqualTo("1/2");
        assertThat(json.at("/dome/triangulation").asInt()).isEqualTo(16);
        assertThat(json.at("/dome/height")).isEqualTo(json.at("/dome/radius"));
    }

    @Test
    void kindsCountTheirPieces() {
        assertThat(sum("strutKinds")).isEqualTo(json.get("struts").size()).isEqualTo(250);
        assertThat(sum("panelKinds")).isEqualTo(json.get("panels").size()).isEqualTo(160);
        assertThat(sum("hubKinds")).isEqualTo(json.get("hubs").size()).isEqualTo(91);
    }

    @Test
    void everyStrutIsAsLongAsItsKindSays() {
        for (JsonNode strut : json.get("struts")) {
            double length = distance(strut.get("from").asInt(), strut.get("to").asInt());
            assertThat(length).isCloseTo(kind("strutKinds", strut).get("length").asDouble(), within(3e-6));
        }
    }

    /** Half a 4V has no exact stars; what is joined in patches and between them is every strut off the base. */
    @Test
    void everyPanelBelongsToOnePatchAndEverySeamIsJoinedOnce() {
        JsonNode patches = json.get("patches");
        assertThat(patches.get("way").asText()).isEqualTo("sectors");
        assertThat(patches.get("exactStars").asBoolean()).isFalse();
        Set<Integer> panels = new TreeSet<>();
        for (JsonNode patch : patches.get("patches")) {
            for (JsonNode panel : patch.get("panels")) {
                assertThat(panels.add(panel.asInt())).isTrue();
                assertThat(json.get("panels").get(panel.asInt()).get("patch")).isEqualTo(patch.get("mark"));
            }
        }
        assertThat(panels).hasSize(160);
        double joined = 0;
        for (JsonNode kind : patches.get("kinds")) {
            for (JsonNode seam : kind.get("seams")) {
                joined += kind.get("count").asInt() * seam.get("length").asDouble();
            }
        }
        for (JsonNode join : patches.get("joins")) {
            joined += join.get("length").asDouble();
        }
        double inner = 0;
        for (JsonNode strut : json.get("struts")) {
            inner += strut.get("dihedral").isNull()
                    ? 0
                    : kind("strutKinds", strut).get("length").asDouble();
        }
        assertThat(joined).isCloseTo(inner, within(1e-4));
    }

    @Test
    void theHandOfAPanelIsTheOrderOfItsSidesFromOutside() {
        for (JsonNode panel : json.get("panels")) {
            JsonNode v = panel.get("vertices");
            double[] sides = new double[3];
            for (int k = 0; k < 3; k++) {
                sides[k] = distance(v.get(k).asInt(), v.get((k + 1) % 3).asInt());
            }
            assertThat(hand(sides))
                    .isEqualTo(kind("panelKinds", panel).get("hand").asText());
        }
    }

    @Test
    void marksAreUniqueAndTwinsNameEachOther() {
        for (String list : new String[] {"struts", "panels", "hubs", "strutKinds", "panelKinds", "hubKinds"}) {
            Set<String> marks = new HashSet<>();
            json.get(list)
                    .forEach(piece ->
                            assertThat(marks.add(piece.get("mark").asText())).isTrue());
        }
        for (JsonNode kind : json.get("panelKinds")) {
            if (!kind.get("mirror").isNull()) {
                JsonNode twin = find("panelKinds", kind.get("mirror").asText());
                assertThat(twin.get("mirror")).isEqualTo(kind.get("mark"));
                assertThat(twin.get("hand")).isNotEqualTo(kind.get("hand"));
            }
        }
    }

    private static String hand(double... sides) {
        double slack = 1e-3;
        int rising = 0;
        for (int k = 0; k < 3; k++) {
            double step = sides[(k + 1) % 3] - sides[k];
            if (Math.abs(step) < slack) {
                return "none";
            }
            rising += step > 0 ? 1 : 0;
        }
        return rising == 2 ? "left" : "right";
    }

    private static double distance(int from, int to) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double step = json.get("vertices").get(from).get(k).asDouble()
                    - json.get("vertices").get(to).get(k).asDouble();
            sum += step * step;
        }
        return Math.sqrt(sum);
    }

    private static int sum(String kinds) {
        int sum = 0;
        for (JsonNode kind : json.get(kinds)) {
            sum += kind.get("count").asInt();
        }
        return sum;
    }

    private static JsonNode kind(String kinds, JsonNode piece) {
        return find(kinds, piece.get("kind").asText());
    }

    private static JsonNode find(String list, String mark) {
        for (JsonNode each : json.get(list)) {
            if (each.get("mark").asText().equals(mark)) {
                return each;
            }
        }
        throw new AssertionError("no " + mark + " in " + list);
    }
}
