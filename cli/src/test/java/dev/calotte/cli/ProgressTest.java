package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private static String shown(boolean watched) {
        StringWriter err = new StringWriter();
        Progress progress = new Progress(new PrintWriter(err), watched, "Laying");
        progress.begin("Thinking");
        progress.run();
        progress.run();
        progress.end();
        return err.toString();
    }

    @Test
    void aWatcherSeesItCountAndGoAway() {
        assertThat(shown(true))
                .isEqualTo("\r\rThinking" + "\r" + " ".repeat(8) + "\rLaying 1" + "\r" + " ".repeat(8) + "\rLaying 2"
                        + "\r" + " ".repeat(8) + "\r");
    }

    @Test
    void nothingIsSaidWhereNobodyLooks() {
        assertThat(shown(false)).isEmpty();
    }
}
