package dev.calotte.stl;

import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

/** Documents made by hand. */
final class Samples {

    /** Of 5000 cubic millimetres. */
    private static final double[] TETRAHEDRON = {0, 0, 0, 30, 0, 0, 0, 40, 0, 10, 10, 25};

    private static final int[] FOUR_FACES = {0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3};

    private static final int[] HIPPED = {0, 2, 1, 0, 3, 2, 0, 1, 5, 0, 5, 4, 1, 2, 5, 2, 3, 4, 2, 4, 5, 3, 0, 4};

    private Samples() {}

    static Mesh tetrahedron() {
        return tetrahedron(1);
    }

    static Mesh tetrahedron(double scale) {
        double[] xyz = TETRAHEDRON.clone();
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] *= scale;
        }
        return mesh(xyz, FOUR_FACES);
    }

    /** A roof over 40 by 30, 25 high, of 8 facets, the ridge parallel to x. */
    static Mesh hippedRoof(double ridge) {
        double[] xyz = {0, 0, 0, 40, 0, 0, 40, 30, 0, 0, 30, 0, 20 - ridge / 2, 15, 25, 20 + ridge / 2, 15, 25};
        return mesh(xyz, HIPPED);
    }

    static Mesh mesh(double[] xyz, int... triangles) {
        return new Mesh("jigs/H1", "a jig", xyz, triangles);
    }

    static Mesh named(String name) {
        return new Mesh(name, "", TETRAHEDRON, FOUR_FACES);
    }

    static List<Document> all() {
        return List.of(tetrahedron(), hippedRoof(12.3), hippedRoof(1e-9));
    }

    static byte[] bytes(Document document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new StlExporter().write(document, out);
        return out.toByteArray();
    }
}
