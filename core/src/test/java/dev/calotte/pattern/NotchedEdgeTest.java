package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class NotchedEdgeTest {

    private static final double TICK = 5;
    private static final double SAME = 1e-8;
    private static final Treatment CODED = new Treatment(false, false, Splitting.NEVER, true);

    private static Cover cover(Allowances allowances) {
        return Cover.of("cloth").with(allowances).with(CODED);
    }

    private static NotchedEdge whole(Pattern pattern) {
        return new NotchedEdge(pattern, pattern.whole(), TICK);
    }

    /** Where the notches of a side meet the cut edge, worked out from the net side. */
    private static List<Vector2D> mouths(Pattern pattern, int side) {
        Vector2D outward = pattern.whole().net().outward(side);
        return pattern.sides().get(side).notches().stream()
                .map(notch -> Assembly.onNet(pattern, side, notch.alongMm())
                        .add(pattern.sides().get(side).allowanceMm(), outward))
                .toList();
    }

    private static List<Vector2D> mouths(Pattern pattern) {
        return Stream.of(0, 1, 2)
                .flatMap(side -> mouths(pattern, side).stream())
                .toList();
    }

    /** Counter-clockwise along a side. */
    private static Vector2D along(Pattern pattern, int side) {
        return Assembly.direction(pattern, side);
    }

    private static void assertHas(List<Vector2D> corners, Vector2D point) {
        assertThat(corners).anyMatch(corner -> corner.distance(point) < SAME);
    }

    private static void assertSimple(Polygon polygon) {
        assertThat(isSimple(polygon)).isTrue();
    }

    private static boolean isSimple(Polygon polygon) {
        List<Vector2D> corners = new ArrayList<>(polygon.corners());
        corners.add(corners.get(0));
        Coordinate[] ring = corners.stream()
                .map(corner -> new Coordinate(corner.getX(), corner.getY()))
                .toArray(Coordinate[]::new);
        GeometryFactory jts = new GeometryFactory();
        return jts.createLinearRing(ring).isSimple() && jts.createPolygon(ring).isValid();
    }

    /** Half the narrower allowance, but 5 mm at most (common practice, no source). */
    @Test
    void aNotchIsAVTwiceAsWideAsItIsDeep() {
        check(Allowances.of(15, 50), 5);
        check(Allowances.of(6, 50), 3);
        check(new Allowances(8, 18, 50, Corner.BLUNT, 0), 4);
        check(Allowances.of(15, 50).withCorner(Corner.MIRRORED), 5);
    }

    private static void check(Allowances allowances, double depth) {
        for (Sheeting sheeting : List.of(Sheeting.THIN, new Sheeting(40, 10, false), new Sheeting(20, 18, true))) {
            for (Pattern pattern : Patterns.of(
                            Assembly.fiveNinths(), cover(allowances).with(sheeting))
                    .list()) {
                Polygon outline = whole(pattern).outline();
                Polygon bare = pattern.whole().outline();
                int count = mouths(pattern).size();
                assertThat(count).isPositive();
                for (int side = 0; side < 3; side++) {
                    for (Vector2D mouth : mouths(pattern, side)) {
                        Vector2D along = along(pattern, side);
                        assertHas(outline.corners(), mouth.subtract(depth, along));
                        assertHas(
                                outline.corners(),
                                mouth.subtract(depth, pattern.whole().net().outward(side)));
                        assertHas(outline.corners(), mouth.add(depth, along));
                    }
                }
                bare.corners().forEach(corner -> assertHas(outline.corners(), corner));
                assertThat(outline.size()).isEqualTo(bare.size() + 3 * count);
                assertThat(bare.area() - outline.area()).isCloseTo(count * depth * depth, within(1e-5));
                assertThat(whole(pattern).ticks()).isEmpty();
                assertSimple(outline);
            }
        }
    }

    @Test
    void whereThereIsNothingToCutIntoNotchesAreDrawn() {
        for (Allowances allowances : List.of(Allowances.NONE, Allowances.of(-3, 0), Allowances.of(-3, 20))) {
            for (Pattern pattern :
                    Patterns.of(Assembly.fiveNinths(), cover(allowances)).list()) {
                List<List<Vector2D>> ticks = whole(pattern).ticks();
                List<Vector2D> mouths = mouths(pattern);
                assertThat(ticks).isNotEmpty().hasSameSizeAs(mouths);
                int tick = 0;
                for (int side = 0; side < 3; side++) {
                    for (Vector2D mouth : mouths(pattern, side)) {
                        Vector2D tip =
                                mouth.subtract(TICK, pattern.whole().net().outward(side));
                        assertThat(ticks.get(tick)).hasSize(2);
                        assertThat(ticks.get(tick).get(0).distance(mouth)).isLessThan(SAME);
                        assertThat(ticks.get(tick).get(1).distance(tip)).isLessThan(SAME);
                        tick++;
                    }
                }
                assertThat(whole(pattern).outline().corners())
                        .isEqualTo(pattern.whole().outline().corners());
            }
        }
    }

    /** A lap without an allowance under it is not cut on either side, so that both still show the same. */
    @Test
    void theNarrowerAllowanceDecidesForBothSides() {
        Allowances lap = new Allowances(0, 30, 0, Corner.POINTED, 0);
        for (Pattern pattern : Patterns.of(Assembly.fiveNinths(), cover(lap)).list()) {
            assertThat(whole(pattern).ticks()).hasSameSizeAs(mouths(pattern));
        }
    }

    @Test
    void patternsWithoutCodesHaveNoNotches() {
        Cover plain = Cover.of("cloth").with(Allowances.of(15, 50));
        for (Pattern pattern : Patterns.of(Assembly.fiveNinths(), plain).list()) {
            assertThat(whole(pattern).ticks()).isEmpty();
            assertThat(whole(pattern).outline().corners())
                    .isEqualTo(pattern.whole().outline().corners());
        }
    }

    /** A V that the end of a cut edge would halve is left out, whole ones beside it stay. */
    @Test
    void aNotchThatACutCornerTakesAwayIsLeftOut() {
        for (double edge : new double[] {15, 0}) {
            int left = 0;
            int gone = 0;
            for (double relief = 60; relief < 300; relief += 7) {
                Cover cover = cover(Allowances.of(edge, edge).withHubRelief(relief));
                for (Pattern pattern : Patterns.of(Assembly.fiveNinths(), cover).list()) {
                    int on = 0;
                    for (int side = 0; side < 3; side++) {
                        for (Vector2D mouth : mouths(pattern, side)) {
                            on += isOn(pattern, side, mouth, edge / 3) ? 1 : 0;
                        }
                    }
                    int vs = (whole(pattern).outline().size()
                                    - pattern.whole().outline().size())
                            / 3;
                    assertThat(edge > 0 ? vs : whole(pattern).ticks().size()).isEqualTo(on);
                    assertSimple(whole(pattern).outline());
                    left += on;
                    gone += mouths(pattern).size() - on;
                }
            }
            assertThat(left).isPositive();
            assertThat(gone).isPositive();
        }
    }

    /** Whether a notch so deep lies between the two ends of its cut edge. */
    private static boolean isOn(Pattern pattern, int side, Vector2D mouth, double depth) {
        Vector2D outward = pattern.whole().net().outward(side);
        double[] places = pattern.whole().outline().corners().stream()
                .filter(corner -> Math.abs(corner.subtract(mouth).dotProduct(outward)) < SAME)
                .mapToDouble(corner -> corner.subtract(mouth).dotProduct(along(pattern, side)))
                .sorted()
                .toArray();
        return places[0] < -depth && places[places.length - 1] > depth;
    }

    @Test
    void outlinesStaySimpleHoweverSmallTheDome() {
        Cases.each(24, (random, size) -> {
            double radius = StrictMath.pow(10, 2 + 1.5 * random.nextDouble());
            Breakdown breakdown = random.nextBoolean() ? Breakdown.of(3) : Breakdown.of(4);
            DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, breakdown, Size.radius(radius))
                    .withKeep(random.nextBoolean() ? new Keep.Whole() : new Keep.AboveHeight(0));
            double narrow = 16 * random.nextDouble();
            Corner corner = List.of(Corner.values()).get(random.nextInt(3));
            Cover cover = cover(new Allowances(narrow, narrow + 4 * random.nextInt(2), 20, corner, 0));
            for (Pattern pattern : Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), cover)
                    .list()) {
                if (isSimple(pattern.whole().outline())) {
                    assertSimple(whole(pattern).outline());
                }
                // between two notches a tooth stays, as wide as half a notch or more
                pattern.sides().forEach(NotchedEdgeTest::assertTeeth);
            }
        });
    }

    private static void assertTeeth(Side side) {
        for (int i = 1; i < side.notches().size(); i++) {
            Notch before = side.notches().get(i - 1);
            Notch notch = side.notches().get(i);
            double tooth = notch.alongMm() - before.alongMm() - notch.depthMm() - before.depthMm();
            assertThat(tooth).isGreaterThanOrEqualTo(notch.depthMm() - SAME);
        }
    }

    @Test
    void everyNotchOfADividedPatternIsOnOnePart() {
        Cases.each(32, (random, size) -> {
            double narrow = 20 * random.nextDouble();
            Allowances allowances = new Allowances(narrow, narrow + 10 * random.nextInt(2), 40, Corner.BLUNT, 0);
            Cover cover = cover(random.nextInt(4) == 0 ? Allowances.NONE : allowances);
            for (Pattern pattern : Patterns.of(Assembly.fiveNinths(), cover).list()) {
                double low = (0.05 + 0.4 * random.nextDouble())
                        * pattern.netAltitudesMm().get(0);
                double high = low
                        + (0.01 + 0.4 * random.nextDouble())
                                * pattern.netAltitudesMm().get(0);
                assertThat(notches(cover, pattern, List.of(low, high)))
                        .isEqualTo(mouths(pattern).size());
            }
        });
    }

    /** Also where the allowances of a seam give both parts the edge on which the notch is. */
    @Test
    void aSeamBesideANotchLeavesItOnOnePart() {
        for (Allowances allowances : List.of(Allowances.of(12, 12), new Allowances(8, 18, 50, Corner.POINTED, 0))) {
            Cover cover = cover(allowances);
            for (Pattern pattern : Patterns.of(Assembly.fiveNinths(), cover).list()) {
                for (Vector2D mouth : mouths(pattern)) {
                    for (double beside : new double[] {-9, -4, -1e-3, 1e-3, 4, 9}) {
                        double seam = mouth.getY() + beside;
                        if (seam > 0 && seam < 0.9 * pattern.netAltitudesMm().get(0)) {
                            assertThat(notches(cover, pattern, List.of(seam)))
                                    .isEqualTo(mouths(pattern).size());
                            CutPiece upper =
                                    new Seams(cover, pattern).at(List.of(seam)).get(1);
                            boolean on = new NotchedEdge(pattern, upper, TICK)
                                    .outline().corners().stream().anyMatch(c -> isTip(pattern, c, mouth));
                            assertThat(on).isEqualTo(beside < 0);
                        }
                    }
                }
            }
        }
    }

    private static boolean isTip(Pattern pattern, Vector2D corner, Vector2D mouth) {
        double depth = pattern.sides().stream()
                .flatMap(side -> side.notches().stream())
                .findFirst()
                .orElseThrow()
                .depthMm();
        return Stream.of(0, 1, 2)
                .map(side -> mouth.subtract(depth, pattern.whole().net().outward(side)))
                .anyMatch(tip -> tip.distance(corner) < SAME);
    }

    /** A gap along the seam takes away what lies in it. */
    @Test
    void aNotchInTheGapOfASeamIsOnNoPart() {
        Cover cover = cover(Allowances.of(-3, 0));
        Pattern pattern = Patterns.of(Assembly.fiveNinths(), cover).list().get(1);
        double height = mouths(pattern, 1).get(0).getY();
        assertThat(notches(cover, pattern, List.of(height + 2)))
                .isEqualTo(mouths(pattern).size()
                        - mouths(pattern).stream()
                                .filter(mouth -> Math.abs(mouth.getY() - height - 2) < 3)
                                .count());
        assertThat(notches(cover, pattern, List.of(height + 2)))
                .isLessThan(mouths(pattern).size());
    }

    /** How many notches the parts between seams have, cut or drawn. */
    private static int notches(Cover cover, Pattern pattern, List<Double> seams) {
        int count = 0;
        for (CutPiece part : new Seams(cover, pattern).at(seams)) {
            NotchedEdge edge = new NotchedEdge(pattern, part, TICK);
            assertSimple(edge.outline());
            count += (edge.outline().size() - part.outline().size()) / 3
                    + edge.ticks().size();
        }
        return count;
    }
}
