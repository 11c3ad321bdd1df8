package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a file is read or refused, and soon. */
class BriefNoiseTest {

    private static final int CASES = 4000;
    private static final Duration SOON = Duration.ofSeconds(60);
    private static final String MARKS = "{}[]:,-?&*!|>'\"%@`#\n \t~<.0123456789/°ab\\=\r\u0085\u2028é🌱";

    @TempDir
    private Path folder;

    @Test
    void randomBytes() {
        Random random = new Random(11);
        Path path = folder.resolve("brief.yaml");
        assertTimeoutPreemptively(SOON, () -> {
            for (int i = 0; i < CASES / 4; i++) {
                byte[] bytes = new byte[random.nextInt(300)];
                random.nextBytes(bytes);
                Files.write(path, bytes);
                readOrRefused("seed 11, case " + i, () -> BriefText.read(path));
            }
        });
    }

    @Test
    void randomMarks() {
        Random random = new Random(12);
        assertTimeoutPreemptively(SOON, () -> {
            for (int i = 0; i < CASES; i++) {
                StringBuilder text = new StringBuilder();
                random.ints(random.nextInt(60), 0, MARKS.length()).forEach(k -> text.append(MARKS.charAt(k)));
                readOrRefused("seed 12, case " + i, () -> Briefs.of(text.toString()));
            }
        });
    }

    @Test
    void randomChangesOfAGoodBrief() {
        String good = good();
        Random random = new Random(13);
        assertTimeoutPreemptively(SOON, () -> {
            for (int i = 0; i < CASES; i++) {
                String changed = changed(good, random);
                readOrRefused("seed 13, case " + i, () -> Briefs.of(changed));
            }
        });
    }

    private static String changed(String good, Random random) {
        StringBuilder text = new StringBuilder(good);
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> text.delete(at, to);
                case 1 -> text.insert(random.nextInt(text.length()), text.substring(at, to));
                case 2 -> text.setCharAt(at, MARKS.charAt(random.nextInt(MARKS.length())));
                default -> text.insert(at, MARKS.charAt(random.nextInt(MARKS.length())));
            }
        }
        return text.toString();
    }

    private static String good() {
        try (InputStream in = BriefNoiseTest.class.getResourceAsStream("orchard.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Reading {
        BriefText read();
    }

    private static void readOrRefused(String label, Reading reading) {
        try {
            BriefText brief = reading.read();
            for (Problem problem : Briefs.problems(brief)) {
                assertThat(brief.explain(problem))
                        .as(label)
                        .hasSizeBetween(2, 4)
                        .noneMatch(line -> line.contains("\n"));
                assertThat(problem.what()).as(label).isNotBlank();
                assertThat(problem.mend()).as(label).isNotBlank();
            }
        } catch (CalotteException e) {
            assertThat(e.problems()).as(label).isNotEmpty();
        } catch (RuntimeException e) {
            throw new AssertionError(label, e);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[",
                "{",
                "[ ",
                "{a: ",
                "- ",
                "? ",
                "-\n",
                "?\n",
                "\"",
                "'",
                "a ",
                "a\n",
                "a: ",
                "a:\n ",
                "#",
                "# \n",
                "&a ",
                "*a ",
                "!a ",
                "|\n ",
                ">\n\n ",
                "%",
                "---\n",
                "...\n",
                ",",
                "[,",
                "{,",
                "\\",
                "\t",
                " ",
                "\n",
                "\r",
                ": ",
                "[a: b, ",
                "- - ",
                "\"\\u0041",
                "9",
                "0/",
                "\ufffd",
                "🌱",
                "a: b\n",
                "<<: ",
                "[]",
                "{}: "
            })
    void oneThingOverAndOverIsReadOrRefusedSoon(String piece) {
        String text = piece.repeat((BriefFile.MOST_BYTES - 100) / piece.getBytes(StandardCharsets.UTF_8).length);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            readOrRefused(piece, () -> Briefs.of(text));
            readOrRefused(piece, () -> Briefs.of("title: " + text));
        });
    }

    @Test
    void aliasesOfAliasesAreRefusedEachWhereItStands() {
        StringBuilder text = new StringBuilder("a0: &a0 [lol, lol]\n");
        for (int i = 1; i < 30; i++) {
            text.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1).replace("\r", ""));
        }
        BriefText brief = Briefs.of(text.toString());
        List<Problem> problems = assertTimeoutPreemptively(SOON, () -> Briefs.problems(brief));
        assertThat(problems).filteredOn(p -> p.what().contains("is an alias")).hasSize(58);
        assertThat(problems).filteredOn(p -> p.what().contains("is an anchor")).hasSize(30);
    }

    @Test
    void deepNestingStopsAtItsPlace() {
        Problem problem = Briefs.problems(Briefs.of("title: " + "[".repeat(21) + "]".repeat(21)))
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.TOO_LARGE);
        assertThat(problem.where()).isEqualTo("line 1, column 27");
        assertThat(Briefs.problems(Briefs.of("title: " + "[".repeat(19) + "]".repeat(19) + "\n" + Briefs.LEAST)))
                .singleElement()
                .extracting(Problem::where)
                .isEqualTo("title");
    }

    @Test
    void manyValuesStopAtTheirPlace() {
        Problem problem = Briefs.problems(Briefs.of("files:\n" + "- svg\n".repeat(TreeReader.MOST_NODES)))
                .get(0);
        assertThat(problem.code()).isEqualTo(Code.TOO_LARGE);
        assertThat(problem.where()).isEqualTo("line 9999, column 3");
    }
}
