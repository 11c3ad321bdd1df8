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

/** A wall under the base ring, from the brief to the files. */
class RiserTest {

    @TempDir
    private Path folder;

    private Path brief(String dome) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { " + dome + ", riser: 600 mm }\nsize: { radius: 3 m }\n");
        return brief;
    }

    /** Ten sides of 2 R sin 18 degrees, mitred by 180 / 10 degrees. */
    @Test
    void theFilesHoldTheWall() throws IOException {
        Path out = folder.resolve("out");
        String brief = brief("breakdown: 2, keep: 1/2").toString();
        assertThat(Runs.run("make", brief, "--out", out.toString()).code()).isZero();
        JsonNode riser =
                new ObjectMapper().readTree(out.resolve("dome.json").toFile()).get("riser");
        assertThat(riser.get("height").asDouble()).isEqualTo(600);
        assertThat(riser.get("totalHeight").asDouble()).isCloseTo(3600, within(1e-6));
        assertThat(riser.at("/walls/0/mark").asText()).isEqualTo("W1");
        assertThat(riser.at("/walls/0/width").asDouble()).isCloseTo(6000 * Math.sin(Math.PI / 10), within(1e-6));
        assertThat(riser.at("/uprights/0/count").asInt()).isEqualTo(10);
        assertThat(riser.at("/plates/0/mitres/0").asDouble()).isCloseTo(18, within(1e-6));
        assertThat(riser.at("/plates/0/insideAngles/1").asDouble()).isCloseTo(144, within(1e-6));
        assertThat(riser.at("/topPlates/0/slope").asDouble()).isCloseTo(0, within(1e-6));
        assertThat(Files.readAllLines(out.resolve("tables/riser.csv")))
                .containsExactly(
                        "mark,what,count,length_mm,length,left_mm,right_mm,top_mm,inside_angles_deg,mitres_deg,slope_deg",
                        "W1,bay from outside,10,1854.102,1854 mm,600.000,600.000,1854.102,,,",
                        "U1,upright,10,600.000,600 mm,,,,,,",
                        "B1,bottom plate,10,1854.102,1854 mm,,,,144.0000 144.0000,18.0000 18.0000,",
                        "T1,top plate (base strut),10,1854.102,1854 mm,,,,,,0.0000");
        assertThat(Files.readAllLines(out.resolve("tables/bill.csv")))
                .contains(
                        "riser upright,U1,10,1,pieces,600.000,,,6.600,,,,",
                        "riser bottom plate,B1,10,1,pieces,1854.102,,,20.395,,,,",
                        "riser bay,W1,10,0,pieces,1854.102,,1.112461,18.541,11.124612,,,");
    }

    @Test
    void thePageTellsOfBothHeights() throws IOException {
        List<String> page = Runs.run("show", brief("breakdown: 3, keep: 5/9").toString())
                .out()
                .lines()
                .toList();
        assertThat(page)
                .contains("Riser 600 mm under the base, 4163 mm high in all: tables/riser.csv of `make`")
                .anySatisfy(line -> assertThat(line)
                        .startsWith("  uprights: ")
                        .contains(" U1 600 mm, ")
                        .contains("648 mm"))
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void aLevelTopIsCalledSo() throws IOException {
        String half =
                Runs.run("show", brief("breakdown: 2, keep: 1/2").toString()).out();
        assertThat(half).contains("  top plates, the base struts: 10 T1 1854 mm level");
        String spread =
                Runs.run("show", brief("breakdown: 3, keep: 5/9").toString()).out();
        assertThat(spread).contains(" sloping 2.2°");
    }

    @Test
    void withoutARiserThereIsNone() throws IOException {
        Path out = folder.resolve("out");
        Runs.run("make", "examples/orchard-house.yaml", "--out", out.toString());
        assertThat(out.resolve("tables/riser.csv")).doesNotExist();
        assertThat(new ObjectMapper()
                        .readTree(out.resolve("dome.json").toFile())
                        .get("riser")
                        .isNull())
                .isTrue();
    }

    @Test
    void aWholeSphereIsRefusedAtItsKey() throws IOException {
        Runs.Result result = Runs.run("show", brief("breakdown: 2").toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("b.yaml:1:23  dome.riser: a whole sphere has no base ring");
    }
}
