package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Whatever is not refused has room on the bed, margins of 5 mm left out, straight or turned by an eighth. */
class BedTest {

    private static JigSpec on(double side, double high, boolean sockets) {
        return new JigSpec(
                Optional.of(StrutSection.round(23.4)),
                0.3,
                2.4,
                new Bed(side, side, high),
                sockets ? Optional.of(new JigSpec.Sockets(StrutSection.round(12), 20, 4)) : Optional.empty());
    }

    @Test
    void whatIsPrintedHasRoomOnTheBed() {
        List<Parts> frames = List.of(Domes.mitred(3), Domes.flattened(4), Domes.gapped(2, 60));
        List<String> refused = new ArrayList<>();
        int printed = 0;
        for (double side = 100; side <= 220; side += 20) {
            for (Parts parts : frames) {
                JigSpec spec = on(side, side / 2, true);
                try {
                    PrintPlate plate = Domes.plate(parts, spec);
                    plate.jigs().stream()
                            .filter(jig -> !(jig instanceof Jig.Cradle))
                            .forEach(jig -> fits(jig, plate, spec.bed()));
                    printed++;
                } catch (CalotteException e) {
                    refused.add(e.problems().get(0).toString());
                }
            }
        }
        assertThat(printed).isPositive();
        assertThat(refused).isNotEmpty().allMatch(problem -> problem.contains("jigs.bed"));
        assertThat(refused).anyMatch(problem -> problem.contains("mitre-") && problem.contains("90 mm by 90 mm"));
    }

    private static void fits(Jig jig, PrintPlate plate, Bed bed) {
        Bodies.of(jig, plate).forEach(mesh -> {
            List<Vector3D> corners = Sound.facets(mesh).stream()
                    .flatMap(facet -> List.of(facet).stream())
                    .toList();
            double x = corners.stream().mapToDouble(Vector3D::getX).max().orElseThrow();
            double y = corners.stream().mapToDouble(Vector3D::getY).max().orElseThrow();
            double high = corners.stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
            double turned = (x + y) / Math.sqrt(2);
            assertThat(bed.takes(x, y) || bed.takes(y, x) || bed.takes(turned, turned))
                    .as(mesh.name())
                    .isTrue();
            assertThat(high).as(mesh.name()).isLessThanOrEqualTo(bed.heightMm());
        });
    }
}
