package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PatternLawsTest {

    private static final double SAME = 1e-9 * Assembly.R;

    private static Cover random(Random random) {
        double narrow = 30 * random.nextDouble() - 10;
        double wide = random.nextBoolean() ? narrow : narrow + 10;
        Allowances allowances = new Allowances(narrow, wide, 40 * random.nextDouble() - 5, Corner.POINTED, 0);
        Treatment treatment = new Treatment(false, random.nextBoolean(), Splitting.NEVER, random.nextBoolean());
        return Cover.of("skin")
                .with(new Sheeting(60 * random.nextDouble() - 10, 12 * random.nextInt(2), random.nextBoolean()))
                .with(allowances)
                .with(treatment);
    }

    @Test
    void netPatternsInThePlaneOfTheHubsCloseTheDome() {
        Cases.each(24, (random, size) -> {
            Parts parts = Assembly.random(random);
            Assembly assembly = new Assembly(Patterns.of(parts, Cover.of("net")));
            for (Panel panel : parts.dome().panels()) {
                Pattern pattern = assembly.patterns().of(panel);
                Vector3D[] hubs = assembly.hubs(panel);
                for (int corner = 0; corner < 3; corner++) {
                    Vector3D placed =
                            assembly.place(panel, pattern.whole().net().corner(corner));
                    assertThat(placed.distance(hubs[corner])).isLessThan(SAME);
                }
            }
        });
    }

    @Test
    void netSidesOfNeighboursLieOnOneLineHoweverFarOutTheyAre() {
        Cases.each(24, (random, size) -> {
            Parts parts = Assembly.random(random);
            Assembly assembly = new Assembly(Patterns.of(parts, random(random)));
            for (Strut strut : parts.dome().struts()) {
                List<Panel> panels = assembly.at(strut.index());
                if (panels.size() == 2) {
                    double from = 0.3 * strut.lengthMm();
                    Vector3D one = onNet(assembly, panels.get(0), strut, from);
                    Vector3D other = onNet(assembly, panels.get(1), strut, strut.lengthMm() - from);
                    assertThat(one.distance(other)).isLessThan(SAME);
                }
            }
        });
    }

    private static Vector3D onNet(Assembly assembly, Panel panel, Strut strut, double along) {
        int side = assembly.side(panel, strut.index());
        return assembly.place(panel, Assembly.onNet(assembly.patterns().of(panel), side, along));
    }

    @Test
    void cutEdgesLieOutsideTheNetOnesByExactlyTheAllowance() {
        Cases.each(24, (random, size) -> {
            Parts parts = Assembly.random(random);
            Cover cover = random(random);
            Patterns patterns = Patterns.of(parts, cover);
            Assembly assembly = new Assembly(patterns);
            for (Strut strut : parts.dome().struts()) {
                List<Double> allowances = new ArrayList<>();
                for (Panel panel : assembly.at(strut.index())) {
                    Pattern pattern = patterns.of(panel);
                    int side = assembly.side(panel, strut.index());
                    Vector2D outward = pattern.whole().net().outward(side);
                    double net = pattern.whole().net().corner(side).dotProduct(outward);
                    allowances.add(pattern.whole().outline().reach(outward) - net);
                    assertThat(allowances.get(allowances.size() - 1))
                            .isCloseTo(pattern.sides().get(side).allowanceMm(), within(SAME));
                }
                Allowances a = cover.allowances();
                double both = allowances.stream().mapToDouble(d -> d).sum();
                double expected = allowances.size() == 2 ? a.narrowMm() + a.wideMm() : a.baseMm();
                assertThat(both).isCloseTo(expected, within(SAME));
            }
        });
    }

    @Test
    void theUpperPanelHasTheWideAllowance() {
        Parts parts = Assembly.fiveNinths();
        Cover cover = Cover.of("felled").with(new Allowances(8, 18, 50, Corner.BLUNT, 0));
        Patterns patterns = Patterns.of(parts, cover);
        Assembly assembly = new Assembly(patterns);
        int unlike = 0;
        for (Strut strut : parts.dome().struts()) {
            List<Panel> panels = assembly.at(strut.index());
            if (panels.size() == 2) {
                double rise = height(assembly, panels.get(0)) - height(assembly, panels.get(1));
                Side first = patterns.of(panels.get(0)).sides().get(assembly.side(panels.get(0), strut.index()));
                Side second = patterns.of(panels.get(1)).sides().get(assembly.side(panels.get(1), strut.index()));
                assertThat(List.of(first.lap(), second.lap())).containsExactlyInAnyOrder(Lap.OVER, Lap.UNDER);
                if (Math.abs(rise) > 1) {
                    unlike++;
                    assertThat(first.lap()).isEqualTo(rise > 0 ? Lap.OVER : Lap.UNDER);
                }
                assertThat(first.allowanceMm()).isEqualTo(first.lap() == Lap.OVER ? 18 : 8);
                assertThat(second.allowanceMm()).isEqualTo(second.lap() == Lap.OVER ? 18 : 8);
            } else {
                assertThat(patterns.of(panels.get(0))
                                .sides()
                                .get(assembly.side(panels.get(0), strut.index()))
                                .allowanceMm())
                        .isEqualTo(50);
            }
        }
        assertThat(unlike).isGreaterThan(80);
    }

    private static double height(Assembly assembly, Panel panel) {
        double z = 0;
        for (Vector3D hub : assembly.hubs(panel)) {
            z += hub.getZ();
        }
        return z / 3;
    }

    @Test
    void everyPanelHasOnePatternOfItsKindAndCountsAddUp() {
        Cases.each(24, (random, size) -> {
            Parts parts = Assembly.random(random);
            Patterns patterns = Patterns.of(parts, random(random));
            int[] counted = new int[patterns.list().size()];
            for (Panel panel : parts.dome().panels()) {
                Pattern pattern = patterns.of(panel);
                assertThat(pattern.kind()).isEqualTo(parts.kindOf(panel));
                counted[patterns.list().indexOf(pattern)]++;
            }
            for (int i = 0; i < counted.length; i++) {
                assertThat(patterns.list().get(i).count()).isEqualTo(counted[i]);
            }
            assertThat(patterns.list()).extracting(Pattern::mark).doesNotHaveDuplicates();
        });
    }

    @Test
    void theGrainRunsSquareToTheSideThatIsMostNearlyLevel() {
        Parts parts = Assembly.fiveNinths();
        Treatment grain = new Treatment(false, true, Splitting.NEVER, false);
        Patterns patterns = Patterns.of(parts, Cover.of("flutes").with(grain));
        Assembly assembly = new Assembly(patterns);
        for (Panel panel : parts.dome().panels()) {
            Pattern pattern = patterns.of(panel);
            double turn = pattern.whole().grainRad().orElseThrow();
            Vector3D along = assembly.place(panel, new Vector2D(Math.cos(turn), Math.sin(turn)))
                    .subtract(assembly.place(panel, Vector2D.ZERO));
            Vector3D[] hubs = assembly.hubs(panel);
            double least = Double.POSITIVE_INFINITY;
            double square = Double.NaN;
            for (int k = 0; k < 3; k++) {
                Vector3D side = hubs[(k + 1) % 3].subtract(hubs[k]).normalize();
                if (Math.abs(side.getZ()) < least - 1e-12) {
                    least = Math.abs(side.getZ());
                    square = side.dotProduct(along);
                }
            }
            assertThat(square).isCloseTo(0, within(1e-12));
        }
    }
}
