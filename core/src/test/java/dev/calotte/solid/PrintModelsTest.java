package dev.calotte.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import dev.calotte.document.Bedded;
import dev.calotte.document.Mesh;
import dev.calotte.document.Rods;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.solid.PrintSpec.Shape;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintModelsTest {

    private static Dome dome(int rows) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000));
        return Dome.of(rows == 9 ? spec : spec.withKeep(new Keep.Rows(rows, 9)));
    }

    private static PrintSpec spec(Shape shape, double wall, double rod) {
        return new PrintSpec(30, shape, wall, rod, Optional.empty());
    }

    /** Every inner corner is at least the wall behind every panel that it belongs to, so the whole inner panel is. */
    @ParameterizedTest
    @CsvSource({"3, 1.6", "4, 0.8", "5, 2", "6, 1.2"})
    void aShellIsAsThickAsAskedForAtEveryPanel(int rows, double wall) {
        Dome dome = dome(rows);
        Mesh shell = (Mesh) PrintModels.of("dome", dome, spec(Shape.SHELL, wall, 4));
        int hubs = dome.hubs().size();
        double least = Double.POSITIVE_INFINITY;
        for (Panel panel : dome.panels()) {
            List<Integer> at = panel.hubs();
            Vector3D a = vertex(shell, at.get(0));
            Vector3D normal = vertex(shell, at.get(1))
                    .subtract(a)
                    .crossProduct(vertex(shell, at.get(2)).subtract(a))
                    .normalize();
            for (int hub : at) {
                double depth = a.subtract(vertex(shell, hubs + hub)).dotProduct(normal);
                assertThat(depth).isGreaterThan(wall - 1e-9).isLessThan(3 * wall);
                least = Math.min(least, depth);
            }
        }
        assertThat(least).isLessThan(wall + 1e-9);
    }

    private static Vector3D vertex(Mesh mesh, int vertex) {
        return new Vector3D(mesh.at(vertex, 0), mesh.at(vertex, 1), mesh.at(vertex, 2));
    }

    @Test
    void aFrameHasAPointForEachHubAndARodForEachStrut() {
        Dome dome = dome(5);
        Rods rods = (Rods) PrintModels.of("dome", dome, spec(Shape.FRAME, 2, 3));
        assertThat(rods.pointCount()).isEqualTo(dome.hubs().size());
        assertThat(rods.size()).isEqualTo(dome.struts().size());
        assertThat(rods.diameterMm()).isEqualTo(3);
    }

    @Test
    void withABedTheRoomIsThatWithoutItsMargins() {
        PrintSpec spec = new PrintSpec(30, Shape.BODY, 2, 4, Optional.of(new Bed(200, 180, 150)));
        Bedded model = (Bedded) PrintModels.of("dome", dome(5), spec);
        assertThat(model.whole()).isInstanceOf(Mesh.class);
        assertThat(List.of(model.lengthMm(), model.widthMm(), model.heightMm())).containsExactly(190.0, 170.0, 150.0);
    }

    @ParameterizedTest
    @CsvSource({
        "5, SHELL, 0.5, 4, model.wall",
        "5, SHELL, 30, 4, model.wall",
        "9, SHELL, 2, 4, model.solid",
        "5, FRAME, 2, 1, model.rod",
        "5, FRAME, 2, 12, model.rod"
    })
    void whatCannotBePrintedIsRefused(int rows, Shape shape, double wall, double rod, String where) {
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> PrintModels.of("dome", dome(rows), spec(shape, wall, rod)))
                .satisfies(e -> assertThat(e.problems().get(0).where()).isEqualTo(where));
    }
}
