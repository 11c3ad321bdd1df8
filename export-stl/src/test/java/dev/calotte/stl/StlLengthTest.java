package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Mesh;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class StlLengthTest {

    private static final int ROWS = 316;
    private static final int COLUMNS = 316;

    @Test
    void longFileGoesOutInSmallPieces() throws IOException {
        Mesh ring = ring();
        CountingStream out = new CountingStream();
        new StlExporter().write(ring, out);
        assertThat(ring.triangleCount()).isBetween(199_000, 201_000);
        assertThat(out.count()).isEqualTo(84 + 50L * ring.triangleCount());
        assertThat(out.largest()).isLessThan(1_000_000);
    }

    /** A ring of round section: a closed surface of as many triangles as wanted. */
    private static Mesh ring() {
        double[] xyz = new double[3 * ROWS * COLUMNS];
        int[] triangles = new int[6 * ROWS * COLUMNS];
        for (int i = 0; i < ROWS * COLUMNS; i++) {
            place(xyz, i);
            int right = i / COLUMNS * COLUMNS + (i + 1) % COLUMNS;
            int up = (i + COLUMNS) % (ROWS * COLUMNS);
            int both = (right + COLUMNS) % (ROWS * COLUMNS);
            int[] square = {i, right, both, i, both, up};
            System.arraycopy(square, 0, triangles, 6 * i, 6);
        }
        return Samples.mesh(xyz, triangles);
    }

    private static void place(double[] xyz, int i) {
        int row = i / COLUMNS;
        double round = 2 * StrictMath.PI * row / ROWS;
        double section = 2 * StrictMath.PI * (i % COLUMNS) / COLUMNS;
        double radius = 100 + 20 * StrictMath.sin(section);
        xyz[3 * i] = 120 + radius * StrictMath.cos(round);
        xyz[3 * i + 1] = 120 + radius * StrictMath.sin(round);
        xyz[3 * i + 2] = 20 + 20 * StrictMath.cos(section);
    }
}
