package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.ReadOrRefused;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What fuzzers were given to begin with, what they found, and changes of it. */
class BriefFuzzTest {

    @Test
    void everyFileIsReadOrRefused() throws IOException {
        assertThat(ReadOrRefused.checkAll(BriefFuzz::read, Path.of("src/test/resources/fuzz/brief")))
                .isGreaterThan(3);
    }
}
