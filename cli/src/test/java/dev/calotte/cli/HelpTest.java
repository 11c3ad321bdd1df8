package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpTest {

    private static final List<String> COMMANDS = List.of("show", "make", "compare", "check", "completion");

    /** With all that the examples speak of, and quickly made. */
    private static final String SMALL = """
            dome: { breakdown: 2, keep: 1/2 }
            size: { radius: 1 m }
            covers: [{ name: glazing, stock: { sheet: [3 m, 2 m] } }]
            files: [tables, stl]
            """;

    @TempDir
    private Path folder;

    /** The lines of examples in the help of each command. */
    static Stream<String> examples() {
        return Stream.concat(Stream.of(Runs.run("--help")), COMMANDS.stream().map(each -> Runs.run(each, "--help")))
                .flatMap(result -> result.out().lines())
                .filter(line -> line.startsWith("  calotte "))
                .map(String::strip)
                .distinct();
    }

    @Test
    void everyCommandThatReadsABriefHasExamples() {
        assertThat(List.of("show", "make", "compare", "check"))
                .allSatisfy(command -> assertThat(examples()).anyMatch(line -> line.startsWith("calotte " + command)));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleOfTheHelpRuns(String example) throws IOException {
        Path brief = Files.writeString(folder.resolve("orchard-house.yaml"), SMALL);
        String made = folder.resolve("made").toString();
        if (example.contains(" check ")) {
            assertThat(Runs.run("make", brief.toString(), "--out", made).code()).isZero();
        }
        List<String> arguments = Stream.of(example.split(" ", -1))
                .skip(1)
                .map(word -> word.equals("orchard-house.yaml") ? brief.toString() : word)
                .map(word -> word.matches("orchard(-house)?") ? made : word)
                .toList();
        if (example.contains(" make ") && !example.contains("--out")) {
            arguments =
                    Stream.concat(arguments.stream(), Stream.of("--out", made)).toList();
        }
        Runs.Result result = Runs.run(arguments.toArray(String[]::new));
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.out().isEmpty()).isEqualTo(example.contains("--quiet"));
    }

    @Test
    void quietMakesSayNothingAndVerboseOnesNameEveryFile() throws IOException {
        Path brief = folder.resolve("brief.yaml");
        Files.writeString(brief, "dome: { breakdown: 1 }\nsize: { radius: 2 m }\nfiles: [tables, stl]\n");
        String quiet = folder.resolve("quiet").toString();
        String verbose = folder.resolve("verbose").toString();
        assertThat(Runs.run("make", brief.toString(), "--quiet", "--out", quiet).out())
                .isEmpty();
        List<String> said = Runs.run("make", brief.toString(), "-v", "--out", verbose)
                .out()
                .lines()
                .toList();
        List<String> named = said.stream()
                .filter(line -> line.startsWith("  "))
                .map(String::strip)
                .toList();
        assertThat(named)
                .isNotEmpty()
                .containsExactlyElementsOf(Runs.contents(Path.of(verbose)).keySet().stream()
                        .filter(name -> !name.equals("SHA256SUMS"))
                        .toList());
        assertThat(said.get(said.size() - 1)).isEqualTo("Written to " + verbose);
        assertThat(Runs.run("make", brief.toString(), "-q", "-v").code()).isEqualTo(Calotte.PROBLEM);
    }

    @Test
    void aQuietCheckStillSaysWhatIsWrong() throws IOException {
        Path brief = folder.resolve("brief.yaml");
        Files.writeString(brief, "dome: { breakdown: 1 }\nsize: { radius: 2 m }\nfiles: [tables]\n");
        Path made = folder.resolve("made");
        Runs.run("make", brief.toString(), "--out", made.toString());
        Files.writeString(made.resolve("tables/struts.csv"), "changed");
        Runs.Result result = Runs.run("check", made.toString(), "--quiet");
        assertThat(result.code()).isEqualTo(Calotte.FOUND);
        assertThat(result.out()).contains("tables/struts.csv");
    }

    /** As bash itself sees it: commands after the name, options after a command. */
    @Test
    void completionIsAScriptOfBash() throws IOException, InterruptedException {
        Path script = folder.resolve("completion.bash");
        Files.writeString(script, Runs.run("completion").out());
        assertThat(completions(script, "calotte", "")).contains("show", "make", "compare", "check", "completion");
        assertThat(completions(script, "calotte", "make", "--")).contains("--out", "--steps", "--quiet", "--verbose");
    }

    private static List<String> completions(Path script, String... words) throws IOException, InterruptedException {
        String typed =
                String.join(" ", Stream.of(words).map(word -> "'" + word + "'").toList());
        String ask = "source " + script + "; COMP_WORDS=(" + typed + "); COMP_CWORD=" + (words.length - 1)
                + "; _complete_calotte; printf '%s\\n' \"${COMPREPLY[@]}\"";
        Process bash =
                new ProcessBuilder("bash", "-c", ask).redirectErrorStream(true).start();
        List<String> lines = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .toList();
        assertThat(bash.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(bash.exitValue()).as(lines.toString()).isZero();
        return lines;
    }
}
