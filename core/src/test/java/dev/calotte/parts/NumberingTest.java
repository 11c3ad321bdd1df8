package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NumberingTest {

    private static final Comparator<List<Integer>> BY_KINDS =
            Comparator.comparing(list -> list.stream().mapToInt(i -> i).toArray(), Arrays::compare);

    static Stream<Parts> domes() {
        Keep rows = new Keep.Rows(5, 12);
        Keep above = new Keep.AboveHeight(0);
        return Stream.of(
                parts(Solid.ICOSAHEDRON, Breakdown.of(4), rows),
                parts(Solid.ICOSAHEDRON, new Breakdown(3, 1), above),
                parts(Solid.OCTAHEDRON, new Breakdown(1, 2), above),
                parts(Solid.TETRAHEDRON, new Breakdown(3, 2), new Keep.Whole()),
                parts(Solid.OCTAHEDRON, new Breakdown(2, 2), new Keep.Whole()));
    }

    private static Parts parts(Solid solid, Breakdown breakdown, Keep keep) {
        return Parts.of(Dome.of(DomeSpec.of(solid, breakdown, Size.radius(1000)).withKeep(keep)), Joinery.nodeToNode());
    }

    @Test
    void panelsAreNumberedByAreaAndNotByTheirSides() {
        for (double radius : new double[] {0.01, 1000}) {
            DomeSpec spec = DomeSpec.of(Solid.TETRAHEDRON, new Breakdown(4, 1), Size.radius(radius));
            List<PanelKind> kinds =
                    Parts.of(Dome.of(spec), Joinery.nodeToNode()).panelKinds();
            boolean sidesFall = false;
            for (int i = 1; i < kinds.size(); i++) {
                assertThat(kinds.get(i).triangle().area())
                        .isGreaterThan(kinds.get(i - 1).triangle().area());
                sidesFall |=
                        BY_KINDS.compare(kinds.get(i - 1).struts(), kinds.get(i).struts()) > 0;
            }
            assertThat(sidesFall).as("the two orders differ").isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void hubsOfFewerStrutsComeFirstAndClosedBeforeOpen(Parts parts) {
        List<HubKind> kinds = parts.hubKinds();
        for (int i = 1; i < kinds.size(); i++) {
            HubKind one = kinds.get(i - 1);
            HubKind next = kinds.get(i);
            assertThat(next.struts().size()).isGreaterThanOrEqualTo(one.struts().size());
            if (next.struts().size() == one.struts().size()) {
                assertThat(one.open() && !next.open()).isFalse();
                if (next.open() == one.open()) {
                    assertThat(BY_KINDS.compare(shape(one), shape(next))).isLessThanOrEqualTo(0);
                }
            }
        }
    }

    /** The smaller of a circle and its mirror image. */
    private static List<Integer> shape(HubKind kind) {
        return Collections.min(
                List.of(smallest(kind.struts(), kind.open()), smallest(reversed(kind.struts()), kind.open())),
                BY_KINDS);
    }

    private static List<Integer> reversed(List<Integer> list) {
        return IntStream.range(0, list.size())
                .mapToObj(i -> list.get(list.size() - 1 - i))
                .toList();
    }

    private static List<Integer> smallest(List<Integer> list, boolean open) {
        return IntStream.range(0, open ? 1 : list.size())
                .mapToObj(turn -> turned(list, turn))
                .min(BY_KINDS)
                .orElseThrow();
    }

    private static List<Integer> turned(List<Integer> list, int turn) {
        return IntStream.range(0, list.size())
                .mapToObj(i -> list.get((i + turn) % list.size()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("domes")
    void hubsAreListedFromTheirSmallestTurn(Parts parts) {
        for (HubKind kind : parts.hubKinds()) {
            assertThat(kind.struts()).isEqualTo(smallest(kind.struts(), kind.open()));
            if (kind.hand() == Hand.LEFT) {
                assertThat(kind.struts()).isEqualTo(shape(kind));
            }
        }
    }
}
