package dev.calotte.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Spoke;
import dev.calotte.dome.Strut;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.problem.CalotteException;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Domes with openings, put together again from what remains. */
class OpeningLawsTest {

    private static final List<DomeSpec> SPECS = Samples.all().toList();

    /** A law about a dome with openings and the whole one. */
    private interface Law {
        void check(Dome opened, Dome whole);
    }

    private static void each(Law law) {
        Cases.each(150, (random, size) -> {
            Dome whole = Dome.of(SPECS.get(random.nextInt(SPECS.size())));
            opened(whole, random).ifPresent(dome -> law.check(dome, whole));
        });
    }

    /** One or two openings of a few neighbouring panels each; nothing where they cannot be. */
    private static Optional<Dome> opened(Dome whole, Random random) {
        TreeSet<Integer> free =
                new TreeSet<>(IntStream.range(0, whole.panels().size()).boxed().toList());
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            Set<Integer> panels = patch(whole, random);
            panels.retainAll(free);
            free.removeAll(panels);
            if (!panels.isEmpty()) {
                openings.add(new Opening("opening " + i, List.copyOf(panels), random.nextBoolean()));
            }
        }
        try {
            return Optional.of(whole.withOpenings(openings));
        } catch (CalotteException cannotBe) {
            assertThat(cannotBe).hasMessageStartingWith("openings: ");
            return Optional.empty();
        }
    }

    private static Set<Integer> patch(Dome whole, Random random) {
        Panel middle = whole.panels().get(random.nextInt(whole.panels().size()));
        Set<Integer> panels = new TreeSet<>(List.of(middle.index()));
        for (Spoke spoke : whole.around(middle.hubs().get(random.nextInt(3)))) {
            if (spoke.panel() != Spoke.NONE && random.nextInt(4) > 0) {
                panels.add(spoke.panel());
            }
        }
        return panels;
    }

    @Test
    void whatRemainsIsWhereItWas() {
        each((dome, whole) -> {
            for (Hub hub : dome.hubs()) {
                Hub old = whole.hubs().get(dome.wholeHub(hub.index()));
                assertThat(new Hub(old.index(), hub.position(), hub.site(), hub.row(), hub.place(), hub.open()))
                        .isEqualTo(old);
            }
            for (Strut strut : dome.struts()) {
                Strut old = whole.struts().get(dome.wholeStrut(strut.index()));
                assertThat(List.of(strut.row(), strut.place())).isEqualTo(List.of(old.row(), old.place()));
                assertThat(strut.axialAngleRad()).isEqualTo(old.axialAngleRad());
                Vector3D from = dome.hubs().get(strut.from()).position();
                Vector3D to = dome.hubs().get(strut.to()).position();
                assertThat(strut.lengthMm()).isCloseTo(from.distance(to), within(1e-9 * Samples.R));
                assertThat(dome.wholeHub(strut.from())).isEqualTo(old.from());
            }
            assertThat(dome.baseRing().stream().map(dome::wholeHub).toList())
                    .isEqualTo(whole.baseRing().stream()
                            .filter(h -> dome.hubs().stream().anyMatch(hub -> dome.wholeHub(hub.index()) == h))
                            .toList());
        });
    }

    @Test
    void panelsThatRemainCloseOverTheirStruts() {
        each((dome, whole) -> {
            int[] panelsAt = new int[dome.struts().size()];
            for (Panel panel : dome.panels()) {
                Panel old = whole.panels().get(dome.wholePanel(panel.index()));
                assertThat(List.of(panel.row(), panel.place())).isEqualTo(List.of(old.row(), old.place()));
                assertThat(panel.hubs().stream().map(dome::wholeHub).toList()).isEqualTo(old.hubs());
                for (int k = 0; k < 3; k++) {
                    Strut strut = dome.struts().get(panel.struts().get(k));
                    assertThat(List.of(strut.from(), strut.to()))
                            .containsExactlyInAnyOrder(
                                    panel.hubs().get(k), panel.hubs().get((k + 1) % 3));
                    panelsAt[strut.index()]++;
                }
            }
            for (Strut strut : dome.struts()) {
                assertThat(strut.dihedralRad().isPresent()).isEqualTo(panelsAt[strut.index()] == 2);
            }
        });
    }

    @Test
    void gapsLeadFromStrutToStrutThatRemains() {
        each((dome, whole) -> {
            int ends = 0;
            for (Hub hub : dome.hubs()) {
                List<Spoke> spokes = dome.around(hub.index());
                ends += spokes.size();
                double sum =
                        spokes.stream().mapToDouble(s -> s.gapRad().orElse(0)).sum();
                if (hub.open()) {
                    assertThat(sum).isLessThan(2 * Math.PI);
                    assertThat(spokes.get(spokes.size() - 1).gapRad()).isEmpty();
                } else {
                    assertThat(sum).isCloseTo(2 * Math.PI, within(1e-12));
                }
                for (int i = 0; i < spokes.size(); i++) {
                    checkGap(dome, hub, spokes.get(i), spokes.get((i + 1) % spokes.size()));
                }
            }
            assertThat(ends).isEqualTo(2 * dome.struts().size());
        });
    }

    private static void checkGap(Dome dome, Hub hub, Spoke spoke, Spoke next) {
        if (spoke.gapRad().isPresent() && spoke.strut() != next.strut()) {
            Vector3D up = hub.position().normalize();
            Vector3D from = flat(dome, hub, spoke.strut(), up);
            Vector3D to = flat(dome, hub, next.strut(), up);
            double angle = Math.atan2(up.dotProduct(from.crossProduct(to)), from.dotProduct(to));
            assertThat(spoke.gapRad().getAsDouble()).isCloseTo(angle < 0 ? angle + 2 * Math.PI : angle, within(1e-9));
        }
        if (spoke.panel() != Spoke.NONE) {
            assertThat(dome.panels().get(spoke.panel()).struts())
                    .containsExactlyInAnyOrder(spoke.strut(), next.strut(), spoke.opposite());
        }
    }

    private static Vector3D flat(Dome dome, Hub hub, int strut, Vector3D up) {
        Strut s = dome.struts().get(strut);
        int there = s.from() == hub.index() ? s.to() : s.from();
        Vector3D way = dome.hubs().get(there).position().subtract(hub.position());
        return way.subtract(up.scalarMultiply(way.dotProduct(up)));
    }

    @Test
    void strutsGoOnlyWhereNoPanelIsLeft() {
        each((dome, whole) -> {
            TreeSet<Integer> left = new TreeSet<>();
            dome.struts().forEach(s -> left.add(dome.wholeStrut(s.index())));
            TreeSet<Integer> held = new TreeSet<>();
            TreeSet<Integer> removed = new TreeSet<>();
            for (Opening opening : dome.openings()) {
                opening.panels().forEach(p -> (opening.removesStruts() ? removed : held).add(p));
            }
            for (Panel panel : whole.panels()) {
                if (!removed.contains(panel.index())) {
                    assertThat(left).containsAll(panel.struts());
                }
            }
            TreeSet<Integer> expected = new TreeSet<>();
            whole.panels().stream().filter(p -> !removed.contains(p.index())).forEach(p -> expected.addAll(p.struts()));
            assertThat(left).isEqualTo(expected);
        });
    }

    @Test
    void kindsKeepTheirNumbersAndCountWhatRemains() {
        each((dome, whole) -> {
            Parts parts = Parts.of(dome, Joinery.nodeToNode());
            Parts before = parts.whole();
            Map<String, Integer> counts = new TreeMap<>();
            for (Strut strut : dome.struts()) {
                String mark = parts.kindOf(strut).mark();
                assertThat(mark)
                        .isEqualTo(before.kindOf(whole.struts().get(dome.wholeStrut(strut.index())))
                                .mark());
                counts.merge(mark, 1, Integer::sum);
            }
            for (Panel panel : dome.panels()) {
                String mark = parts.kindOf(panel).mark();
                assertThat(mark)
                        .isEqualTo(before.kindOf(whole.panels().get(dome.wholePanel(panel.index())))
                                .mark());
                counts.merge(mark, 1, Integer::sum);
            }
            dome.hubs().forEach(hub -> counts.merge(parts.kindOf(hub).mark(), 1, Integer::sum));
            Map<String, Integer> said = new TreeMap<>();
            parts.strutKinds().forEach(kind -> said.put(kind.mark(), kind.count()));
            parts.panelKinds().forEach(kind -> said.put(kind.mark(), kind.count()));
            parts.hubKinds().forEach(kind -> said.put(kind.mark(), kind.count()));
            assertThat(said).isEqualTo(counts);
            int dihedrals = parts.strutKinds().stream()
                    .flatMap(kind -> kind.dihedrals().stream())
                    .mapToInt(d -> d.count())
                    .sum();
            assertThat(dihedrals).isEqualTo((int) dome.struts().stream()
                    .filter(s -> s.dihedralRad().isPresent())
                    .count());
        });
    }

    @Test
    void kindsCarryTheDihedralsThatRemain() {
        each((dome, whole) -> {
            Parts parts = Parts.of(dome, Joinery.nodeToNode());
            for (StrutKind kind : parts.strutKinds()) {
                for (StrutKind.Dihedral dihedral : kind.dihedrals()) {
                    long carried = dome.struts().stream()
                            .filter(s -> parts.kindOf(s).number() == kind.number())
                            .filter(s -> Math.abs(s.dihedralRad().orElse(0) - dihedral.angleRad()) < 5e-9)
                            .count();
                    assertThat(dihedral.count()).isEqualTo((int) carried);
                }
            }
        });
    }

    /** A hub that no opening touches keeps its kind; one that lost something has the angles that are really there. */
    @Test
    void hubsOfAKindHaveItsAnglesAndUntouchedOnesTheirMarks() {
        each((dome, whole) -> {
            Parts parts = Parts.of(dome, Joinery.nodeToNode());
            for (Hub hub : dome.hubs()) {
                List<Spoke> spokes = dome.around(hub.index());
                HubKind kind = parts.kindOf(hub);
                assertThat(kind.struts()).hasSameSizeAs(spokes);
                assertThat(kind.open()).isEqualTo(hub.open());
                List<Double> gaps = spokes.stream()
                        .filter(s -> s.gapRad().isPresent())
                        .map(s -> s.gapRad().getAsDouble())
                        .toList();
                assertThat(turns(gaps, hub.open())).anySatisfy(turn -> assertClose(turn, kind.gapsRad()));
                int old = dome.wholeHub(hub.index());
                if (whole.around(old).stream()
                                .filter(s -> s.panel() != Spoke.NONE)
                                .count()
                        == spokes.stream().filter(s -> s.panel() != Spoke.NONE).count()) {
                    assertThat(kind.mark())
                            .isEqualTo(
                                    parts.whole().kindOf(whole.hubs().get(old)).mark());
                }
            }
        });
    }

    private static List<List<Double>> turns(List<Double> gaps, boolean open) {
        return IntStream.range(0, open ? 1 : gaps.size())
                .mapToObj(by -> IntStream.range(0, gaps.size())
                        .mapToObj(i -> gaps.get((i + by) % gaps.size()))
                        .toList())
                .toList();
    }

    private static void assertClose(List<Double> one, List<Double> other) {
        assertThat(one).hasSameSizeAs(other);
        for (int i = 0; i < one.size(); i++) {
            assertThat(one.get(i)).isCloseTo(other.get(i), within(2e-9));
        }
    }
}
