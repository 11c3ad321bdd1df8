package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of the spacing {@code fitted}. */
class FittedReportTest {

    @TempDir
    private Path folder;

    private String brief(String dome) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { " + dome + " }\nsize: { radius: 3 m }\nfiles: [tables]\n");
        return brief.toString();
    }

    private JsonNode dome(String dome) throws IOException {
        Runs.run("make", brief(dome), "--out", folder.resolve("out").toString());
        return new ObjectMapper()
                .readTree(folder.resolve("out/dome.json").toFile())
                .get("dome");
    }

    @Test
    void thePageNamesTheStrutRatio() throws IOException {
        assertThat(Runs.run("show", brief("breakdown: 3, spacing: fitted")).out())
                .contains("icosahedron [3, 0], spacing fitted, strut ratio 1.25, vertex up");
        assertThat(Runs.run("show", brief("breakdown: 3")).out()).contains("spacing chord, vertex up");
    }

    @Test
    void theFileNamesGoalAndRatio() throws IOException {
        JsonNode dome = dome("breakdown: [2, 1], spacing: fitted, strut-ratio: 1.3, fit: few-kinds");
        assertThat(dome.get("spacing").asText()).isEqualTo("fitted");
        assertThat(dome.get("fit").asText()).isEqualTo("few-kinds");
        assertThat(dome.get("strutRatio").asDouble()).isEqualTo(1.3);
    }

    @Test
    void otherSpacingsHaveNeither() throws IOException {
        assertThat(dome("breakdown: 3, spacing: arc").fieldNames())
                .toIterable()
                .contains("spacing")
                .doesNotContain("fit", "strutRatio");
    }

    @Test
    void aRatioOutOfReachIsToldWithItsLine() throws IOException {
        Runs.Result result = Runs.run("show", brief("breakdown: 3, solid: octahedron, spacing: fitted"));
        assertThat(result.code()).isNotZero();
        assertThat(result.err()).contains("dome.strut-ratio").contains("the least ratio is 1.3660");
    }
}
