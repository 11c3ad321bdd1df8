package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pieces that lie edge to edge on their stock. */
class SharedEdgesTest {

    private static final String TIGHT = """
            dome: { breakdown: 2, keep: 1/2 }
            size: { radius: 1 m }
            covers:
              - name: skin
                stock: { roll: 1500 mm }
            """;

    @TempDir
    private Path folder;

    @Test
    void cutsThatLieOnEachOtherAreRefusedWithWhatHelps() throws IOException {
        Runs.Result result = make(TIGHT);
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err())
                .contains("covers[0].spacing")
                .contains("cuts lie on each other: on sheets/skin-01 ")
                .contains("would be cut twice")
                .contains("output: { shared-edges: once }");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** Two cuts, each moved outwards by half of the kerf, meet in the middle of what is between the pieces. */
    @Test
    void piecesAsFarApartAsTheKerfShareTheirCut() throws IOException {
        String brief = TIGHT.replace("1500 mm }", "1500 mm, margin: 1 mm }\n    spacing: 0.2 mm");
        Runs.Result each = make(brief + "output: { kerf: 0.2 mm }\n");
        assertThat(each.code()).isEqualTo(2);
        assertThat(each.err()).contains("covers[0].spacing").contains("sheets/skin-01-kerf0.2 ");
        assertThat(make(brief + "output: { kerf: 0.2 mm, shared-edges: once }\n")
                        .code())
                .isZero();
        assertThat(Files.readString(folder.resolve("out/dxf/sheets/skin-01-kerf0.2.dxf")))
                .contains(" kerf, shared edges cut once, millimetres\r\n");
    }

    @Test
    void tablesAloneAreNotCut() throws IOException {
        assertThat(make(TIGHT + "files: [tables, stl]\n").code()).isZero();
    }

    @Test
    void sharedEdgesMayBeCutOnce() throws IOException {
        assertThat(make(TIGHT + "output: { shared-edges: once, dxf: [lines, lwpolyline] }\n")
                        .code())
                .isZero();
        Path out = folder.resolve("out");
        assertThat(Files.readString(out.resolve("dxf/lines/sheets/skin-01.dxf")))
                .contains(", shared edges cut once, millimetres\r\n");
        assertThat(Files.readString(out.resolve("dxf/lwpolyline/sheets/skin-01.dxf")))
                .contains("LWPOLYLINE")
                .contains(", shared edges cut once");
        assertThat(Files.readString(out.resolve("svg/sheets/skin-01.svg"))).contains(", shared edges cut once");
    }

    private Runs.Result make(String brief) throws IOException {
        Path file = folder.resolve("brief.yaml");
        Files.writeString(file, brief);
        return Runs.run("make", file.toString(), "--out", folder.resolve("out").toString());
    }
}
