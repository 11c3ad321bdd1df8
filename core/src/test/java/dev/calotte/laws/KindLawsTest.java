package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Spoke;
import dev.calotte.parts.Hand;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KindLawsTest {

    private static final String ALL = "dev.calotte.laws.Samples#all";

    private static Parts parts(DomeSpec spec) {
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    private static <T, K> void checkCounts(
            List<T> things, Function<T, K> kindOf, List<K> kinds, ToIntFunction<K> count, Function<K, String> mark) {
        Map<String, Integer> found = new TreeMap<>();
        things.forEach(thing -> found.merge(mark.apply(kindOf.apply(thing)), 1, Integer::sum));
        Map<String, Integer> told = new TreeMap<>();
        kinds.forEach(kind -> told.put(mark.apply(kind), count.applyAsInt(kind)));
        assertThat(found).isEqualTo(told);
        assertThat(told).hasSameSizeAs(kinds);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void everyPartIsCountedInItsKind(DomeSpec spec) {
        Parts parts = parts(spec);
        Dome dome = parts.dome();
        checkCounts(dome.struts(), parts::kindOf, parts.strutKinds(), StrutKind::count, StrutKind::mark);
        checkCounts(dome.panels(), parts::kindOf, parts.panelKinds(), PanelKind::count, PanelKind::mark);
        checkCounts(dome.hubs(), parts::kindOf, parts.hubKinds(), HubKind::count, HubKind::mark);
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void strutsOfAKindAreEqualAndKindsRise(DomeSpec spec) {
        Parts parts = parts(spec);
        parts.dome().struts().forEach(strut -> {
            StrutKind kind = parts.kindOf(strut);
            assertThat(strut.lengthMm()).isCloseTo(kind.lengthMm(), within(1e-9 * Samples.R));
            strut.dihedralRad()
                    .ifPresent(angle ->
                            assertThat(kind.dihedrals()).anyMatch(d -> Math.abs(d.angleRad() - angle) < 1e-9));
        });
        for (int i = 1; i < parts.strutKinds().size(); i++) {
            double gap = parts.strutKinds().get(i).chordFactor()
                    - parts.strutKinds().get(i - 1).chordFactor();
            assertThat(gap).isGreaterThan(1e-9);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelsOfAKindHaveItsSidesInItsOrder(DomeSpec spec) {
        Parts parts = parts(spec);
        parts.dome().panels().forEach(panel -> {
            PanelKind kind = parts.kindOf(panel);
            List<Integer> around = panel.struts().stream()
                    .map(i -> parts.kindOf(parts.dome().struts().get(i)).number())
                    .toList();
            assertThat(around.stream().sorted().toList()).isEqualTo(kind.struts());
            assertThat(hand(around)).isEqualTo(kind.hand());
        });
    }

    private static Hand hand(List<Integer> around) {
        int least = around.indexOf(around.stream().min(Integer::compare).orElseThrow());
        int second = around.get((least + 1) % 3);
        int third = around.get((least + 2) % 3);
        boolean twoEqual = around.stream().distinct().count() < 3;
        return twoEqual ? Hand.NONE : second < third ? Hand.LEFT : Hand.RIGHT;
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void panelKindsRiseInAreaAndStandLeftBeforeRight(DomeSpec spec) {
        List<PanelKind> kinds = parts(spec).panelKinds();
        for (int i = 1; i < kinds.size(); i++) {
            PanelKind one = kinds.get(i - 1);
            PanelKind next = kinds.get(i);
            assertThat(next.triangle().area()).isGreaterThan(one.triangle().area() - 1e-9 * Samples.R * Samples.R);
            boolean twins = next.number() == one.number();
            assertThat(twins || next.number() == one.number() + 1).isTrue();
            assertThat(twins).isEqualTo(one.hand() == Hand.LEFT && next.twin().isPresent());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void twinsNameEachOther(DomeSpec spec) {
        Parts parts = parts(spec);
        Map<String, Optional<String>> twins = new TreeMap<>();
        parts.panelKinds().forEach(kind -> twins.put(kind.mark(), kind.twin()));
        parts.hubKinds().forEach(kind -> twins.put(kind.mark(), kind.twin()));
        twins.forEach((mark, twin) -> twin.ifPresent(other -> {
            assertThat(twins.get(other)).contains(mark);
            assertThat(other.substring(0, other.length() - 1)).isEqualTo(mark.substring(0, mark.length() - 1));
        }));
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void hubsOfAKindHaveItsGapsAndAngles(DomeSpec spec) {
        Parts parts = parts(spec);
        parts.dome().hubs().forEach(hub -> {
            HubKind kind = parts.kindOf(hub);
            List<Spoke> spokes = parts.dome().around(hub.index());
            assertThat(kind.open()).isEqualTo(hub.open());
            assertThat(kind.gapsRad()).hasSize(spokes.size() - (hub.open() ? 1 : 0));
            assertThat(turns(parts, kind, spokes)).isTrue();
        });
    }

    /** Whether some turn of the spokes reads as the kind does. */
    private static boolean turns(Parts parts, HubKind kind, List<Spoke> spokes) {
        int n = spokes.size();
        for (int turn = 0; turn < n; turn++) {
            boolean fits = true;
            for (int i = 0; i < n; i++) {
                Spoke spoke = spokes.get((i + turn) % n);
                StrutKind strut = parts.kindOf(parts.dome().struts().get(spoke.strut()));
                boolean last = i >= kind.gapsRad().size();
                fits &= strut.number() == kind.struts().get(i)
                        && strut.axialAngleRad() == kind.axialAnglesRad().get(i)
                        && (last
                                || Math.abs(spoke.gapRad().orElse(9)
                                                - kind.gapsRad().get(i))
                                        < 1e-9);
            }
            if (fits) {
                return true;
            }
        }
        return false;
    }
}
