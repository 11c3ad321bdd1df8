package dev.calotte.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LevelBaseTest {

    private static final double R = 3000;
    private static final DomeSpec THREE =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(R)).withKeep(new Keep.Rows(5, 9));
    private static final DomeSpec LEVEL = THREE.withBase(Base.LEVEL);

    private static List<Double> heights(Dome dome) {
        return dome.baseRing().stream()
                .map(h -> dome.hubs().get(h).position().getZ())
                .toList();
    }

    /** Five hubs at one height and ten at another, 0.0160 R apart: reference geometry, section on truncation. */
    @Test
    void theFifteenHubsOfA3vMeetAtTheMeanOfTheirTwoHeights() {
        Dome asIs = Dome.of(THREE);
        List<Double> sorted = heights(asIs).stream().sorted().toList();
        double low = sorted.get(0);
        double high = sorted.get(14);
        assertThat((high - low) / R).isCloseTo(0.0160, within(5e-5));
        long lows = sorted.stream().filter(z -> z < (low + high) / 2).count();
        double mean = (lows * low + (15 - lows) * high) / 15;
        assertThat(lows).isIn(5L, 10L);
        Dome level = Dome.of(LEVEL);
        assertThat(heights(level)).hasSize(15).allSatisfy(z -> assertThat(z).isCloseTo(mean, within(1e-9 * R)));
        Leveling leveling = level.leveling().orElseThrow();
        assertThat(leveling.heightMm()).isCloseTo(mean, within(1e-9 * R));
        assertThat(leveling.spreadBeforeMm()).isCloseTo(high - low, within(1e-9 * R));
        assertThat(leveling.movedHubs()).isEqualTo(15);
        double far = lows == 5 ? low : high;
        double way = R * Math.abs(Math.asin(far / R) - Math.asin(mean / R));
        assertThat(leveling.largestMoveMm()).isCloseTo(way, within(1e-9 * R));
    }

    @Test
    void baseHubsStayOnTheSphereAndKeepTheirBearingsAndTheOthersTheirPlaces() {
        Dome asIs = Dome.of(THREE);
        Dome level = Dome.of(LEVEL);
        for (Hub hub : level.hubs()) {
            Hub before = asIs.hubs().get(hub.index());
            assertThat(hub.site()).isEqualTo(before.site());
            assertThat(hub.position().getNorm()).isCloseTo(R, within(1e-12 * R));
            if (hub.open()) {
                assertThat(hub.position().getAlpha())
                        .isCloseTo(before.position().getAlpha(), within(1e-12));
            } else {
                assertThat(hub.position()).isEqualTo(before.position());
            }
        }
        assertThat(level.baseRing()).isEqualTo(asIs.baseRing());
        assertThat(level.panels()).isEqualTo(asIs.panels());
    }

    /** A regular ring of 15 hubs it is not: their bearings stay as they were, 0.4035 R and 0.4124 R chords. */
    @Test
    void measuresAreOfTheLevelledDome() {
        Dome level = Dome.of(LEVEL);
        double z = level.leveling().orElseThrow().heightMm();
        Measures m = level.measures();
        assertThat(m.baseSpreadMm()).isZero();
        assertThat(m.heightMm()).isCloseTo(R - z, within(1e-9 * R));
        assertThat(m.floorDiameterMm()).isCloseTo(2 * Math.sqrt(R * R - z * z), within(1e-9 * R));
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void aLevelDomeIsBuiltInTheSizeGiven(Measure measure) {
        double value = measure == Measure.FLOOR_AREA ? 25e6 : 4321;
        Dome rows = Dome.of(LEVEL.withSize(new Size(measure, value)));
        assertThat(SizingTest.measured(rows, measure)).isCloseTo(value, within(1e-12 * value));
        Dome half = Dome.of(LEVEL.withKeep(new Keep.AboveHeight(0)).withSize(new Size(measure, value)));
        assertThat(SizingTest.measured(half, measure)).isCloseTo(value, within(1e-12 * value));
    }

    /** Which panels stay is decided before the hubs slide; the size is of the dome after it. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void aLevelDomeAboveAHeightIsFoundByEachOfItsMeasures(Measure measure) {
        Cases.each(20, (random, size) -> {
            double radius = 1000 + 5000 * random.nextDouble();
            double height = radius * (random.nextDouble() * 0.6 - 0.4);
            DomeSpec spec = DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(3 + random.nextInt(4)), Size.radius(radius))
                    .withSpacing(Spacing.ARC)
                    .withKeep(new Keep.AboveHeight(height))
                    .withBase(Base.LEVEL);
            double value;
            try {
                value = SizingTest.measured(Dome.of(spec), measure);
            } catch (CalotteException notToBeLevelled) {
                assertThat(notToBeLevelled).hasMessageStartingWith("dome.base");
                return;
            }
            Dome found = Dome.of(spec.withSize(new Size(measure, value)));
            assertThat(SizingTest.measured(found, measure)).isCloseTo(value, within(1e-9 * value));
            assertThat(found.radiusMm()).isGreaterThan(radius * (1 - 1e-9));
        });
    }

    /** Struts of 300 mm make a radius below 1000 mm, so a whole sphere stands above -1000 mm; it has no base to level. */
    @Test
    void aSearchForALevelDomeDoesNotEndAtTheWholeSphere() {
        DomeSpec above = LEVEL.withKeep(new Keep.AboveHeight(-1000)).withSize(new Size(Measure.LONGEST_STRUT, 300));
        assertThat(Dome.of(above.withBase(Base.AS_IS)).baseRing()).isEmpty();
        Problem problem = refused(above);
        assertThat(problem.where()).isEqualTo("size.longest-strut");
        assertThat(problem.what()).startsWith("no dome above that height measures 300.0 mm");
    }

    @Test
    void whatChangedIsSaidInWords() {
        assertThat(Dome.of(LEVEL).notes())
                .singleElement()
                .asString()
                .matches("Base level: 15 hubs slide by up to \\d+\\.\\d mm along their meridians to one height;"
                        + " they stood up to 47\\.\\d mm apart\\.");
        assertThat(Dome.of(THREE).notes()).isEmpty();
        assertThat(Dome.of(THREE).leveling()).isEmpty();
    }

    /** Half of a 2V stands level as it is: common knowledge, and the law of flat floors. */
    @Test
    void aBaseThatIsLevelStaysAsItIs() {
        DomeSpec half =
                DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(R)).withKeep(new Keep.Rows(1, 2));
        Dome level = Dome.of(half.withBase(Base.LEVEL));
        assertThat(level.leveling().orElseThrow().movedHubs()).isZero();
        assertThat(level.notes())
                .containsExactly("Base level: the base hubs stand at one height as they are; none moves.");
        Dome asIs = Dome.of(half);
        IntStream.range(0, asIs.hubs().size()).forEach(i -> {
            Vector3D there = level.hubs().get(i).position();
            assertThat(there.distance(asIs.hubs().get(i).position())).isLessThan(1e-9 * R);
        });
    }

    private static Problem refused(DomeSpec spec) {
        return catchThrowableOfType(CalotteException.class, () -> Dome.of(spec))
                .problems()
                .get(0);
    }

    @Test
    void aWholeSphereHasNoBaseToLevel() {
        for (Keep keep : List.of(new Keep.Whole(), new Keep.Rows(9, 9), new Keep.AboveHeight(-2 * R))) {
            Problem problem = refused(LEVEL.withKeep(keep));
            assertThat(problem.code()).isEqualTo(Code.CONFLICT);
            assertThat(problem.where()).isEqualTo("dome.base");
            assertThat(problem.what()).isEqualTo("a whole sphere has no base to level.");
        }
    }

    /** Cases found by trying all breakdowns up to 5, crowns and heights in steps of 0.05 of the radius. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "OCTAHEDRON | 3 | 3 | EDGE | -0.85 | inside the base ring would hang below its level.",
                "TETRAHEDRON | 1 | 0 | FACE | -0.95 | 1 panel has all three corners on the base ring",
                "TETRAHEDRON | 1 | 1 | VERTEX | -0.95 | panels have all three corners on the base ring",
                "TETRAHEDRON | 3 | 1 | EDGE | -0.90 | would turn over."
            })
    void aBaseThatCannotBeLevelledIsRefused(Solid solid, int b, int c, Up up, double height, String what) {
        Problem problem = refused(DomeSpec.of(solid, new Breakdown(b, c), Size.radius(R))
                .withUp(up)
                .withKeep(new Keep.AboveHeight(height * R))
                .withBase(Base.LEVEL));
        assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
        assertThat(problem.where()).isEqualTo("dome.base");
        assertThat(problem.what()).contains(what);
        assertThat(problem.mend()).isEqualTo("Use as-is, or keep another part.");
    }

    @Test
    void aBaseHubAtThePoleHasNoMeridian() {
        Ball ball = new Ball(THREE);
        Cap onePanel = new Cap(ball, t -> ball.z(ball.triangles[3 * t]) > 1 - 1e-12 && t < 3);
        assertThat(catchThrowableOfType(CalotteException.class, () -> new LevelBase(onePanel)))
                .hasMessageContaining("a base hub stands at the pole");
    }
}
