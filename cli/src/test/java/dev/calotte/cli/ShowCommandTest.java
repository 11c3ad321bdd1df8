package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShowCommandTest {

    static List<Path> examples() throws IOException {
        return Runs.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesFitAPageOfEightyColumns(Path brief) {
        Runs.Result result = Runs.run("show", brief.toString());
        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(result.out().lines().count()).isLessThan(68);
    }

    @Test
    void theTradesNicknameIsBuiltAsRowsAndSaid(@TempDir Path folder) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { breakdown: 3, keep: 5/8 }\nsize: { radius: 3 m }\n");
        Runs.Result result = Runs.run("show", brief.toString());
        assertThat(result.out()).contains("keep 5/9").contains("keep: 5/8 is the trade's name for 5/9 of a 3V");
    }

    @Test
    void keysOfAFittedSpacingAreSaidToBeIdleWithAnother(@TempDir Path folder) throws IOException {
        Path brief = folder.resolve("b.yaml");
        Files.writeString(brief, "dome: { breakdown: 3, strut-ratio: 1.3 }\nsize: { radius: 3 m }\n");
        assertThat(Runs.run("show", brief.toString()).out()).contains("have an effect with spacing: fitted only");
        Files.writeString(brief, "dome: { breakdown: 3, strut-ratio: 1.25 }\nsize: { radius: 3 m }\n");
        assertThat(Runs.run("show", brief.toString()).out()).doesNotContain("have an effect");
    }

    @Test
    void lengthsArePrintedInTheUnitsOfTheBrief() {
        String page = Runs.run("show", "examples/bandstand.yaml").out();
        assertThat(page.substring(0, page.indexOf("Take care")))
                .contains("7' 0\"")
                .contains("7' 5\"")
                .contains("sq ft")
                .doesNotContain(" mm");
    }

    @Test
    void cautionsAreAlwaysPrinted() {
        assertThat(Runs.run("show", "examples/orchard-house.yaml").out())
                .contains("Geometry only: Loads, members, joints and foundations are not checked.");
    }
}
