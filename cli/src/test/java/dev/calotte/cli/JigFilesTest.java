package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JigFilesTest {

    private static final String SMALL =
            "dome: { breakdown: 2, keep: 1/2 }\nsize: { radius: 2 m }\nframe: { hub-gap: 45 mm }\nfiles: [stl]\n";

    @TempDir
    private Path folder;

    private Runs.Result make(String text) throws IOException {
        Path brief = Files.writeString(folder.resolve("brief.yaml"), text);
        return Runs.run("make", brief.toString(), "--out", folder.resolve("out").toString());
    }

    private Set<String> made(String text) throws IOException {
        assertThat(make(text).err()).isEmpty();
        return Runs.contents(folder.resolve("out")).keySet();
    }

    @Test
    void withoutTheSectionThereIsNoJig() throws IOException {
        assertThat(made(SMALL)).containsExactly("SHA256SUMS", "dome.json", "stl/model.stl");
    }

    @Test
    void strutsOfEveryShapeAreTaken() throws IOException {
        assertThat(made(SMALL + "jigs: { strut: square 1 in }\n")).contains("stl/jigs/H2.stl", "stl/plate.3mf");
        assertThat(made(SMALL + "jigs: { strut: rectangle 20 x 45 mm }\n")).contains("stl/jigs/H2.stl");
        assertThat(made(SMALL + "jigs: { strut: round 3/4 in, bed: [150, 150, 150] }\n"))
                .contains("stl/jigs/H2.stl", "stl/jigs/H2-2.stl");
    }

    @Test
    void dialectsGetFoldersAndAreKnownAgain() throws IOException {
        String both = SMALL + "jigs: { strut: round 20 mm }\noutput: { stl: [binary, ascii] }\n";
        assertThat(made(both)).contains("stl/ascii/jigs/H2.stl", "stl/binary/jigs/H2.stl", "stl/plate.3mf");
        assertThat(make(both).code()).isZero();
    }

    @Test
    void aModelMayBeAShellOrAFrame() throws IOException {
        assertThat(made(SMALL + "model: { solid: shell, wall: 1.2 mm }\n")).contains("stl/model.stl");
        assertThat(made(SMALL + "model: { solid: frame, rod: 3 mm }\n")).contains("stl/model.stl");
    }

    @Test
    void whatCannotBePrintedIsSaidByShowAllAtOnce() throws IOException {
        String text =
                SMALL.replace("45 mm", "10 mm") + "jigs: { strut: round 30 mm }\nmodel: { solid: frame, rod: 1 mm }\n";
        Runs.Result result = Runs.run(
                "show", Files.writeString(folder.resolve("brief.yaml"), text).toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .contains("jigs.strut: struts 30 mm wide would run into each other")
                .contains("model.rod: 1 mm is finer than what can be printed");
    }

    @Test
    void strutsThatRunIntoEachOtherPointIntoTheBrief() throws IOException {
        Runs.Result result = make(SMALL.replace("45 mm", "10 mm") + "jigs: { strut: round 30 mm }\n");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("brief.yaml:5:9  jigs.strut: struts 30 mm wide would run into each other");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void printedHubsAreSaidNotToBeStructural() throws IOException {
        Path brief = Files.writeString(
                folder.resolve("brief.yaml"),
                SMALL + "jigs: { strut: round 20 mm, sockets: { strut: round 6 mm, scale: 1:10 } }\n");
        assertThat(Runs.run("show", brief.toString()).out()).contains("Printed hubs are not structural");
    }
}
