package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Setting out and accuracy in the files and on the page. */
class BaseFilesTest {

    @TempDir
    private Path folder;

    private JsonNode make(String dome) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { " + dome + " }\nsize: { radius: 3 m }\nfiles: [tables]\n");
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", brief.toString(), "--out", out.toString()).code())
                .isZero();
        return new ObjectMapper().readTree(out.resolve("dome.json").toFile());
    }

    /** Half a 2V: ten hubs 3 m from the axis, 36 degrees and 6 m sin 18 degrees apart; 1 / (2 sin 18 degrees) = 1.618. */
    @Test
    void theBaseOfAHalfIsSetOut() throws IOException {
        JsonNode json = make("breakdown: 2, keep: 1/2");
        assertThat(json.get("base")).hasSize(10);
        JsonNode first = json.at("/base/0");
        JsonNode second = json.at("/base/1");
        assertThat(first.get("fromAxis").asDouble()).isCloseTo(3000, within(1e-6));
        assertThat(second.get("bearing").asDouble() - first.get("bearing").asDouble())
                .isCloseTo(36, within(1e-6));
        assertThat(first.get("aboveLowest").asDouble()).isCloseTo(0, within(1e-6));
        assertThat(first.get("levelChord").asDouble()).isCloseTo(1854.102, within(1e-3));
        assertThat(first.get("straightChord").asDouble()).isCloseTo(1854.102, within(1e-3));
        assertThat(json.get("baseDiagonals")).hasSize(3);
        assertThat(json.at("/baseDiagonals/0/from")).isEqualTo(first.get("mark"));
        assertThat(json.at("/baseDiagonals/0/level").asDouble()).isCloseTo(6000, within(1e-6));
        assertThat(json.at("/baseDiagonals/0/straight").asDouble()).isCloseTo(6000, within(1e-6));
        assertThat(json.at("/accuracy/tolerance").asDouble()).isEqualTo(1);
        assertThat(json.at("/accuracy/dimples/0/mark").asText()).isEqualTo("S1");
        assertThat(json.at("/accuracy/dimples/0/height").asDouble()).isCloseTo(3.66, within(0.01));
        assertThat(json.at("/accuracy/baseRadius").asDouble()).isCloseTo(1.618, within(0.001));
        List<String> table = Files.readAllLines(folder.resolve("out/tables/base.csv"));
        assertThat(table).hasSize(1 + 10 + 3);
        assertThat(table.get(1)).matches("hub,H[^,]+,H[^,]+,3000.000,3000 mm,[0-9.]+,0.000,1854.102,1854 mm,1854.102");
        assertThat(table.get(11)).matches("diagonal,H[^,]+,H[^,]+,,,,,6000.000,6000 mm,6000.000");
    }

    @Test
    void aWholeSphereHasNoBaseToSetOut() throws IOException {
        JsonNode json = make("breakdown: 2");
        assertThat(json.get("base")).isEmpty();
        assertThat(json.at("/accuracy/baseRadius").isNull()).isTrue();
        assertThat(folder.resolve("out/tables/base.csv")).doesNotExist();
        String page = Runs.run("show", folder.resolve("b.yaml").toString()).out();
        assertThat(page).contains("Struts wrong by 1.0 mm").doesNotContain("base ring's radius");
    }

    @Test
    void thePageSaysWhatErrorsDo() {
        assertThat(Runs.run("show", "examples/orchard-house.yaml").out())
                .contains("Struts wrong by 1.0 mm move a hub in or out by up to about 5.7 mm (S1);")
                .contains("  base struts all wrong by 1.0 mm make the base ring's radius wrong by 2.4 mm");
        assertThat(Runs.run("show", "examples/bandstand.yaml").out())
                .contains("Struts wrong by 0.06\" move a hub in or out by up to about 0.23\" (S1);");
    }
}
