package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Measures;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The measures of a dome, taken anew from its base ring. */
class FloorLawsTest {

    private static final String CAPS = "dev.calotte.laws.Samples#caps";

    /** The base ring in units of the radius. */
    private static List<Vector3D> ring(Space space) {
        return space.dome().baseRing().stream().map(space.points()::get).toList();
    }

    private static double lowest(Space space) {
        return space.points().stream().mapToDouble(Vector3D::getZ).min().orElseThrow();
    }

    /** Six times the space between the centre and the triangles of a polygon that is listed round its outside. */
    private static double cone(Vector3D... polygon) {
        return IntStream.range(1, polygon.length - 1)
                .mapToDouble(i -> polygon[0].dotProduct(polygon[i].crossProduct(polygon[i + 1])))
                .sum();
    }

    /** By the divergence theorem: the cones from the centre under panels, wall and floor. */
    @ParameterizedTest
    @MethodSource(CAPS)
    void volumeIsClosedByAWallAndALevelFloor(DomeSpec spec) {
        Space space = Space.of(spec);
        List<Vector3D> ring = ring(space);
        double floor = lowest(space);
        double wall = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vector3D p = ring.get(i);
            Vector3D q = ring.get((i + 1) % ring.size());
            wall += cone(p, onFloor(p, floor), onFloor(q, floor), q);
        }
        double sum = space.volumeFromCentre() + wall / 6 - floor * floorArea(ring) / 3;
        assertThat(space.dome().measures().volumeMm3() / Math.pow(Samples.R, 3)).isCloseTo(sum, within(1e-12 * 4));
    }

    private static Vector3D onFloor(Vector3D point, double floor) {
        return new Vector3D(point.getX(), point.getY(), floor);
    }

    private static double floorArea(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        for (int i = 0; i < ring.size(); i++) {
            sum = sum.add(ring.get(i).crossProduct(ring.get((i + 1) % ring.size())));
        }
        return sum.getZ() / 2;
    }

    @ParameterizedTest
    @MethodSource(CAPS)
    void floorIsThatOfTheBaseRingSeenFromAbove(DomeSpec spec) {
        Space space = Space.of(spec);
        Measures measures = space.dome().measures();
        double area = floorArea(ring(space));
        double furthest = ring(space).stream()
                .mapToDouble(p -> onFloor(p, 0).getNorm())
                .max()
                .orElseThrow();
        assertThat(area).isPositive();
        assertThat(measures.floorAreaMm2() / Samples.R / Samples.R).isCloseTo(area, within(1e-12));
        assertThat(measures.floorDiameterMm() / Samples.R).isCloseTo(2 * furthest, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource(CAPS)
    void heightAndSpreadAreFromTheLowestHub(DomeSpec spec) {
        Space space = Space.of(spec);
        Dome dome = space.dome();
        double top = space.points().stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
        double highest = ring(space).stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
        double foot = ring(space).stream().mapToDouble(Vector3D::getZ).min().orElseThrow();
        assertThat(dome.measures().heightMm() / Samples.R).isCloseTo(top - lowest(space), within(1e-12));
        assertThat(dome.measures().baseSpreadMm() / Samples.R).isCloseTo(highest - foot, within(1e-12));
    }
}
