package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Openings, from the marks in the brief to the files. */
class OpeningsTest {

    @TempDir
    private Path folder;

    private Path brief(String openings) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(
                brief, "title: Shed\ndome: { breakdown: 2, keep: 1/2 }\nsize: { radius: 3 m }\nopenings:\n" + openings);
        return brief;
    }

    @Test
    void theFileSaysWhatIsGoneAndWhatIsLeftToBeFramed() throws IOException {
        Path out = folder.resolve("out");
        Path brief =
                brief("  - { name: vent, remove: [P1-1.01, P1-1.02, P1-1.03, P1-1.04, P1-1.05], struts: remove }\n");
        assertThat(Runs.run("make", brief.toString(), "--out", out.toString()).code())
                .isZero();
        JsonNode json = new ObjectMapper().readTree(out.resolve("dome.json").toFile());
        JsonNode vent = json.at("/openings/0");
        assertThat(vent.get("name").asText()).isEqualTo("vent");
        assertThat(vent.get("removedPanels")).hasSize(5);
        assertThat(vent.get("removedStruts")).hasSize(5);
        assertThat(vent.at("/removedHubs/0").asText()).endsWith("-0.01");
        assertThat(vent.get("freeEdges")).hasSize(5);
        assertThat(vent.get("bareStruts")).isEmpty();
        assertThat(vent.get("rimHubs")).hasSize(5);
        assertThat(vent.get("ends")).hasSize(25);
        assertThat(vent.at("/ends/0/hub").asText())
                .isEqualTo(vent.at("/rimHubs/0").asText());
        assertThat(vent.at("/ends/0/length").asDouble()).isBetween(1600.0, 1900.0);
        assertThat(vent.get("redundantBefore").asInt()).isEqualTo(7);
        assertThat(vent.get("redundantAfter").asInt()).isEqualTo(5);
        assertThat(json.get("panels")).hasSize(35);
        assertThat(json.get("struts")).hasSize(60);
        assertThat(json.get("hubs")).hasSize(25).hasSameSizeAs(json.get("vertices"));
        assertThat(topics(json)).contains("Opening", "Door");
        List<String> table = Files.readAllLines(out.resolve("tables/openings.csv"));
        assertThat(table).hasSize(1 + 5 + 5 + 1 + 5 + 25);
        assertThat(table.get(0)).isEqualTo("opening,what,mark,at_hub,length_mm,length");
        assertThat(table.get(1)).isEqualTo("vent,panel left out,P1-1.01,,,");
        assertThat(table.get(40)).startsWith("vent,strut end,S").endsWith(" mm");
    }

    private static List<String> topics(JsonNode json) {
        return StreamSupport.stream(json.get("cautions").spliterator(), false)
                .map(caution -> caution.get("topic").asText())
                .toList();
    }

    @Test
    void thePageSaysIt() throws IOException {
        String page = Runs.run(
                        "show",
                        brief("  - { name: door, remove: [P1-1.01, P1-1.02] }\n")
                                .toString())
                .out();
        assertThat(page)
                .contains("Opening door: 2 panels, 0 struts and 0 hubs left out")
                .contains("  4 free edges, 1 strut without a panel, 23 strut ends on 4 hubs round it:")
                .contains("7 before")
                .contains("Door: Check exit width");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void aDomeWithoutOpeningsHasNoTableOfThem() throws IOException {
        Path out = folder.resolve("out");
        Runs.run("make", "examples/bandstand.yaml", "--out", out.toString());
        assertThat(out.resolve("tables/openings.csv")).doesNotExist();
        assertThat(new ObjectMapper()
                        .readTree(out.resolve("dome.json").toFile())
                        .get("openings"))
                .isEmpty();
    }

    @Test
    void everyMarkThatCannotBeIsShownWithItsLine() throws IOException {
        Path brief = brief("""
                  - { name: door, remove: [P1-3.99, P2-1.01] }
                  - name: window
                    remove:
                      - P1-1.02
                  - { name: vent, remove: [P1-1.02, S1-1.01] }
                """);
        Runs.Result result = Runs.run("show", brief.toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err())
                .contains("b.yaml:5:28  openings[0].remove[0]: no panel has the mark P1-3.99.")
                .contains("openings[0].remove[1]: no panel has the mark P2-1.01.")
                .contains("The panel in that row and place is P1-1.01.")
                .contains("b.yaml:9:28  openings[2].remove[0]: P1-1.02 is removed by openings[1].remove[0] already.")
                .contains("openings[2].remove[1]: S1-1.01 is no panel");
    }

    @Test
    void anOpeningThatSplitsTheFrameIsRefused() throws IOException {
        StringBuilder band = new StringBuilder();
        for (int i = 1; i <= 15; i++) {
            band.append(i == 1 ? "" : ", ")
                    .append(i % 3 == 2 ? "P2-2." : "P1-2.")
                    .append(i < 10 ? "0" : "")
                    .append(i);
        }
        Runs.Result result = Runs.run(
                "show",
                brief("  - { name: band, remove: [" + band + "], struts: remove }\n")
                        .toString());
        assertThat(result.err()).contains("openings: the openings split the frame");
    }
}
