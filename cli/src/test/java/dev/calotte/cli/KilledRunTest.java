package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.threads.Crew;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs are killed at random moments: the earlier result is whole, or the new one is. */
class KilledRunTest {

    private static final int KILLS = Boolean.getBoolean("calotte.few") ? 10 : 100;
    private static final long SEED = 20261126;
    private static final int CREW = 2;

    @TempDir
    private Path folder;

    /** A brief that is quickly computed, with many files. */
    private Path brief(String name, String size) throws IOException {
        return Files.writeString(
                folder.resolve(name),
                "dome: { breakdown: 2, keep: 1/2 }\nsize: { radius: " + size
                        + " }\ncovers: [{ name: cloth, edge: 10 mm }]\nfiles: [tables, dxf, svg]\n");
    }

    @Test
    void theEarlierResultIsWholeOrTheNewOneIs() throws IOException {
        Path early = brief("early.yaml", "3 m");
        Path late = brief("late.yaml", "4 m");
        Map<String, String> earlier = made(early, folder.resolve("whole-early"));
        long start = System.nanoTime();
        Map<String, String> later = madeByProcess(late, folder.resolve("whole-late"));
        long whole = System.nanoTime() - start;
        Random random = new Random(SEED);
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            Path target = folder.resolve("killed-" + i);
            long after = (long) (whole * 1.2 * random.nextDouble());
            boolean again = i % 10 == 0;
            work.add(() -> {
                copy(folder.resolve("whole-early"), target);
                kill(late, target, after);
                Map<String, String> left = left(target);
                assertThat(left.equals(earlier) || left.equals(later))
                        .as("what is left of %s after %d ms", target, after / 1_000_000)
                        .isTrue();
                if (again) {
                    assertThat(made(late, target)).isEqualTo(later);
                }
                return left.equals(later);
            });
        }
        assertThat(new Crew(CREW).all(work)).contains(true, false);
    }

    private static Map<String, String> made(Path brief, Path target) throws IOException {
        assertThat(Runs.run("make", brief.toString(), "--out", target.toString())
                        .err())
                .isEmpty();
        return Runs.contents(target);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        }
    }

    private static Map<String, String> madeByProcess(Path brief, Path target) throws IOException {
        Process process = start(brief, target);
        assertThat(process.onExit().join().exitValue()).isZero();
        return Runs.contents(target);
    }

    private static void kill(Path brief, Path target, long afterNanos) throws IOException, InterruptedException {
        Process process = start(brief, target);
        process.waitFor(afterNanos, TimeUnit.NANOSECONDS);
        process.destroyForcibly().waitFor();
    }

    private static Process start(Path brief, Path target) throws IOException {
        return Runs.process("-XX:TieredStopAtLevel=1", "make", brief.toString(), "--out", target.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** The result under its name; in the moment between two renamings the earlier one has another. */
    private static Map<String, String> left(Path target) throws IOException {
        Path aside = target.resolveSibling("." + target.getFileName() + ".earlier");
        return Runs.contents(Files.exists(target, LinkOption.NOFOLLOW_LINKS) ? target : aside);
    }
}
