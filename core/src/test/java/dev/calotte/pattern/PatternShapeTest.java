package dev.calotte.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.testing.Cases;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternShapeTest {

    private static final double INCH = 25.4;

    /** The triangle of an icosahedron dome of frequency 1: equilateral, 1000 mm. */
    private static Pattern equilateral(Cover cover) {
        Size size = new Size(Size.Measure.LONGEST_STRUT, 1000);
        Parts parts = Parts.of(Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), size)), Joinery.nodeToNode());
        return Patterns.of(parts, cover).list().get(0);
    }

    private static Cover cover(Allowances allowances) {
        return Cover.of("cover").with(allowances);
    }

    /** Growth of the cut edge beyond each end of the net side, over the allowance: TRADE table of growths, calculated. */
    @ParameterizedTest
    @CsvSource({"POINTED, 1.7320508", "BLUNT, 0.5773503", "MIRRORED, -0.5773503"})
    void cornersLengthenOrShortenTheCutEdge(Corner corner, double growth) {
        Polygon outline = equilateral(cover(Allowances.of(15, 0).withCorner(corner)))
                .whole()
                .outline();
        List<Vector2D> onBase = outline.corners().stream()
                .filter(p -> Math.abs(p.getY() + 15) < 1e-9)
                .toList();
        assertThat(onBase).hasSize(2);
        double length = Math.abs(onBase.get(0).getX() - onBase.get(1).getX());
        assertThat((length - 1000) / 2 / 15).isCloseTo(growth, within(1e-7));
    }

    /** Common practice, no source: mitred allowances grow an equilateral's altitude by three times the allowance. */
    @Test
    void mitredAllowancesGrowAnAltitudeByThreeTimesTheAllowance() {
        Pattern pattern = equilateral(cover(Allowances.of(INCH, 0)));
        for (int side = 0; side < 3; side++) {
            assertThat(pattern.cutAltitudesMm().get(side)
                            - pattern.netAltitudesMm().get(side))
                    .isCloseTo(3 * INCH, within(1e-9));
        }
    }

    @Test
    void aMirroredCornerPassesThroughTheNetCorner() {
        Pattern pattern = equilateral(cover(Allowances.of(15, 0).withCorner(Corner.MIRRORED)));
        assertThat(pattern.whole().outline().size()).isEqualTo(9);
        for (int corner = 0; corner < 3; corner++) {
            Vector2D net = pattern.whole().net().corner(corner);
            assertThat(pattern.whole().outline().corners()).anyMatch(p -> p.distance(net) < 1e-9);
        }
    }

    /** An allowance folded over the net side must lie inside the net shape at its ends. */
    @Test
    void aMirroredAllowanceFoldsOntoThePanel() {
        Cases.each(20, (random, size) -> {
            Parts parts = Assembly.random(random);
            Cover cover = cover(Allowances.of(5 + 20 * random.nextDouble(), 30).withCorner(Corner.MIRRORED));
            for (Pattern pattern : Patterns.of(parts, cover).list()) {
                ConvexPolygon net = pattern.whole().net();
                for (Vector2D corner : pattern.whole().outline().corners()) {
                    for (int side = 0; side < 3; side++) {
                        Vector2D outward = net.outward(side);
                        double out = corner.subtract(net.corner(side)).dotProduct(outward);
                        if (out > 1e-6) {
                            Vector2D folded = corner.subtract(2 * out, outward);
                            for (int other = 0; other < 3; other++) {
                                assertThat(folded.subtract(net.corner(other)).dotProduct(net.outward(other)))
                                        .isLessThan(1e-6);
                            }
                        }
                    }
                }
            }
        });
    }

    @Test
    void bluntCornersNeverReachFurtherThanPointedOnes() {
        Allowances gap = Allowances.of(-3, 0);
        assertThat(equilateral(cover(gap.withCorner(Corner.BLUNT)))
                        .whole()
                        .outline()
                        .area())
                .isCloseTo(equilateral(cover(gap)).whole().outline().area(), within(1e-6));
        Allowances seam = Allowances.of(12, 0);
        double lost = equilateral(cover(seam)).whole().outline().area()
                - equilateral(cover(seam.withCorner(Corner.BLUNT)))
                        .whole()
                        .outline()
                        .area();
        // computed by hand: three tips of height 24 - 12 over a corner of 60 degrees
        assertThat(lost).isCloseTo(3 * 12 * 12 * Math.tan(Math.toRadians(30)), within(1e-6));
    }

    /** At corners of 60 degrees beside a side without allowance, the blunt cut only touches the pointed corner. */
    @Test
    void aBluntCutThatOnlyTouchesACornerLeavesNoSideWithoutLength() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), Size.radius(1737));
        Parts cap = Parts.of(Dome.of(spec.withKeep(new Keep.Rows(1, 3))), Joinery.nodeToNode());
        for (double seam : new double[] {0.1, 7, 15}) {
            Cover cover = cover(Allowances.of(seam, 0).withCorner(Corner.BLUNT));
            for (Pattern pattern : Patterns.of(cap, cover).list()) {
                Polygon outline = pattern.whole().outline();
                for (int c = 0; c < outline.size(); c++) {
                    assertThat(outline.corner(c).distance(outline.corner(c + 1)))
                            .isGreaterThan(seam / 2);
                }
            }
        }
    }

    @Test
    void aHubReliefClearsTheAxisAndNoMore() {
        for (double plane : new double[] {0, 40, -20}) {
            Cover cover = cover(Allowances.of(-2, 0).withHubRelief(35)).with(new Sheeting(plane, 0, false));
            Pattern pattern = equilateral(cover);
            // all three corners are alike, so the axes are the net corners whatever the plane
            for (int corner = 0; corner < 3; corner++) {
                Vector2D axis = pattern.whole().net().corner(corner);
                assertThat(distance(pattern.whole().outline(), axis)).isCloseTo(35, within(1e-9));
            }
        }
    }

    /** Of a point outside to the nearest side. */
    private static double distance(Polygon polygon, Vector2D point) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < polygon.size(); c++) {
            Vector2D from = polygon.corner(c);
            Vector2D along = polygon.corner(c + 1).subtract(from);
            double t = Math.max(0, Math.min(1, point.subtract(from).dotProduct(along) / along.getNormSq()));
            least = Math.min(least, point.distance(from.add(t, along)));
        }
        return least;
    }

    /** TRADE: a 3/4 in tube at 2V, 11.7 mm out, dihedral about 160 degrees: 7.2 mm; calculated anew here. */
    @Test
    void aPanelOutsideTheHubsGrowsByTheTangentOfHalfTheTurn() {
        Pattern pattern = equilateral(Cover.of("skin").with(new Sheeting(11.7, 0, false)));
        double turn = Math.toRadians(180 - 138.189685104);
        double each = 11.7 * Math.tan(turn / 2);
        assertThat(pattern.sides()).allSatisfy(s -> assertThat(s.growthMm()).isCloseTo(each, within(1e-8)));
        double side =
                pattern.whole().net().corner(0).distance(pattern.whole().net().corner(1));
        assertThat(side - 1000).isCloseTo(2 * Math.sqrt(3) * each, within(1e-7));
    }

    @Test
    void bevelledEdgesMeetFaceToFace() {
        Sheeting board = new Sheeting(0, 18, true);
        Pattern pattern = equilateral(Cover.of("board").with(board));
        double bevel = Math.toRadians(20.9051575);
        assertThat(pattern.sides().get(0).bevelRad()).isCloseTo(bevel, within(1e-8));
        Polygon outer = pattern.whole().outer().orElseThrow();
        Vector2D down = new Vector2D(0, -1);
        assertThat(outer.reach(down) - pattern.whole().outline().reach(down))
                .isCloseTo(18 * Math.tan(bevel), within(1e-6));
        assertThat(pattern.whole().blank().area()).isCloseTo(outer.area(), within(1e-6));
        Pattern square = equilateral(Cover.of("board").with(new Sheeting(0, 18, false)));
        assertThat(square.whole().outer()).isEmpty();
        assertThat(square.sides().get(0).bevelRad()).isCloseTo(bevel, within(1e-8));
    }

    @Test
    void whatUsesUpAPanelIsRefused() {
        refused(cover(Allowances.of(-300, 0)), "edge", "gap of -300.0 mm");
        refused(cover(Allowances.NONE.withHubRelief(600)), "hub-relief", "relief of 600.0 mm");
        refused(Cover.of("cover").with(new Sheeting(-900, 0, false)), "plane", "plane of -900.0 mm");
        refused(Cover.of("cover").with(new Fasteners(6, 300, 400)), "fasteners", "300.0 mm");
    }

    private static void refused(Cover cover, String key, String what) {
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> equilateral(cover))
                .satisfies(e -> {
                    assertThat(e.problems().get(0).where()).isEqualTo("covers.cover." + key);
                    assertThat(e.problems().get(0).what()).contains(what).contains("panel P1");
                });
    }

    @Test
    void holesKeepTheirDistancesAndTheirPitch() {
        Cases.each(20, (random, size) -> {
            Parts parts = Assembly.random(random);
            Fasteners fasteners = new Fasteners(6.5, 20 + 20 * random.nextDouble(), 150 + 300 * random.nextDouble());
            Cover cover = cover(Allowances.of(-2, 0).withHubRelief(random.nextBoolean() ? 0 : 35))
                    .with(fasteners);
            for (Pattern pattern : Patterns.of(parts, cover).list()) {
                List<Hole> holes = pattern.whole().holes();
                ConvexPolygon outline = pattern.whole().outline().hull();
                for (Hole hole : holes) {
                    Vector2D centre = new Vector2D(hole.x(), hole.y());
                    assertThat(distance(outline, centre)).isGreaterThan(fasteners.edgeDistanceMm() - 1e-6);
                    assertThat(nearest(holes, centre)).isBetween(fasteners.holeMm(), fasteners.pitchMm() + 1e-6);
                }
            }
        });
    }

    private static double nearest(List<Hole> holes, Vector2D centre) {
        return holes.stream()
                .mapToDouble(hole -> centre.distance(new Vector2D(hole.x(), hole.y())))
                .filter(d -> d > 1e-9)
                .min()
                .orElseThrow();
    }

    /** By hand: 1000 mm less twice 40 cot 30 is 861.4 mm of row, three spaces of at most 300 mm. */
    @Test
    void rowsAreDividedEqually() {
        Pattern pattern = equilateral(Cover.of("glass").with(new Fasteners(6, 40, 300)));
        assertThat(pattern.whole().holes()).hasSize(9);
        List<Hole> base = pattern.whole().holes().stream()
                .filter(hole -> Math.abs(hole.y() - 40) < 1e-9)
                .toList();
        assertThat(base).hasSize(4);
        assertThat(base.get(1).x() - base.get(0).x()).isCloseTo((1000 - 80 * Math.sqrt(3)) / 3, within(1e-9));
    }

    /** Where a corner is cut off wide, both rows keep their own end. */
    @Test
    void wideCornersHaveTwoHoles() {
        Allowances wide = Allowances.NONE.withHubRelief(200);
        assertThat(equilateral(cover(wide).with(new Fasteners(6, 40, 150)))
                        .whole()
                        .holes())
                .hasSizeGreaterThan(equilateral(cover(wide).with(new Fasteners(6, 40, 900)))
                                .whole()
                                .holes()
                                .size()
                        + 3);
    }

    /**
     * By hand: a relief of 200 mm leaves cut corners 2 * 200 tan 30 = 230.94 mm long and sides of 1000 - 461.88 mm. At
     * 40 mm from the edges the ends of two rows are 230.94 - 2 * 40 tan 30 = 184.75 mm apart.
     */
    @Test
    void twoHolesOfAWideCornerAreOneFromTwiceTheirDistanceOn() {
        double apart = (400 - 80) / Math.sqrt(3);
        assertThat(holesAtTheFirstCorner(apart, 2 * apart - 0.01)).hasSize(2);
        List<Hole> merged = holesAtTheFirstCorner(apart, 2 * apart + 0.01);
        assertThat(merged).hasSize(1);
        // on the bisector, as far inside the cut corner as from any other edge
        Hole hole = merged.get(0);
        assertThat(hole.x()).isCloseTo(240 * Math.cos(Math.toRadians(30)), within(1e-9));
        assertThat(hole.y()).isCloseTo(240 * Math.sin(Math.toRadians(30)), within(1e-9));
        List<Hole> two = holesAtTheFirstCorner(apart, 2 * apart - 0.01);
        assertThat(two.get(0).diameterMm()).isEqualTo(6);
        double dx = two.get(0).x() - two.get(1).x();
        double dy = two.get(0).y() - two.get(1).y();
        assertThat(Math.sqrt(dx * dx + dy * dy)).isCloseTo(apart, within(1e-9));
        assertThat(Math.min(two.get(0).y(), two.get(1).y())).isCloseTo(40, within(1e-9));
    }

    /** Those on the line at the edge distance from the cut corner, not further from its middle than its ends are. */
    private static List<Hole> holesAtTheFirstCorner(double apart, double pitch) {
        Cover cover = cover(Allowances.NONE.withHubRelief(200)).with(new Fasteners(6, 40, pitch));
        return equilateral(cover).whole().holes().stream()
                .filter(hole -> {
                    double inside = hole.x() * Math.cos(Math.toRadians(30)) + hole.y() * 0.5 - 240;
                    double beside = hole.y() * Math.cos(Math.toRadians(30)) - hole.x() * 0.5;
                    return Math.abs(inside) < 1e-6 && Math.abs(beside) < apart / 2 + 1e-6;
                })
                .toList();
    }

    /**
     * Measurements known in the trade, read to 1/8 in; common practice, no source. 3V 5/9, struts cut at 5 ft and hubs
     * that hold their ends 3 1/2 in apart.
     */
    @Test
    void panelsOfAThreeFrequencyDomeInInches() {
        DomeSpec spec = DomeSpec.of(
                        Solid.ICOSAHEDRON, Breakdown.of(3), new Size(Size.Measure.LONGEST_STRUT, 63.5 * INCH))
                .withKeep(new Keep.Rows(5, 9));
        List<Pattern> patterns = Patterns.of(Parts.of(Dome.of(spec), Joinery.gap(1.75 * INCH)), Cover.of("panels"))
                .list();
        assertThat(patterns).extracting(Pattern::count).containsExactly(30, 75);
        assertThat(altitudeOverOdd(patterns.get(0), 62.125)).isCloseTo(43.75, within(0.125));
        assertThat(altitudeOverOdd(patterns.get(1), 62.125)).isCloseTo(55.375, within(0.125));
        assertThat(patterns.get(1).whole().net().narrowestWidth() / INCH).isCloseTo(54.375, within(0.25));
    }

    private static double altitudeOverOdd(Pattern pattern, double sideInches) {
        for (int side = 0; side < 3; side++) {
            if (Math.abs(pattern.sides().get(side).lengthMm() / INCH - sideInches) < 0.125) {
                return pattern.netAltitudesMm().get(side) / INCH;
            }
        }
        throw new AssertionError("no side of " + sideInches + " in");
    }

    /** The same sort: 4V half, longest strut 5 ft, then 4.6 ft. */
    @Test
    void panelsOfAFourFrequencyDomeInInches() {
        List<Pattern> patterns = fourHalf(60);
        assertThat(patterns.stream().mapToInt(Pattern::count)).containsExactlyInAnyOrder(30, 30, 30, 30, 30, 10);
        assertThat(patterns).anySatisfy(p -> {
            assertThat(p.netAltitudesMm().get(0) / INCH).isCloseTo(38, within(0.125));
            assertThat(p.netAltitudesMm()).anySatisfy(a -> assertThat(a / INCH).isBetween(44.0, 44.375));
        });
        assertThat(highest(patterns)).isCloseTo(52, within(0.125));
        assertThat(highest(fourHalf(55.2))).isCloseTo(47.75, within(0.125));
    }

    private static List<Pattern> fourHalf(double longestInches) {
        Size size = new Size(Size.Measure.LONGEST_STRUT, longestInches * INCH);
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(4), size).withKeep(new Keep.Rows(1, 2));
        return Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), Cover.of("panels"))
                .list();
    }

    private static double highest(List<Pattern> patterns) {
        return patterns.stream()
                        .mapToDouble(p -> p.whole().net().narrowestWidth())
                        .max()
                        .orElseThrow()
                / INCH;
    }
}
