package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HubLawsTest {

    private static final String ALL = "dev.calotte.laws.Samples#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void hubGapsAddUpToAFullTurn(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        for (Hub hub : dome.hubs()) {
            double sum =
                    gaps(dome.around(hub.index())).stream().mapToDouble(g -> g).sum();
            if (hub.open()) {
                assertThat(sum).isPositive().isLessThan(2 * Math.PI);
            } else {
                assertThat(sum).isCloseTo(2 * Math.PI, within(1e-12));
            }
        }
    }

    private static List<Double> gaps(List<Spoke> spokes) {
        return spokes.stream()
                .map(Spoke::gapRad)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::orElseThrow)
                .toList();
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void anOpenHubHasOneGapFewerThanStruts(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        for (Hub hub : dome.hubs()) {
            List<Spoke> spokes = dome.around(hub.index());
            assertThat(gaps(spokes)).hasSize(spokes.size() - (hub.open() ? 1 : 0));
            Spoke last = spokes.get(spokes.size() - 1);
            assertThat(last.gapRad().isPresent()).isEqualTo(!hub.open());
            assertThat(last.panel() == Spoke.NONE).isEqualTo(hub.open());
            assertThat(last.opposite() == Spoke.NONE).isEqualTo(hub.open());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void everyStrutLeavesItsTwoHubs(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        int[] ends = new int[dome.struts().size()];
        for (Hub hub : dome.hubs()) {
            for (Spoke spoke : dome.around(hub.index())) {
                Strut strut = dome.struts().get(spoke.strut());
                assertThat(hub.index()).isIn(strut.from(), strut.to());
                ends[strut.index()]++;
            }
        }
        assertThat(ends).containsOnly(2);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void betweenTwoSpokesLiesTheirPanel(DomeSpec spec) {
        Dome dome = Dome.of(spec);
        for (Hub hub : dome.hubs()) {
            List<Spoke> spokes = dome.around(hub.index());
            for (int i = 0; i < spokes.size(); i++) {
                Spoke spoke = spokes.get(i);
                if (spoke.panel() != Spoke.NONE) {
                    int next = spokes.get((i + 1) % spokes.size()).strut();
                    Panel panel = dome.panels().get(spoke.panel());
                    assertThat(panel.hubs()).contains(hub.index());
                    assertThat(panel.struts()).containsExactlyInAnyOrder(spoke.strut(), next, spoke.opposite());
                }
            }
        }
    }

    /** From one spoke to the next, counter-clockwise seen from outside, on the plane across the hub's radius. */
    @ParameterizedTest
    @MethodSource(ALL)
    void gapsAreMeasuredOnTheTangentPlane(DomeSpec spec) {
        Space space = Space.of(spec);
        for (Hub hub : space.dome().hubs()) {
            List<Spoke> spokes = space.dome().around(hub.index());
            for (int i = 0; i < spokes.size(); i++) {
                Vector3D u = onPlane(space, hub, spokes.get(i));
                Vector3D v = onPlane(space, hub, spokes.get((i + 1) % spokes.size()));
                double turn = Vector3D.angle(u, v);
                boolean left = u.crossProduct(v).dotProduct(space.points().get(hub.index())) > 0;
                spokes.get(i)
                        .gapRad()
                        .ifPresent(gap -> assertThat(gap).isCloseTo(left ? turn : 2 * Math.PI - turn, within(1e-12)));
            }
        }
    }

    private static Vector3D onPlane(Space space, Hub hub, Spoke spoke) {
        Strut strut = space.dome().struts().get(spoke.strut());
        Vector3D n = space.points().get(hub.index());
        Vector3D end = space.points().get(strut.from() == hub.index() ? strut.to() : strut.from());
        return end.subtract(n.scalarMultiply(end.dotProduct(n)));
    }
}
