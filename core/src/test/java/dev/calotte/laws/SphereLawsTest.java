package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Panel;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SphereLawsTest {

    private static final String SPHERES = "dev.calotte.laws.Samples#spheres";
    private static final String ALL = "dev.calotte.laws.Samples#all";

    @ParameterizedTest
    @MethodSource(SPHERES)
    void countsFollowTheTriangulationNumber(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        int faces = spec.solid().faceCount();
        long t = spec.breakdown().triangulationNumber();
        assertThat(dome.panels().size()).isEqualTo((int) (faces * t));
        assertThat(dome.struts().size()).isEqualTo((int) (faces * t * 3 / 2));
        assertThat(dome.hubs().size()).isEqualTo((int) (faces * t / 2 + 2));
    }

    @ParameterizedTest
    @MethodSource(SPHERES)
    void defectsAddUpToTwoFullTurns(DomeSpec spec) {
        Space space = Space.of(spec);
        double angles = space.dome().panels().stream()
                .mapToDouble(p -> space.angle(p, 0) + space.angle(p, 1) + space.angle(p, 2))
                .sum();
        double turns = 2 * Math.PI * space.points().size();
        assertThat(turns - angles).isCloseTo(4 * Math.PI, within(1e-12 * turns));
    }

    @ParameterizedTest
    @MethodSource(SPHERES)
    void panelsCoverTheWholeSkyOnce(DomeSpec spec) {
        Space space = Space.of(spec);
        double sky =
                space.dome().panels().stream().mapToDouble(space::solidAngle).sum();
        assertThat(sky).isCloseTo(4 * Math.PI, within(1e-12 * 4 * Math.PI));
    }

    @ParameterizedTest
    @MethodSource(SPHERES)
    void volumeIsAThirdOfAreaTimesDistance(DomeSpec spec) {
        Space space = Space.of(spec);
        double r = spec.size().value();
        assertThat(space.dome().measures().volumeMm3() / r / r / r)
                .isCloseTo(space.volumeFromCentre(), within(1e-12 * space.volumeFromCentre()));
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void everyHubLiesAtTheRadius(DomeSpec spec) {
        for (Vector3D point : Space.of(spec).points()) {
            assertThat(point.getNorm()).isCloseTo(1, within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelsAreCounterClockwiseSeenFromOutside(DomeSpec spec) {
        Space space = Space.of(spec);
        for (Panel panel : space.dome().panels()) {
            assertThat(space.solidAngle(panel)).isPositive();
            assertThat(space.normal(panel).dotProduct(space.corner(panel, 0))).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void surfaceIsTheSumOfItsPanels(DomeSpec spec) {
        Space space = Space.of(spec);
        double r = spec.size().value();
        double sum = space.dome().panels().stream().mapToDouble(space::area).sum();
        assertThat(space.dome().measures().surfaceAreaMm2() / r / r).isCloseTo(sum, within(1e-12 * sum));
    }

    @ParameterizedTest
    @EnumSource(Solid.class)
    void areaTendsToTheSpheresWithTheSquareOfTheFrequency(Solid solid) {
        double[] deficit = new double[3];
        for (int i = 0; i < 3; i++) {
            Dome dome = Dome.of(Samples.spec(solid, Breakdown.of(8 << i)));
            deficit[i] = 1 - dome.measures().surfaceAreaMm2() / (4 * Math.PI * Samples.R * Samples.R);
        }
        assertThat(deficit[2]).isPositive();
        double first = Math.abs(deficit[0] / deficit[1] - 4);
        double second = Math.abs(deficit[1] / deficit[2] - 4);
        assertThat(second).isLessThan(0.3).isLessThan(0.3 * first);
    }

    @Test
    void aWholeSphereHasNoFloor() {
        Dome dome = Dome.of(Samples.spec(Solid.ICOSAHEDRON, Breakdown.of(2)));
        assertThat(dome.baseRing()).isEmpty();
        assertThat(dome.measures().floorDiameterMm()).isZero();
        assertThat(dome.measures().floorAreaMm2()).isZero();
        assertThat(dome.measures().baseSpreadMm()).isZero();
        assertThat(dome.measures().heightMm()).isCloseTo(2 * Samples.R, within(1e-12 * Samples.R));
        assertThat(dome.notes()).isEmpty();
    }
}
