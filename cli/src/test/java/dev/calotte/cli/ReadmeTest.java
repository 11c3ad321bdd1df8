package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Wireframe;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.solid.FrameWires;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says is run and compared. */
class ReadmeTest {

    private static final Path README = Path.of("../README.md");

    @TempDir
    private Path folder;

    @Test
    void theSnippetWritesAFrame() throws IOException {
        // README begins
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), new Size(Size.Measure.FLOOR_DIAMETER, 6400))
                .withKeep(new Keep.Rows(5, 9));
        Dome dome = Dome.of(spec);
        Parts parts = Parts.of(dome, Joinery.gap(45));
        parts.strutKinds().forEach(kind -> show(kind.mark(), kind.count(), kind.cutLengthMm()));
        Wireframe frame = FrameWires.of("Orchard house", parts);
        for (Exporter exporter : Exporters.installed().accepting(frame)) {
            try (OutputStream out = Files.newOutputStream(folder.resolve("frame." + exporter.format()))) {
                exporter.write(frame, out);
            }
        }
        // README ends
        assertThat(folder.resolve("frame.dxf")).isNotEmptyFile();
    }

    private static void show(String mark, int count, double cutLengthMm) {
        assertThat(mark).startsWith("S");
        assertThat(count).isPositive();
        assertThat(cutLengthMm).isBetween(1000.0, 1300.0);
    }

    @Test
    void theSnippetStandsInTheReadmeAsItIsRun() throws IOException {
        Path source = Path.of("src/test/java/dev/calotte/cli/ReadmeTest.java");
        List<String> lines = Files.readAllLines(source);
        int from = lines.indexOf("        // README begins") + 1;
        int to = lines.indexOf("        // README ends");
        String snippet = String.join("\n", lines.subList(from, to)).stripIndent();
        assertThat(Files.readString(README)).contains("```java\n" + snippet + "\n```");
    }

    @Test
    void thePictureIsTheProgramsOwn() throws IOException {
        Runs.run(
                "make",
                "examples/orchard-house.yaml",
                "--out",
                folder.resolve("out").toString());
        assertThat(Files.readString(Path.of("examples/pictures/orchard-house.svg")))
                .isEqualTo(Files.readString(folder.resolve("out/svg/drawings/view.svg")));
    }

    @Test
    void thePageThatShowPrintsStandsInTheReadme() throws IOException {
        String page = Runs.run("show", "examples/orchard-house.yaml").out();
        assertThat(Files.readString(README)).contains("```text\n" + page + "```");
    }
}
