package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where dowels come to a stop in printed hubs. */
class SocketTest {

    private static final StrutSection DOWEL = StrutSection.rectangle(5, 5);

    private static PrintPlate plate(Solid solid) {
        Dome dome = Dome.of(DomeSpec.of(solid, Breakdown.of(2), Size.radius(1000)));
        JigSpec spec = new JigSpec(
                Optional.of(StrutSection.round(20)),
                0.2,
                1.6,
                Bed.USUAL,
                Optional.of(new JigSpec.Sockets(DOWEL, 10, 5)));
        return Domes.plate(Parts.of(dome, Joinery.gap(80)), spec);
    }

    /** The more solids lean, the more: a 2V tetrahedron has struts at 45 degrees. */
    @ParameterizedTest
    @EnumSource(Solid.class)
    void bothHalvesOfSteepHubsAreSound(Solid solid) {
        PrintPlate plate = plate(solid);
        for (Jig.Socket jig : Domes.jigs(plate, Jig.Socket.class)) {
            Bodies.of(jig, plate).forEach(Sound::check);
        }
    }

    /**
     * The lower edge of a dowel's end touches the wall of the middle first. There it lies {@code endMm} from the hub's
     * centre along the strut, which its length was computed from. The middle's wall is the upright facet across the
     * strut; the hole in the hub's axis tells where the centre is.
     */
    @Test
    void dowelsStopWhereTheirLengthsSay() {
        PrintPlate plate = plate(Solid.OCTAHEDRON);
        for (Jig.Socket jig : Domes.jigs(plate, Jig.Socket.class)) {
            Mesh inner = Bodies.of(jig, plate).get(0);
            Vector3D centre = holeOf(inner);
            for (Jig.Arm arm : jig.arms()) {
                double stop = stop(inner, centre, arm.angleRad());
                double along =
                        (stop + DOWEL.depthMm() / 2 * StrictMath.sin(arm.tiltRad())) / StrictMath.cos(arm.tiltRad());
                assertThat(along).as(jig.mark() + " " + arm.mark()).isCloseTo(jig.endMm(), within(0.002));
            }
        }
    }

    /** The middle of the narrow upright facets round the screw, which reach through all of it. */
    private static Vector3D holeOf(Mesh mesh) {
        List<Vector3D[]> sides = Sound.facets(mesh).stream()
                .filter(facet -> Math.abs(Sound.normal(facet).normalize().getZ()) < 1e-6)
                .filter(facet -> across(facet) < 0.5 && reaches(facet))
                .toList();
        double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        sides.stream().flatMap(Stream::of).forEach(v -> {
            box[0] = Math.min(box[0], v.getX());
            box[1] = Math.max(box[1], v.getX());
            box[2] = Math.min(box[2], v.getY());
            box[3] = Math.max(box[3], v.getY());
        });
        return new Vector3D((box[0] + box[1]) / 2, (box[2] + box[3]) / 2, 0);
    }

    /** From the bed to higher than letters. */
    private static boolean reaches(Vector3D... facet) {
        double[] z = Stream.of(facet).mapToDouble(Vector3D::getZ).sorted().toArray();
        return z[0] == 0 && z[2] > 3;
    }

    private static double across(Vector3D... facet) {
        double most = 0;
        for (int i = 0; i < 3; i++) {
            Vector3D side = facet[(i + 1) % 3].subtract(facet[i]);
            most = Math.max(most, Math.hypot(side.getX(), side.getY()));
        }
        return most;
    }

    /** The least distance of a facet that looks out along an arm, no wider than its trough. */
    private static double stop(Mesh mesh, Vector3D centre, double angle) {
        Vector3D out = new Vector3D(StrictMath.cos(angle), StrictMath.sin(angle), 0);
        Vector3D side = new Vector3D(-out.getY(), out.getX(), 0);
        return Sound.facets(mesh).stream()
                .filter(facet -> Sound.normal(facet).normalize().dotProduct(out) > 1 - 1e-6)
                .filter(facet -> Stream.of(facet)
                        .allMatch(v -> Math.abs(v.subtract(centre).dotProduct(side)) < 2.8))
                .mapToDouble(facet -> facet[0].subtract(centre).dotProduct(out))
                .filter(distance -> distance > 0)
                .min()
                .orElseThrow();
    }
}
