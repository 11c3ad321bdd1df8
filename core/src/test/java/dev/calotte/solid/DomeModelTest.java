package dev.calotte.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Mesh;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The mesh itself refuses to be open; here it is measured. */
class DomeModelTest {

    private static final double SCALE = 20;

    static List<DomeSpec> specs() {
        DomeSpec three = spec(Solid.ICOSAHEDRON, new Breakdown(3, 0));
        return List.of(
                three,
                three.withKeep(new Keep.Rows(4, 9)),
                three.withKeep(new Keep.Rows(5, 9)),
                three.withSpacing(Spacing.ARC).withKeep(new Keep.Rows(5, 9)),
                spec(Solid.ICOSAHEDRON, new Breakdown(2, 1)).withKeep(new Keep.AboveHeight(0)),
                spec(Solid.ICOSAHEDRON, new Breakdown(2, 2)).withUp(Up.FACE).withKeep(new Keep.AboveHeight(-900)),
                spec(Solid.ICOSAHEDRON, new Breakdown(6, 0)).withUp(Up.EDGE).withKeep(new Keep.AboveHeight(400)),
                spec(Solid.OCTAHEDRON, new Breakdown(5, 0)).withKeep(new Keep.Rows(1, 2)),
                spec(Solid.TETRAHEDRON, new Breakdown(4, 0)).withKeep(new Keep.Rows(3, 4)),
                spec(Solid.TETRAHEDRON, new Breakdown(4, 0)));
    }

    private static DomeSpec spec(Solid solid, Breakdown breakdown) {
        return DomeSpec.of(solid, breakdown, Size.radius(3000));
    }

    @ParameterizedTest
    @MethodSource("specs")
    void itsVolumeIsThatOfTheDomeAtScale(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        double wanted = dome.measures().volumeMm3() / (SCALE * SCALE * SCALE);
        assertThat(volume(DomeModel.of("model", dome, SCALE))).isCloseTo(wanted, within(1e-9 * wanted));
    }

    @ParameterizedTest
    @MethodSource("specs")
    void itStandsInTheCornerOfThePrintersBed(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        Mesh mesh = DomeModel.of("model", dome, SCALE);
        double[] most = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double least = Double.POSITIVE_INFINITY;
            for (int v = 0; v < mesh.vertexCount(); v++) {
                least = Math.min(least, mesh.at(v, axis));
                most[axis] = Math.max(most[axis], mesh.at(v, axis));
            }
            assertThat(least).isZero();
        }
        assertThat(most[2]).isCloseTo(dome.measures().heightMm() / SCALE, within(1e-9));
    }

    @Test
    void openingsAreClosed() {
        Dome dome = Dome.of(spec(Solid.ICOSAHEDRON, Breakdown.of(3)).withKeep(new Keep.Rows(5, 9)));
        Dome opened = dome.withOpenings(List.of(new Opening("vent", List.of(0, 1, 2, 3, 4), true)));
        assertThat(DomeModel.of("model", opened, SCALE))
                .usingRecursiveComparison()
                .isEqualTo(DomeModel.of("model", dome, SCALE));
    }

    /** The sum of the signed tetrahedra from the origin: above 0 only if the surface faces outwards. */
    private static double volume(Mesh mesh) {
        double sixfold = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int a = mesh.corner(t, 0);
            int b = mesh.corner(t, 1);
            int c = mesh.corner(t, 2);
            sixfold += mesh.at(a, 0) * (mesh.at(b, 1) * mesh.at(c, 2) - mesh.at(b, 2) * mesh.at(c, 1))
                    + mesh.at(a, 1) * (mesh.at(b, 2) * mesh.at(c, 0) - mesh.at(b, 0) * mesh.at(c, 2))
                    + mesh.at(a, 2) * (mesh.at(b, 0) * mesh.at(c, 1) - mesh.at(b, 1) * mesh.at(c, 0));
        }
        return sixfold / 6;
    }
}
