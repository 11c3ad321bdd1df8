package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StrutLawsTest {

    private static final String ALL = "dev.calotte.laws.Samples#all";

    @ParameterizedTest
    @MethodSource(ALL)
    void lengthsAreFromHubToHub(DomeSpec spec) {
        Space space = Space.of(spec);
        for (Strut strut : space.dome().struts()) {
            assertThat(strut.lengthMm() / Samples.R)
                    .isCloseTo(space.along(strut).getNorm(), within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void axialAngleIsFromTheStrutToTheTangentPlaneAtEitherHub(DomeSpec spec) {
        Space space = Space.of(spec);
        for (Strut strut : space.dome().struts()) {
            Vector3D along = space.along(strut);
            double toRadius = Vector3D.angle(along, space.points().get(strut.from()));
            double atTheEnd = Vector3D.angle(along, space.points().get(strut.to()));
            assertThat(toRadius - Math.PI / 2).isCloseTo(strut.axialAngleRad(), within(1e-12));
            assertThat(Math.PI / 2 - atTheEnd).isCloseTo(strut.axialAngleRad(), within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void dihedralsAreMeasuredThroughTheInside(DomeSpec spec) {
        Space space = Space.of(spec);
        List<List<Panel>> sides = sides(space);
        for (Strut strut : space.dome().struts()) {
            List<Panel> two = sides.get(strut.index());
            assertThat(strut.dihedralRad().isPresent()).isEqualTo(two.size() == 2);
            strut.dihedralRad()
                    .ifPresent(angle ->
                            assertThat(angle).isCloseTo(space.dihedral(strut, two.get(0), two.get(1)), within(1e-9)));
        }
    }

    /** The one or two panels of each strut. */
    private static List<List<Panel>> sides(Space space) {
        List<List<Panel>> sides = Stream.generate(() -> (List<Panel>) new ArrayList<Panel>())
                .limit(space.dome().struts().size())
                .toList();
        space.dome()
                .panels()
                .forEach(panel -> panel.struts().forEach(s -> sides.get(s).add(panel)));
        return sides;
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelsListTheStrutsBetweenTheirHubs(DomeSpec spec) {
        Space space = Space.of(spec);
        for (Panel panel : space.dome().panels()) {
            for (int k = 0; k < 3; k++) {
                Strut strut = space.dome().struts().get(panel.struts().get(k));
                assertThat(List.of(strut.from(), strut.to()))
                        .containsExactlyInAnyOrder(
                                panel.hubs().get(k), panel.hubs().get((k + 1) % 3));
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void baseRingRunsRoundOverTheStrutsWithOnePanel(DomeSpec spec) {
        Space space = Space.of(spec);
        List<Integer> ring = space.dome().baseRing();
        List<List<Integer>> sides = space.dome().struts().stream()
                .filter(s -> s.dihedralRad().isEmpty())
                .map(s -> List.of(s.from(), s.to()))
                .toList();
        assertThat(sides).hasSameSizeAs(ring);
        for (int i = 0; i < ring.size(); i++) {
            int from = ring.get(i);
            int to = ring.get((i + 1) % ring.size());
            assertThat(sides).contains(List.of(Math.min(from, to), Math.max(from, to)));
            assertThat(space.dome().hubs().get(from).open()).isTrue();
        }
        assertThat(ring.stream().distinct()).hasSameSizeAs(ring);
        assertThat(space.dome().hubs().stream().filter(h -> h.open())).hasSameSizeAs(ring);
    }
}
