package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.ReadOrRefused;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What fuzzers are given to begin with, packages and bombs, and changes of it. */
class PlateFuzzTest {

    @Test
    void everyFileIsReadOrRefused() throws IOException {
        assertThat(ReadOrRefused.checkAll(PlateFuzz::read, Path.of("src/test/resources/fuzz/3mf")))
                .isGreaterThan(5);
    }
}
