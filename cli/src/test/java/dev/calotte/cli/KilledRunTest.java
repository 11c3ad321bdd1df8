package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.threads.Crew;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
    private static final long UNDISTURBED = Long.MAX_VALUE;
    /** How the name of the folder ends that a run writes before it takes its place. */
    private static final String WRITTEN = ".new-1";

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
        List<Callable<Long>> whole = new ArrayList<>();
        for (int i = 0; i < CREW; i++) {
            Path target = folder.resolve("whole-late-" + i);
            whole.add(() -> timed(late, target));
        }
        long time = Collections.max(new Crew(CREW).all(whole));
        Map<String, String> later = Runs.contents(folder.resolve("whole-late-0"));
        Random random = new Random(SEED);
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            Path target = folder.resolve("killed-" + i);
            boolean writing = i % 2 == 0;
            long after = i == 1 ? UNDISTURBED : (long) (time * (writing ? 0.2 : 1.2) * random.nextDouble());
            boolean again = i % 10 == 0;
            work.add(() -> {
                copy(folder.resolve("whole-early"), target);
                kill(late, target, writing, after);
                Map<String, String> left = left(target);
                assertThat(left.equals(earlier) || left.equals(later))
                        .as("what is left of %s after %d ms of %d", target, after / 1_000_000, time / 1_000_000)
                        .isTrue();
                if (again) {
                    assertThat(made(late, target)).isEqualTo(later);
                }
                return left.equals(later);
            });
        }
        assertThat(new Crew(CREW).all(work)).contains(true, false);
        try (Stream<Path> halfWritten =
                Files.list(folder).filter(f -> f.toString().endsWith(WRITTEN))) {
            assertThat(halfWritten).as("runs struck while they wrote").isNotEmpty();
        }
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

    /** How long a run takes beside others, in nanoseconds. */
    private static long timed(Path brief, Path target) throws IOException {
        long start = System.nanoTime();
        assertThat(start(brief, target).onExit().join().exitValue()).isZero();
        return System.nanoTime() - start;
    }

    /** Kills a run some time after its start, or after its first sign of writing. */
    private static void kill(Path brief, Path target, boolean writing, long afterNanos)
            throws IOException, InterruptedException {
        Process process = start(brief, target);
        Path written = target.resolveSibling("." + target.getFileName() + WRITTEN);
        while (writing && process.isAlive() && !Files.exists(written)) {
            Thread.sleep(1);
        }
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
