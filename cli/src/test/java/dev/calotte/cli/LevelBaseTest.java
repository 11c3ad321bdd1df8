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

/** A level base, from the brief to the page and the file. */
class LevelBaseTest {

    @TempDir
    private Path folder;

    private Path brief(String keep, String size) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { breakdown: 3, keep: " + keep + ", base: level }\nsize: { " + size + " }\n");
        return brief;
    }

    @Test
    void thePageSaysWhatTheLevelBaseChanged() throws IOException {
        String page = Runs.run("show", brief("5/9", "floor-diameter: 6.4 m").toString())
                .out();
        assertThat(page)
                .contains("keep 5/9, base level")
                .contains("floor 6400 mm across")
                .contains("15 base hubs all at one height")
                .contains("Base level: 15 hubs slide by up to ")
                .contains("8 of struts and 8 of panels with the level base; 3 of");
    }

    @Test
    void theFileHoldsTheLeveling() throws IOException {
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", brief("5/9", "floor-diameter: 6.4 m").toString(), "--out", out.toString())
                        .code())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.resolve("dome.json").toFile());
        assertThat(json.at("/dome/base").asText()).isEqualTo("level");
        assertThat(json.at("/dome/leveling/movedHubs").asInt()).isEqualTo(15);
        assertThat(json.at("/dome/baseSpread").asDouble()).isZero();
        double height = json.at("/dome/leveling/height").asDouble();
        json.at("/dome/baseRing")
                .forEach(hub -> assertThat(
                                json.get("vertices").get(hub.asInt()).get(2).asDouble())
                        .isCloseTo(height, within(1e-6)));
    }

    @Test
    void aWholeSphereIsRefusedAtItsKey() throws IOException {
        Runs.Result result = Runs.run("show", brief("whole", "radius: 3 m").toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("dome.base: a whole sphere has no base to level.");
    }
}
