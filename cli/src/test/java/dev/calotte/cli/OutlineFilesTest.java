package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Offcuts from files beside a brief, to the files that are made. */
class OutlineFilesTest {

    /** A sheet of 2440 by 1220 from which 1200 by 700 is gone at the upper right. */
    private static final double[] L_SHAPE = {0, 0, 2440, 0, 2440, 520, 1240, 520, 1240, 1220, 0, 1220};

    private static final String SHEET = "{ sheet: [2440 mm, 1220 mm], margin: 10 mm }";

    @TempDir
    private Path folder;

    private static String dxf(String... polylines) {
        return "0\nSECTION\n2\nENTITIES\n" + String.join("", polylines) + "0\nENDSEC\n0\nEOF\n";
    }

    private static String polyline(String layer, double... xy) {
        StringBuilder text = new StringBuilder("0\nLWPOLYLINE\n8\n" + layer + "\n90\n" + xy.length / 2 + "\n70\n1\n");
        for (int c = 0; c < xy.length; c += 2) {
            text.append("10\n").append(xy[c]).append("\n20\n").append(xy[c + 1]).append('\n');
        }
        return text.toString();
    }

    private Path brief(String stock) throws IOException {
        Path brief = folder.resolve("b.yaml");
        return Files.writeString(brief, """
                dome: { breakdown: 2, keep: 1/2 }
                size: { radius: 1.2 m }
                covers:
                  - name: ply
                    faces: both
                    spacing: 6 mm
                    stock: %s
                """.formatted(stock));
    }

    private Runs.Result show(String stock) throws IOException {
        return Runs.run("show", brief(stock).toString());
    }

    @Test
    void anOffcutIsFilledBeforeSheets() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        String stock = "[" + SHEET + ", { outline: offcut.dxf, margin: 10 mm, have: 1 }]";
        Path out = folder.resolve("out");
        assertThat(Runs.run("make", brief(stock).toString(), "--out", out.toString())
                        .err())
                .isEmpty();
        JsonNode plan =
                new ObjectMapper().readTree(out.resolve("dome.json").toFile()).at("/covers/0/plan");
        Set<String> panels = new TreeSet<>();
        int offcuts = 0;
        for (JsonNode sheet : plan.get("sheets")) {
            sheet.get("parts").forEach(part -> panels.add(part.get("panel").asText()));
            if (sheet.get("stock").asInt() == 1) {
                offcuts++;
                assertThat(sheet.get("name").asText()).isEqualTo("offcut.dxf");
                assertThat(sheet.get("outline")).hasSize(6);
                assertThat(sheet.get("length").asDouble()).isEqualTo(2440);
                assertThat(sheet.get("parts")).isNotEmpty().allMatch(OutlineFilesTest::liesOnTheL);
            }
        }
        assertThat(offcuts).isOne();
        assertThat(panels).hasSize(40);
        assertThat(plan.get("measure").asText()).isEqualTo("pieces");
        assertThat(plan.get("spent").asInt()).isEqualTo(plan.get("sheets").size() - 1);
        assertThat(Files.readString(out.resolve("tables/bill.csv")))
                .contains("offcut,offcut.dxf,1,0,pieces,,,2.136800,");
    }

    private static boolean liesOnTheL(JsonNode part) {
        for (JsonNode corner : part.get("outline")) {
            double x = corner.get(0).asDouble();
            double y = corner.get(1).asDouble();
            boolean low = x < 2430.000001 && y < 510.000001;
            boolean left = x < 1230.000001 && y < 1210.000001;
            if (!(x > 9.999999 && y > 9.999999 && (low || left))) {
                return false;
            }
        }
        return true;
    }

    private static String svg(String lines) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='2440mm' height='1220mm' viewBox='0 0 2440 1220'>" + lines
                + "</svg>";
    }

    /** The same offcut as a drawing program saves it, y downwards. */
    @Test
    void anOffcutMayBeAnSvgFile() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Files.writeString(
                folder.resolve("offcut.svg"), svg("<g id='yard'><path d='M0 1220h2440v-520H1240V0H0z'/></g>"));
        Runs.Result one = show("{ outline: offcut.dxf, have: 20 }");
        Runs.Result other = show("{ outline: offcut.svg, have: 20 }");
        assertThat(other.err()).isEmpty();
        assertThat(other.out()).contains("times offcut.svg for 40 pieces");
        assertThat(other.out()).isEqualTo(one.out().replace("offcut.dxf", "offcut.svg"));
    }

    @Test
    void offcutsAreNotCutPatchByPatch() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        String stock = "[{ sheet: [2440, 1220] }, { outline: offcut.dxf }]\n    cut-by: patches";
        assertThat(Runs.run("show", brief(stock).toString()).err())
                .contains("covers[0].cut-by")
                .contains("Write cut-by: stock");
    }

    @Test
    void thePageNamesTheOffcut() throws IOException {
        Files.createDirectory(folder.resolve("yard"));
        Files.writeString(folder.resolve("yard/offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Runs.Result shown = show("[" + SHEET + ", { outline: yard/offcut.dxf, margin: 10 mm }]");
        assertThat(shown.err()).isEmpty();
        assertThat(shown.out()).contains("offcut.dxf for ").contains("over all");
    }

    @Test
    void offcutsAloneMaySuffice() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Runs.Result shown = show("{ outline: offcut.dxf, have: 20 }");
        assertThat(shown.err()).isEmpty();
        assertThat(shown.out()).contains("times offcut.dxf for 40 pieces").doesNotContain("proven");
    }

    @Test
    void tooFewOffcutsAreRefused() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Runs.Result shown = show("{ outline: offcut.dxf }");
        assertThat(shown.code()).isEqualTo(2);
        assertThat(shown.err()).contains("does not hold all 40 parts");
    }

    private void assertRefused(String stock, String why) throws IOException {
        Runs.Result shown = show(stock);
        assertThat(shown.code()).isEqualTo(2);
        assertThat(shown.err()).contains("covers[0].stock.outline", why, "b.yaml:7");
    }

    @Test
    void filesThatShowNoOutlineAreRefused() throws IOException {
        Files.createDirectory(folder.resolve("folder.dxf"));
        Files.writeString(folder.resolve("broken.dxf"), "0\nSECTION\nnonsense\n");
        Files.writeString(folder.resolve("empty.dxf"), dxf());
        Files.writeString(
                folder.resolve("two.dxf"), dxf(polyline("0", L_SHAPE), polyline("0", 3000, 0, 3900, 0, 3900, 800)));
        Files.writeString(
                folder.resolve("hole.dxf"), dxf(polyline("0", L_SHAPE), polyline("0", 300, 300, 400, 300, 400, 400)));
        Files.writeString(
                folder.resolve("bow.dxf"), dxf(polyline("0", 0, 0, 900, 0, 300, 600, 600, 700, 0, 300, 500, -50)));
        Files.writeString(folder.resolve("curved.svg"), svg("<path d=\"M0 0C9 9 9 9 500 0L500 500Z\"/>"));
        assertRefused("{ outline: gone.dxf }", "gone.dxf is not there.");
        assertRefused("{ outline: folder.dxf }", "folder.dxf is not a file.");
        assertRefused("{ outline: plan.pdf }", "no outline is read from plan.pdf.");
        assertRefused("{ outline: curved.svg }", "curved.svg: line 1: the command C of a path cannot be read");
        assertRefused("{ outline: broken.dxf }", "broken.dxf: line 3:");
        assertRefused("{ outline: empty.dxf }", "there is no outline in it.");
        assertRefused("{ outline: two.dxf }", "there is more than one outline, another at (3000, 0) mm.");
        assertRefused("{ outline: hole.dxf }", "the outline has a hole");
        assertRefused("{ outline: bow.dxf }", "crosses or touches itself");
    }

    @Test
    void noLargestDomeIsLookedForFromOffcuts() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Path brief = folder.resolve("w.yaml");
        String text = """
                dome: { breakdown: 2 }
                size: { %s }
                covers: [ { name: ply, stock: { outline: offcut.dxf, have: 9 } } ]
                """;
        Files.writeString(brief, text.formatted("widest-from: { cover: ply, count: 9 }"));
        assertThat(Runs.run("show", brief.toString()).err())
                .contains("size.widest-from.cover", "comes from an irregular outline");
        Files.writeString(brief, text.formatted("widest-for: ply"));
        assertThat(Runs.run("show", brief.toString()).err()).contains("size.widest-for", "irregular outlines only");
    }

    @Test
    void marginsThatUseUpTheOffcutAreRefused() throws IOException {
        Files.writeString(folder.resolve("offcut.dxf"), dxf(polyline("0", L_SHAPE)));
        Runs.Result shown = show("{ outline: offcut.dxf, margin: 700 mm }");
        assertThat(shown.err()).contains("the margins use up the stock");
    }
}
