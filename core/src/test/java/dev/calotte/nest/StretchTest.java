package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Stretches of a roll 600 mm wide: rectangles and triangles by hand, then any parts against pushing by small steps. */
class StretchTest {

    private static final double SPACING = 5;
    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final ConvexPolygon RECTANGLE = ConvexPolygon.of(0, 0, 100, 0, 100, 50, 0, 50);

    /** How far a rectangle is from corner to corner. */
    private static final double WIDEST = Math.hypot(100, 50);

    /** Where a rectangle lies midway across the roll, turned end for end, too, and where it lies beside that. */
    private static final double MIDDLE = 275;

    private static final double ASIDE = 50;

    private static Kinds kinds(ConvexPolygon... outlines) {
        return new Kinds(Stream.of(outlines)
                .map(outline -> new Piece("P", outline, 9, false, OptionalDouble.empty()))
                .toList());
    }

    private static Field roll(OptionalDouble length) {
        return Field.of(0, new Roll(600, 0, length, Terms.OPEN));
    }

    private static Spot at(double x, double y) {
        return new Spot(0, false, 0, x, y);
    }

    private static List<Spot> behind(List<Spot> lying, Spot... stretch) {
        return new Stretch(kinds(RECTANGLE), roll(OptionalDouble.empty()), SPACING).behind(lying, List.of(stretch));
    }

    private static double begin(List<Spot> rectangles) {
        return rectangles.stream().mapToDouble(Spot::x).min().orElseThrow();
    }

    @Test
    void aStretchBeginsOneSpacingBehindWhatLiesInItsWay() {
        assertThat(begin(behind(List.of(at(0, MIDDLE), at(900, MIDDLE)), at(0, MIDDLE), at(105, MIDDLE))))
                .isCloseTo(1005, within(1e-9));
        assertThat(begin(behind(List.of(at(0, MIDDLE), at(900, MIDDLE)), at(70, MIDDLE))))
                .isCloseTo(1005, within(1e-9));
        assertThat(begin(behind(List.of(), at(70, MIDDLE)))).isCloseTo(0, within(1e-9));
    }

    @Test
    void aStretchReachesBackBesideWhatLiesByNoMoreThanTheWidestPart() {
        assertThat(begin(behind(List.of(at(900, MIDDLE)), at(70, ASIDE)))).isCloseTo(1000 - WIDEST, within(1e-9));
        assertThat(begin(behind(List.of(at(0, MIDDLE)), at(70, ASIDE)))).isCloseTo(0, within(1e-9));
    }

    @Test
    void whatEndsJustBeforeTheReachBackIsKeptClear() {
        List<Spot> lying = List.of(at(0, MIDDLE), at(WIDEST + 3, ASIDE));
        assertThat(begin(behind(lying, at(0, MIDDLE)))).isCloseTo(105, within(1e-9));
    }

    @Test
    void whatBeginsJustBehindTheReachBackIsKeptClear() {
        List<Spot> laid = behind(List.of(at(900, MIDDLE)), at(0, ASIDE), at(WIDEST + 2, MIDDLE));
        assertThat(laid.get(1).x()).isCloseTo(1005, within(1e-9));
        assertThat(laid.get(0).x()).isCloseTo(1005 - WIDEST - 2, within(1e-9));
    }

    /** Two right-angled halves of a square: the second lies in the corner that the first leaves free. */
    @Test
    void aStretchIsTurnedEndForEndWhereItEndsSoonerSo() {
        ConvexPolygon half = ConvexPolygon.of(0, 0, 600, 0, 0, 600);
        Stretch stretch = new Stretch(kinds(half), roll(OptionalDouble.empty()), 0);
        List<Spot> laid = stretch.behind(List.of(at(0, 0)), List.of(at(0, 0)));
        assertThat(laid).singleElement().satisfies(spot -> {
            assertThat(spot.turnRad()).isCloseTo(Math.PI, within(1e-12));
            assertThat(spot.x()).isCloseTo(600, within(1e-9));
            assertThat(spot.y()).isCloseTo(600, within(1e-9));
        });
    }

    @Test
    void aStretchThatEndsNoSoonerIsNotTurned() {
        assertThat(behind(List.of(at(0, MIDDLE)), at(0, MIDDLE)))
                .singleElement()
                .satisfies(spot -> assertThat(spot.turnRad()).isZero());
    }

    @Test
    void nothingIsLaidBeyondTheEndOfTheRoll() {
        List<Spot> lying = List.of(at(0, MIDDLE));
        List<Spot> more = List.of(at(0, MIDDLE));
        Kinds kinds = kinds(RECTANGLE);
        assertThat(new Stretch(kinds, roll(OptionalDouble.of(205)), SPACING).behind(lying, more))
                .hasSize(1);
        assertThat(new Stretch(kinds, roll(OptionalDouble.of(204.9)), SPACING).behind(lying, more))
                .isEmpty();
    }

    private static ConvexPolygon polygon(Random random) {
        int corners = 3 + random.nextInt(3);
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.8 * random.nextDouble()) / corners;
            xy[2 * c] = 150 * Math.cos(angle);
            xy[2 * c + 1] = 110 * Math.sin(angle);
        }
        return ConvexPolygon.of(xy);
    }

    private static List<Spot> filled(Kinds kinds, Field roll, Random random) {
        Filling filling = new Filling(kinds, roll, new Manners(SPACING, Manner.ALONG));
        for (int n = 0; n < 7; n++) {
            filling.add(random.nextInt(2));
        }
        return filling.spots();
    }

    private static List<ConvexPolygon> outlines(Kinds kinds, List<Spot> spots, double by) {
        return spots.stream().map(spot -> kinds.outline(spot.moved(by, 0))).toList();
    }

    private static boolean clear(List<ConvexPolygon> lying, List<ConvexPolygon> stretch) {
        return lying.stream().allMatch(a -> stretch.stream().allMatch(b -> NoFitTest.gap(a, b) >= SPACING - 1e-6));
    }

    private static double end(List<ConvexPolygon> outlines) {
        return outlines.stream().mapToDouble(o -> o.reach(RIGHT)).max().orElseThrow();
    }

    private static double begin(Kinds kinds, List<Spot> spots) {
        return outlines(kinds, spots, 0).stream()
                .mapToDouble(o -> -o.reach(RIGHT.negate()))
                .min()
                .orElseThrow();
    }

    /** Where a stretch ends that comes from far away by small steps until the next would be one too many. */
    private static double pushed(Kinds kinds, List<Spot> lying, List<Spot> stretch, double step) {
        List<ConvexPolygon> fast = outlines(kinds, lying, 0);
        double least = Math.max(0, end(fast) - kinds.widest()) - begin(kinds, stretch);
        double by = end(fast) + 50 - begin(kinds, stretch);
        while (by - step >= least && clear(fast, outlines(kinds, stretch, by - step))) {
            by -= step;
        }
        return end(outlines(kinds, stretch, by));
    }

    private static List<Spot> turned(List<Spot> stretch) {
        List<Spot> turned = new ArrayList<>();
        for (Spot spot : stretch) {
            turned.add(new Spot(spot.kind(), spot.mirrored(), spot.turnRad() + Math.PI, -spot.x(), 600 - spot.y()));
        }
        return turned;
    }

    @Test
    void aStretchIsPushedUntilItMeetsWhatLies() {
        Cases.each(24, (random, size) -> {
            Kinds kinds = kinds(polygon(random), polygon(random));
            Field roll = roll(OptionalDouble.empty());
            List<Spot> lying = filled(kinds, roll, random);
            List<Spot> stretch = filled(kinds, roll, random);
            List<Spot> laid = new Stretch(kinds, roll, SPACING).behind(lying, stretch);
            assertThat(clear(outlines(kinds, lying, 0), outlines(kinds, laid, 0)))
                    .isTrue();
            double sooner = Math.min(pushed(kinds, lying, stretch, 0.5), pushed(kinds, lying, turned(stretch), 0.5));
            assertThat(end(outlines(kinds, laid, 0))).isBetween(sooner - 0.5, sooner + 1e-6);
        });
    }
}
