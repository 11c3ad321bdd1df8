package dev.calotte.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;

/**
 * Does a piece of work in a process of its own, some seconds to get warm and then as often as is counted, and prints for
 * each of these the seconds on the clock, those of the processors, and what the work gave. Scripts of peers print the
 * same.
 */
public final class Entrant {

    private Entrant() {}

    /**
     * Runs.
     *
     * @param words name of the work, folder to write to, seconds to get warm, runs that count
     * @throws IOException if something cannot be written
     */
    public static void main(String... words) throws IOException {
        Work work = Work.named(words[0], Path.of(words[1]));
        long warm = System.nanoTime() + 1_000_000_000L * Integer.parseInt(words[2]);
        while (System.nanoTime() < warm) {
            work.run();
        }
        for (int i = Integer.parseInt(words[3]); i > 0; i--) {
            Duration before = processor();
            long start = System.nanoTime();
            long result = work.run();
            double seconds = (System.nanoTime() - start) / 1e9;
            double busy = processor().minus(before).toNanos() / 1e9;
            System.out.println(String.format(Locale.ROOT, "run %.4f %.4f %d", seconds, busy, result));
        }
    }

    private static Duration processor() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow();
    }
}
