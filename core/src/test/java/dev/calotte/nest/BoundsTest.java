package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** No bound says more than what is known to be possible, and none says less than the area of the parts does. */
class BoundsTest {

    private static final double ROUNDING = 1e-9;

    private static Terms price(double price, OptionalInt have) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), have);
    }

    private static Goal goal(List<Piece> pieces, List<? extends Stock> stocks, double spacing, int steps) {
        CutPlan plan = SheetPlan.of(pieces, stocks, new Layout(spacing, steps, 1));
        PlanCheck.check(plan, pieces, spacing);
        return plan.goal();
    }

    @Test
    void sheetsThatWereCutUpHoldTheirParts() {
        Cases.each(12, (random, size) -> {
            double spacing = 5 * (size % 3);
            double margin = 7 * (size % 2);
            List<Piece> pieces = KnownPlan.of(random, spacing, size % 4 > 1, 900, 600, 900, 600);
            Sheet sheet = new Sheet(900 + 2 * margin, 600 + 2 * margin, margin, Terms.OPEN);
            assertThat(SheetPlan.least(pieces, sheet, spacing)).isEqualTo(2);
            Goal first = goal(pieces, List.of(sheet), spacing, 0);
            assertThat(first.bound()).isEqualTo(2);
            if (size % 3 == 1) {
                assertThat(goal(pieces, List.of(sheet), spacing, 30).bound()).isEqualTo(2);
            }
        });
    }

    @Test
    void sheetsOfTwoPricesHoldTheirParts() {
        Cases.each(12, (random, size) -> {
            double spacing = 6 * (size % 2);
            List<Piece> pieces = KnownPlan.of(random, spacing, size % 4 > 1, 900, 600, 500, 400);
            List<Sheet> sheets = List.of(
                    new Sheet(900, 600, 0, price(17, OptionalInt.empty())),
                    new Sheet(500, 400, 0, price(6, OptionalInt.of(1))));
            assertThat(goal(pieces, sheets, spacing, 0).bound()).isLessThanOrEqualTo(23 + ROUNDING);
            if (size % 3 == 1) {
                assertThat(goal(pieces, sheets, spacing, 30).bound()).isBetween(17.0, 23 + ROUNDING);
            }
        });
    }

    @Test
    void aRollThatWasCutUpHoldsItsParts() {
        Cases.each(12, (random, size) -> {
            double spacing = 5 * (size % 3);
            double margin = 8 * (size % 2);
            List<Piece> pieces = KnownPlan.of(random, spacing, size % 4 > 1, 1800, 700);
            Roll roll = new Roll(700 + 2 * margin, margin, OptionalDouble.empty(), Terms.OPEN);
            double length = 1800 + 2 * margin;
            assertThat(SheetPlan.least(pieces, roll, spacing)).isLessThanOrEqualTo(length + ROUNDING * length);
            assertThat(goal(pieces, List.of(roll), spacing, 40).bound()).isLessThanOrEqualTo(length * (1 + ROUNDING));
        });
    }

    /** Several short rolls, which end more often than one does. */
    @Test
    void shortRollsThatWereCutUpHoldTheirParts() {
        Cases.each(16, (random, size) -> {
            double spacing = 20 * (size % 2);
            List<Piece> pieces = KnownPlan.of(random, spacing, size % 4 > 1, 500, 300, 500, 300, 500, 300);
            Roll roll = new Roll(300, 0, OptionalDouble.of(500), Terms.OPEN);
            assertThat(goal(pieces, List.of(roll), spacing, 0).bound()).isLessThanOrEqualTo(1500 * (1 + ROUNDING));
        });
    }

    @Test
    void anOutlineAndASheetThatWereCutUpHoldTheirParts() {
        Cases.each(12, (random, size) -> {
            double spacing = 4 * (size % 3);
            double margin = 5 * (size % 2);
            List<Piece> pieces = KnownPlan.of(random, spacing, size % 4 > 1, 700, 500, 900, 600);
            double l = 700 + 2 * margin;
            double w = 500 + 2 * margin;
            // beyond the rectangle a corner more, which no part lies in
            Polygon border = Polygon.of(0, 0, l, 0, l + 30, w / 2, l, w, 0, w);
            Sheet sheet = new Sheet(900, 600, 0, price(10, OptionalInt.empty()));
            Outline bought = new Outline("o", border, margin, price(4, OptionalInt.of(1)));
            assertThat(goal(pieces, List.of(bought, sheet), spacing, 0).bound()).isLessThanOrEqualTo(14 + ROUNDING);
            Outline given = new Outline("o", border, margin, price(0, OptionalInt.of(1)));
            assertThat(goal(pieces, List.of(given, sheet), spacing, 0).bound()).isLessThanOrEqualTo(10 + ROUNDING);
        });
    }

    /** The area of parts grown by half the spacing, as the JTS Topology Suite grows them. */
    private static double grown(List<Piece> pieces, double spacing) {
        return pieces.stream()
                .mapToDouble(piece -> piece.count()
                        * KnownPlan.polygon(piece.outline())
                                .buffer(spacing / 2, 256)
                                .getArea())
                .sum();
    }

    @Test
    void grownPartsFillAGrownSheetAtBest() {
        Cases.each(16, (random, size) -> {
            double spacing = 30.0 * (size % 3);
            List<Piece> pieces = KnownPlan.of(random, 3, true, 800, 500, 700, 600);
            Kinds kinds = new Kinds(pieces);
            List<Stock> sheets = List.of(new Sheet(940, 640, 20, Terms.OPEN), new Sheet(1900, 1900, 20, Terms.OPEN));
            AreaBound bound = new AreaBound(kinds, new Charges(kinds, sheets), spacing);
            double least = 940
                    * 640
                    * grown(pieces, spacing)
                    / KnownPlan.rectangle(0, 0, 900, 600)
                            .buffer(spacing / 2, 256)
                            .getArea();
            double large = 1900
                    * 1900
                    * grown(pieces, spacing)
                    / KnownPlan.rectangle(0, 0, 1860, 1860)
                            .buffer(spacing / 2, 256)
                            .getArea();
            double expected = Math.min(least, large);
            List<Field> fields = List.of(Field.of(0, sheets.get(0)), Field.of(1, sheets.get(1)));
            assertThat(bound.of(fields)).isCloseTo(expected, within(1e-4 * expected));
            double capacity =
                    KnownPlan.rectangle(0, 0, 900, 600).buffer(spacing / 2, 256).getArea();
            assertThat(bound.capacity(fields.get(0))).isBetween(capacity, capacity + 0.5);
            assertThat(bound.unit(fields.get(0)) * capacity).isCloseTo(940 * 640, within(1e-4 * 940 * 640));
            assertThat(bound.covered(spacing)).isCloseTo(grown(pieces, spacing), within(1e-4 * expected));
        });
    }

    /** By hand: the stretch between the ends is as wide as the roll and one spacing; the ends are grown too, margins are lost. */
    @Test
    void grownPartsFillAGrownRollAtBest() {
        Cases.each(16, (random, size) -> {
            double spacing = 10.0 * (size % 3);
            List<Piece> pieces = KnownPlan.of(random, 3, true, 800, 500);
            Roll roll = new Roll(640, 20, OptionalDouble.empty(), Terms.OPEN);
            double ends = KnownPlan.rectangle(0, 0, 1000, 600)
                            .buffer(spacing / 2, 256)
                            .getArea()
                    - 1000 * (600 + spacing);
            double expected = (grown(pieces, spacing) - ends) / (600 + spacing) + 40;
            assertThat(SheetPlan.least(pieces, roll, spacing)).isCloseTo(expected, within(1e-4 * expected));
        });
    }

    @Test
    void whereEndsOfRollsGainMoreThanMarginsTakeThePartsAloneAreCertain() {
        Cases.each(4, (random, size) -> {
            List<Piece> pieces = KnownPlan.of(random, 3, true, 800, 500);
            Roll bare = new Roll(600, 0, OptionalDouble.empty(), Terms.OPEN);
            double area = grown(pieces, 0);
            assertThat(SheetPlan.least(pieces, bare, 10)).isCloseTo(area / 600, within(1e-9 * area));
            Kinds kinds = new Kinds(pieces);
            AreaBound bound = new AreaBound(kinds, new Charges(kinds, List.of(bare)), 10);
            assertThat(bound.gainsAtEnds(Field.of(0, bare))).isTrue();
            assertThat(bound.gainsAtEnds(Field.of(0, new Roll(620, 10, OptionalDouble.empty(), Terms.OPEN))))
                    .isFalse();
            assertThat(bound.gainsAtEnds(Field.of(0, new Sheet(600, 600, 0, Terms.OPEN))))
                    .isFalse();
        });
    }

    /** By hand: 1.5 m2 of parts; the outline of 0.5 m2 costs 2, a square metre of sheets 10, so 2 + 10 is the least. */
    @Test
    void outlinesAreCoveredToTheLastWhereTheyCostLess() {
        List<Piece> pieces = List.of(
                new Piece("A", ConvexPolygon.of(0, 0, 500, 0, 500, 100, 0, 100), 30, false, OptionalDouble.of(0)));
        Sheet sheet = new Sheet(2000, 1000, 0, price(20, OptionalInt.empty()));
        Polygon border = Polygon.of(0, 0, 1000, 0, 1000, 500, 0, 500);
        Outline cheap = new Outline("o", border, 0, price(2, OptionalInt.of(1)));
        assertThat(bound(pieces, cheap, sheet)).isCloseTo(12, within(1e-5));
        Outline two = new Outline("o", border, 0, price(2, OptionalInt.of(2)));
        assertThat(bound(pieces, two, sheet)).isCloseTo(9, within(1e-5));
        Outline dear = new Outline("o", border, 0, price(6, OptionalInt.of(1)));
        assertThat(bound(pieces, dear, sheet)).isCloseTo(15, within(1e-5));
        Outline cheaper = new Outline("p", border, 0, price(1, OptionalInt.of(1)));
        assertThat(bound(pieces, cheap, sheet, cheaper)).isCloseTo(2 + 1 + 5, within(1e-5));
        Outline many = new Outline("o", border, 0, price(2, OptionalInt.of(9)));
        assertThat(bound(pieces, many, sheet)).isCloseTo(6, within(1e-5));
        Outline first = new Outline("q", border, 0, price(1, OptionalInt.of(9)));
        assertThat(bound(pieces, many, sheet, first)).isCloseTo(3, within(1e-5));
        assertThat(bound(pieces, first, many)).isCloseTo(3, within(1e-5));
    }

    /** By hand: outlines given for nothing hold half a square metre of 1.5, so two sheets of 0.6 are begun. */
    @Test
    void besideOutlinesThatCostNothingWholeSheetsAreCounted() {
        List<Piece> pieces = List.of(
                new Piece("A", ConvexPolygon.of(0, 0, 500, 0, 500, 100, 0, 100), 30, false, OptionalDouble.of(0)));
        Outline given = new Outline("o", Polygon.of(0, 0, 1000, 0, 1000, 500, 0, 500), 0, price(0, OptionalInt.of(1)));
        assertThat(bound(pieces, given, new Sheet(1000, 600, 0, Terms.OPEN))).isEqualTo(2);
        assertThat(bound(pieces, given, new Sheet(1000, 1000, 0, Terms.OPEN))).isEqualTo(1);
    }

    /** By hand: a bare roll is worth the area of the parts alone, one with margins that of the parts grown. */
    @Test
    void besideOutlinesTheEndsOfRollsAreCertainOnlyWithMargins() {
        List<Piece> pieces = List.of(
                new Piece("A", ConvexPolygon.of(0, 0, 500, 0, 500, 100, 0, 100), 30, false, OptionalDouble.of(0)));
        Outline dear = new Outline("o", Polygon.of(0, 0, 1000, 0, 1000, 500, 0, 500), 5, price(99, OptionalInt.of(1)));
        Roll bare = new Roll(600, 0, OptionalDouble.empty(), price(1, OptionalInt.empty()));
        assertThat(bound(10, pieces, dear, bare)).isCloseTo(1500 / 600.0, within(1e-9));
        Roll framed = new Roll(620, 10, OptionalDouble.empty(), price(1, OptionalInt.empty()));
        assertThat(bound(10, pieces, dear, framed)).isCloseTo(grown(pieces, 10) / 1000 / 610, within(1e-5));
    }

    private static double bound(List<Piece> pieces, Stock... stocks) {
        return bound(0, pieces, stocks);
    }

    private static double bound(double spacing, List<Piece> pieces, Stock... stocks) {
        Kinds kinds = new Kinds(pieces);
        List<Stock> all = List.of(stocks);
        List<Field> fields = IntStream.range(0, all.size())
                .mapToObj(stock -> Field.of(stock, all.get(stock)))
                .toList();
        return new OutlineBound(kinds, new Charges(kinds, all), spacing, fields).least();
    }

    /** By Steiner's formula, as the JTS Topology Suite grows the outline. */
    @Test
    void whereTheMarginIsLessThanHalfTheSpacingAnOutlineHoldsThatMuchMore() {
        List<Piece> pieces = List.of(
                new Piece("A", ConvexPolygon.of(0, 0, 500, 0, 500, 100, 0, 100), 30, false, OptionalDouble.of(0)));
        Polygon border = Polygon.of(0, 0, 1000, 0, 600, 500, 100, 400);
        Outline outline = new Outline("o", border, 3, price(2, OptionalInt.of(99)));
        double covered = grown(pieces, 20);
        double capacity = KnownPlan.polygon(ConvexPolygon.of(0, 0, 1000, 0, 600, 500, 100, 400))
                .buffer(10 - 3, 256)
                .getArea();
        Kinds kinds = new Kinds(pieces);
        OutlineBound bound =
                new OutlineBound(kinds, new Charges(kinds, List.of(outline)), 20, List.of(Field.of(0, outline)));
        assertThat(bound.least()).isCloseTo(2 * covered / capacity, within(1e-3));
    }
}
