package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was made is made again from its brief and compared; the sums of changed files are always taken anew. */
class CheckAgainTest {

    private static final String BRIEF = """
            title: Bell tent
            dome: { breakdown: 2, keep: 1/2 }
            size: { radius: 900 mm }
            frame: { hub-gap: 20 mm }
            covers: [{ name: skin, stock: { sheet: [2500 mm, 1250 mm], margin: 5 mm }, spacing: 6 mm }]
            model: { scale: 1:10 }
            """;

    @TempDir
    private static Path made;

    @TempDir
    private Path folder;

    @BeforeAll
    static void make() throws IOException {
        Planted.make(made, BRIEF, 77);
    }

    private static Path brief() {
        return made.resolve("brief.yaml");
    }

    @BeforeEach
    void copy() throws IOException {
        new Planted(folder).copy(made);
    }

    private Runs.Result check() throws IOException {
        new Planted(folder).sum();
        return Runs.run("check", folder.toString(), "--brief", brief().toString());
    }

    private void replace(String name, String before, String after) throws IOException {
        new Planted(folder).change(name, text -> text.replaceFirst(before, after));
    }

    @Test
    void whatNobodyTouchedIsTheSameToTheLastByteWithTheStepsOfItsMaking() throws IOException {
        Runs.Result run = check();

        int files = Runs.contents(folder).size() - 1;
        assertThat(run.out()).contains("Made again     " + files + " from the brief", "All of it agrees.");
        assertThat(run.code()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "svg/drawings/plan.svg, H1L-3.04, H1R-3.04, line",
        "svg/drawings/elevation.svg, elevation, Elevation, line",
        "svg/templates/skin-P1.pdf, /MediaBox, /MediaBoy, line",
        "build-book.html, Bell, Ball, line",
        "tables/bill.csv, S1, S3, line",
        "dome.json, Bell, Ball, line 3",
    })
    void aChangedFileIsToldWithTheFirstPlaceThatDiffers(String file, String before, String after, String place)
            throws IOException {
        replace(file, before, after);

        Runs.Result run = check();

        assertThat(run.out()).contains(file + ", " + place, "from here on it is not what its brief gives");
        assertThat(run.code()).isEqualTo(3);
    }

    @Test
    void aChangedByteOfABodyIsTold() throws IOException {
        Path body = folder.resolve("stl/model.stl");
        byte[] bytes = Files.readAllBytes(body);
        bytes[99] ^= 1;
        Files.write(body, bytes);

        assertThat(check().out()).contains("stl/model.stl, byte 100: from here on it is not what its brief gives.");
    }

    @Test
    void aFileThatEndsTooEarlyOrGoesOnIsTold() throws IOException {
        String name = "svg/drawings/rows.svg";
        String text = Files.readString(folder.resolve(name));
        Files.writeString(folder.resolve(name), text + "\n");
        assertThat(check().out()).contains(name + ", line");

        Files.writeString(folder.resolve(name), text.substring(0, text.length() - 1));
        assertThat(check().out()).contains(name + ", line");
    }

    @Test
    void aFileTooManyOrTooFewIsToldOnce() throws IOException {
        Files.delete(folder.resolve("svg/drawings/plan.svg"));
        Files.writeString(folder.resolve("svg/drawings/extra.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");

        assertThat(check().out())
                .containsOnlyOnce("svg/drawings/plan.svg: this file is missing.")
                .containsOnlyOnce("svg/drawings/extra.svg: this file is not one of the result.");
    }

    @Test
    void anotherBriefOrAnotherVersionIsToldInsteadOfEveryFile() throws IOException {
        Files.writeString(made.resolve("other.yaml"), BRIEF.replace("900", "950"));
        Runs.Result other = Runs.run(
                "check",
                folder.toString(),
                "--brief",
                made.resolve("other.yaml").toString());
        assertThat(other.out()).contains("One thing is wrong", "another brief than the one given");
        assertThat(other.code()).isEqualTo(3);

        replace("dome.json", "\"version\":\"calotte ", "\"version\":\"calotte 0.0.9 ");
        assertThat(check().out()).contains("One thing is wrong", "it was made by calotte 0.0.9");
    }

    @Test
    void aBriefThatIsNotThereIsAProblemOfTheCommandLine() {
        Runs.Result run = Runs.run("check", folder.toString(), "--brief", "nowhere.yaml");

        assertThat(run.err()).contains("nowhere.yaml");
        assertThat(run.code()).isEqualTo(2);
    }
}
