package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A small file. Read its facets before a new one replaces it. */
class StlGoldenTest {

    @Test
    void fileIsTheOneThatWasRead() throws IOException {
        byte[] written = Samples.bytes(Samples.tetrahedron());
        try (InputStream file = StlGoldenTest.class.getResourceAsStream("tetrahedron.stl")) {
            byte[] expected = file.readAllBytes();
            assertThat(corners(written)).containsExactlyElementsOf(corners(expected));
            assertThat(written).isEqualTo(expected);
        }
    }

    private static List<String> corners(byte[] bytes) {
        List<String> corners = new ArrayList<>();
        Facets.read(bytes).list().forEach(facet -> corners.add(facet.getNormal() + " " + facet.getVertices()));
        return corners;
    }
}
