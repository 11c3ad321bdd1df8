package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OrderLawsTest {

    private static final String ALL = "dev.calotte.laws.Samples#all";

    /** What is counted: its row, its place in it, and a point that its bearing is taken of. */
    private record Counted(int index, int row, int place, Vector3D point) {

        double bearing() {
            if (Math.abs(point.getX()) < 1e-9 && Math.abs(point.getY()) < 1e-9) {
                return 0;
            }
            double bearing = StrictMath.atan2(point.getY(), point.getX());
            return bearing < -1e-9 ? bearing + 2 * Math.PI : Math.abs(bearing) < 1e-9 ? 0 : bearing;
        }
    }

    private static void checkOrder(List<Counted> things) {
        for (int i = 0; i < things.size(); i++) {
            Counted thing = things.get(i);
            Counted before = i == 0 ? null : things.get(i - 1);
            assertThat(thing.index()).isEqualTo(i);
            if (before == null || thing.row() != before.row()) {
                assertThat(thing.place()).isEqualTo(1);
                assertThat(before == null || thing.row() > before.row()).isTrue();
            } else {
                assertThat(thing.place()).isEqualTo(before.place() + 1);
                assertThat(thing.bearing()).isGreaterThan(before.bearing() - 2e-9);
                if (thing.bearing() < before.bearing() + 1e-12) {
                    assertThat(thing.point().getZ()).isLessThan(before.point().getZ() + 1e-12);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void hubsAreCountedRowByRowFromTheStartRay(DomeSpec spec) {
        Space space = Space.of(spec);
        checkOrder(space.dome().hubs().stream()
                .map(h -> new Counted(
                        h.index(), h.row(), h.place(), space.points().get(h.index())))
                .toList());
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void strutsAreCountedRowByRowFromTheStartRay(DomeSpec spec) {
        Space space = Space.of(spec);
        checkOrder(space.dome().struts().stream()
                .map(s -> new Counted(s.index(), s.row(), s.place(), middle(space, s.from(), s.to())))
                .toList());
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelsAreCountedRowByRowFromTheStartRay(DomeSpec spec) {
        Space space = Space.of(spec);
        checkOrder(space.dome().panels().stream()
                .map(p -> new Counted(
                        p.index(),
                        p.row(),
                        p.place(),
                        middle(space, p.hubs().get(0), p.hubs().get(1), p.hubs().get(2))))
                .toList());
    }

    private static Vector3D middle(Space space, int... hubs) {
        return Arrays.stream(hubs)
                .mapToObj(space.points()::get)
                .reduce(Vector3D.ZERO, Vector3D::add)
                .scalarMultiply(1.0 / hubs.length);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void aRowIsTheNumberOfStrutsToTheCrown(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        int[] nearest = new int[dome.hubs().size()];
        Arrays.fill(nearest, Integer.MAX_VALUE);
        for (Strut strut : dome.struts()) {
            int from = dome.hubs().get(strut.from()).row();
            int to = dome.hubs().get(strut.to()).row();
            assertThat(to - from).isBetween(0, 1);
            assertThat(strut.row()).isEqualTo(to);
            assertThat(strut.from()).isLessThan(strut.to());
            nearest[strut.to()] = Math.min(nearest[strut.to()], from);
        }
        for (Hub hub : dome.hubs()) {
            assertThat(hub.row() == 0 || nearest[hub.index()] == hub.row() - 1).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void theCrownIsTheTop(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        double top =
                dome.hubs().stream().mapToDouble(h -> h.position().getZ()).max().orElseThrow();
        for (Hub hub : dome.hubs()) {
            assertThat(hub.row() == 0).isEqualTo(hub.position().getZ() > top - 1e-9 * Samples.R);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelsBeginWithTheirLowestHub(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        for (Panel panel : dome.panels()) {
            int lowest = panel.hubs().stream().mapToInt(h -> h).min().orElseThrow();
            int row = IntStream.range(0, 3)
                    .map(k -> dome.hubs().get(panel.hubs().get(k)).row())
                    .min()
                    .orElseThrow();
            assertThat(panel.hubs().get(0)).isEqualTo(lowest);
            assertThat(panel.row()).isEqualTo(row + 1);
        }
    }
}
