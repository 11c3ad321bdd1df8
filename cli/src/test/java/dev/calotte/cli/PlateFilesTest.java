package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hub plates of someone's own shape, from files beside a brief to the files that are made. */
class PlateFilesTest {

    @TempDir
    private Path folder;

    private static String dxf(String... entities) {
        return "0\nSECTION\n2\nENTITIES\n" + String.join("", entities) + "0\nENDSEC\n0\nEOF\n";
    }

    private static String circle(int x, int y, int radius) {
        return "0\nCIRCLE\n8\n0\n10\n" + x + "\n20\n" + y + "\n40\n" + radius + "\n";
    }

    private static String square(int half) {
        StringBuilder text = new StringBuilder("0\nLWPOLYLINE\n8\n0\n90\n4\n70\n1\n");
        for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
            text.append("10\n")
                    .append(corner[0] * half)
                    .append("\n20\n")
                    .append(corner[1] * half)
                    .append('\n');
        }
        return text.toString();
    }

    @BeforeEach
    void files() throws IOException {
        Files.writeString(folder.resolve("square.dxf"), dxf(square(75), circle(0, 0, 12)));
        Files.writeString(folder.resolve("round.dxf"), dxf(circle(0, 0, 80)));
        Files.writeString(folder.resolve("away.dxf"), dxf(circle(300, 0, 80)));
        Files.writeString(folder.resolve("small.dxf"), dxf(circle(0, 0, 60)));
        Files.writeString(folder.resolve("torn.dxf"), dxf(square(75), circle(70, 0, 12)));
    }

    private Path brief(String plate) throws IOException {
        return Files.writeString(folder.resolve("b.yaml"), """
                dome: { breakdown: 2, keep: 1/2 }
                size: { radius: 3 m }
                frame: { hub-gap: 35, hub-plate: { %s } }
                files: [dxf, svg]
                """.formatted(plate));
    }

    private List<String> made(String plate) throws IOException {
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", brief(plate).toString(), "--out", out.toString())
                        .err())
                .isEmpty();
        try (Stream<Path> files = Files.list(out.resolve("dxf/hubs"))) {
            return files.sorted().map(PlateFilesTest::text).toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The square's corners, moved as the drawing has them, and its own hole beside one for each strut. */
    @Test
    void platesHaveTheOutlineOfTheFile() throws IOException {
        List<String> plates = made("outline: square.dxf, hole: 10, hole-circle: 100");
        assertThat(plates).isNotEmpty();
        for (String plate : plates) {
            assertThat(plate)
                    .contains("CIRCLE\n  8\nCUT_INNER".replace("  8", "8"))
                    .contains("40\n12.0");
            for (int x : new int[] {10, 160}) {
                for (int y : new int[] {20, 170}) {
                    assertThat(plate).contains(String.format(Locale.ROOT, "10\n%d.0\n20\n%d.0\n", x, y));
                }
            }
        }
        assertThat(folder.resolve("out/svg/hubs")).isNotEmptyDirectory();
    }

    @Test
    void hubsMayHaveFilesOfTheirOwn() throws IOException {
        assertThat(made("outline: { base: square.dxf, 5: round.dxf, other: round.dxf }, hole: 10, hole-circle: 100"))
                .anyMatch(plate -> plate.contains("40\n12.0"))
                .anyMatch(plate -> !plate.contains("40\n12.0"));
    }

    private void assertRefused(String plate, String... words) throws IOException {
        Runs.Result shown = Runs.run("show", brief(plate).toString());
        assertThat(shown.code()).isEqualTo(2);
        assertThat(shown.err()).contains(words);
    }

    @Test
    void whatDoesNotFitIsRefusedWithItsMend() throws IOException {
        String holes = ", hole: 10, hole-circle: 100";
        assertRefused(
                "outline: square.dxf, diameter: 150" + holes,
                "frame.hub-plate: diameter and outline are given together.",
                "Keep one of them.");
        assertRefused("outline: gone.dxf" + holes, "frame.hub-plate.outline", "gone.dxf is not there.");
        assertRefused("outline: plate.pdf" + holes, "no outline is read from plate.pdf.");
        assertRefused("outline: away.dxf" + holes, "the origin (0, 0), where the hub's axis stands");
        assertRefused("outline: torn.dxf" + holes, "is not inside the largest outline");
        assertRefused("outline: square.dxf", "frame.hub-plate.hole: the key is missing.");
        assertRefused("outline: {}" + holes, "frame.hub-plate.outline.other", "other: six.dxf");
        assertRefused("outline: { 7: round.dxf }" + holes, "frame.hub-plate.outline.7");
        assertRefused(
                "outline: { 5: round.dxf }" + holes, "no outline is given for hubs of the base ring.", "Add base:");
        assertRefused(
                "outline: small.dxf" + holes,
                "the hole of hub H1",
                "is 10.0 mm from its middle to a line of small.dxf, and needs 15.0 mm.",
                "of hub H2",
                "Draw the plate wider there");
    }
}
