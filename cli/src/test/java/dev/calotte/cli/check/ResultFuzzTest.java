package dev.calotte.cli.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.ReadOrRefused;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What fuzzers were given to begin with, what they found, and changes of it. */
class ResultFuzzTest {

    @Test
    void everyRecordIsReadOrRefused() throws IOException {
        assertThat(ReadOrRefused.checkAll(ResultFuzz::read, Path.of("src/test/resources/fuzz/dome")))
                .isGreaterThan(3);
    }
}
