package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Wireframe;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class DxfLengthTest {

    private static final int FACES = 200_000;

    @Test
    void longFileGoesOutInSmallPieces() throws IOException {
        double[] xyz = new double[9 * FACES];
        for (int face = 0; face < FACES; face++) {
            for (int corner = 0; corner < 3; corner++) {
                xyz[9 * face + 3 * corner] = face % 500 + corner % 2 + 0.125;
                xyz[9 * face + 3 * corner + 1] = face / 500 + corner / 2;
                xyz[9 * face + 3 * corner + 2] = face;
            }
        }
        CountingStream out = new CountingStream();
        new DxfExporter().write(Samples.wireframe(new Wireframe.Layer("P1", Wireframe.Sort.FACES, xyz)), out);
        assertThat(out.count()).isGreaterThan(100L * FACES);
        assertThat(out.largest()).isLessThan(1_000_000);
    }

    /** The drawing itself takes a quarter of the heap. */
    @Test
    void millionSidesAreWrittenInAHeapOf64Mebibytes() throws IOException, InterruptedException {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx64m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classes,
                        MillionSides.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
    }
}
