package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Mesh;
import dev.calotte.export.Facets;
import dev.calotte.solid.DomeModel;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ModelCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.CLASS_THREE);
    private static final Facets BODY = body();
    private static final Facets FRAME = frame();

    private static Facets body() {
        Mesh mesh = DomeModel.of("", CheckedDomes.CLASS_THREE.dome(), 20);
        float[] xyz = new float[9 * mesh.triangleCount()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = (float) mesh.at(mesh.corner(i / 9, i / 3 % 3), i % 3);
        }
        return new Facets("", xyz);
    }

    /** A blade along each strut. */
    private static Facets frame() {
        List<Vector3D> corners = new ArrayList<>();
        DOME.struts().forEach(strut -> {
            Vector3D from = DOME.vertex(strut.from());
            Vector3D to = DOME.vertex(strut.to());
            corners.addAll(List.of(from, to, from.add(new Vector3D(3, 2, 1))));
            corners.addAll(List.of(to, from, from.add(new Vector3D(1, 2, 3))));
        });
        float[] xyz = new float[3 * corners.size()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = (float) corners.get(i / 3).toArray()[i % 3];
        }
        return new Facets("", xyz);
    }

    private static Facets mirrored(Facets facets, int axis) {
        float[] xyz = new float[9 * facets.size()];
        for (int i = 0; i < xyz.length; i++) {
            float at = facets.at(i / 9, (3 - i / 3 % 3) % 3, i % 3);
            xyz[i] = i % 3 == axis ? -at : at;
        }
        return new Facets("", xyz);
    }

    private static List<String> found(Facets... pieces) {
        ModelCheck check = new ModelCheck(DOME);
        for (Facets piece : pieces) {
            check.add(piece);
        }
        return Found.list(check::check).stream().map(Finding::what).toList();
    }

    private static Facets part(Facets facets, int from, int to) {
        float[] xyz = new float[9 * (to - from)];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = facets.at(from + i / 9, i / 3 % 3, i % 3);
        }
        return new Facets("", xyz);
    }

    @Test
    void nothingIsFoundInAModelWholeOrInPieces() {
        assertThat(found(BODY)).isEmpty();
        assertThat(found(FRAME)).isEmpty();
        assertThat(found(part(BODY, 0, 30), part(BODY, 30, BODY.size()))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void aMirroredModelIsFound(int axis) {
        assertThat(found(mirrored(BODY, axis))).singleElement().asString().contains("its panels stand as in a mirror");
        assertThat(found(mirrored(FRAME, axis))).singleElement().asString().contains("its struts stand as in a mirror");
    }

    /** Too little of it to tell, or something else altogether. */
    @Test
    void nothingIsSaidOfHalfAModel() {
        assertThat(found(part(mirrored(BODY, 0), 0, 20))).isEmpty();
        assertThat(found()).isEmpty();
    }
}
