package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.ReadOrRefused;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What fuzzers were given to begin with, what they found, and changes of it. */
class DxfFuzzTest {

    @Test
    void everyFileIsReadOrRefused() throws IOException {
        assertThat(ReadOrRefused.checkAll(DxfFuzz::read, Path.of("src/test/resources/fuzz/dxf")))
                .isGreaterThan(3);
    }
}
