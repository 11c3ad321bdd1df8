package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.Cases;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever brief is written, it is made and found right by {@code check}, or a clear problem is told. */
class RandomBriefsTest {

    private static final int CASES = Integer.getInteger("calotte.briefs", 100);

    /** Enough to lay everything; what better plans save is tested elsewhere. */
    private static final String STEPS = "20";

    @TempDir
    private Path folder;

    @Test
    void everyBriefIsMadeRightOrRefusedPlainly() {
        AtomicInteger made = new AtomicInteger();
        AtomicInteger tried = new AtomicInteger();
        Cases.each(CASES, (random, size) -> {
            String text = RandomBriefs.of(random);
            tried.incrementAndGet();
            try {
                made.addAndGet(holds(text, folder.resolve("out-" + size)) ? 1 : 0);
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError(text + "\n" + failure.getMessage(), failure);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        assertThat(made.get()).as("made of %d", tried.get()).isGreaterThan(tried.get() / 3);
    }

    /** Whether files were made, which must then be right; else nothing is written, and it is told where to mend what. */
    private boolean holds(String text, Path out) throws IOException {
        Path brief = Files.writeString(folder.resolve("brief.yaml"), text);
        Runs.Result result = Runs.run("make", brief.toString(), "--out", out.toString(), "--steps", STEPS);
        if (result.code() == 0) {
            Runs.Result checked = Runs.run("check", out.toString());
            assertThat(checked.code()).as(checked.out() + checked.err()).isZero();
            return true;
        }
        assertThat(result.code()).as(result.err()).isEqualTo(Calotte.PROBLEM);
        assertThat(result.err()).contains("brief.yaml:").doesNotContain("Exception");
        assertThat(out).doesNotExist();
        return false;
    }
}
