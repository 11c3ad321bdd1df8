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
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Prices and measures, all by hand. */
class ChargesTest {

    private static final Terms ONE = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1));
    private static final Piece PIECE =
            new Piece("A", ConvexPolygon.of(0, 0, 300, 0, 300, 100, 0, 100), 3, false, OptionalDouble.of(0));
    private static final Polygon BORDER = Polygon.of(0, 0, 400, 0, 400, 300, 0, 300);

    private static Terms price(double price) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), OptionalInt.of(9));
    }

    private static Charges charges(Stock... stocks) {
        return new Charges(new Kinds(List.of(PIECE)), List.of(stocks));
    }

    private static Sheet sheet(Terms terms) {
        return new Sheet(1000, 500, 10, terms);
    }

    private static Roll roll(Terms terms) {
        return new Roll(800, 20, OptionalDouble.empty(), terms);
    }

    @Test
    void whereAllHavePricesMoneyIsSpent() {
        Charges charges = charges(sheet(price(12)), roll(price(7)), new Outline("o", BORDER, 0, price(3)));
        assertThat(charges.measure()).isEqualTo(Measure.PRICE);
        assertThat(charges.rate(0)).isEqualTo(12);
        // a price of rolls is that of a metre
        assertThat(charges.rate(1)).isCloseTo(0.007, within(1e-15));
        assertThat(charges.rate(2)).isEqualTo(3);
    }

    @Test
    void oneStockWithoutAPriceIsCounted() {
        assertThat(charges(sheet(Terms.OPEN)).measure()).isEqualTo(Measure.PIECES);
        assertThat(charges(sheet(Terms.OPEN)).rate(0)).isEqualTo(1);
        assertThat(charges(roll(Terms.OPEN)).measure()).isEqualTo(Measure.LENGTH_MM);
        assertThat(charges(roll(Terms.OPEN)).rate(0)).isEqualTo(1);
    }

    @Test
    void severalStocksOfWhichOneHasNoPriceAreMeasuredByTheirArea() {
        Charges charges = charges(sheet(price(12)), roll(Terms.OPEN), new Outline("o", BORDER, 0, price(3)));
        assertThat(charges.measure()).isEqualTo(Measure.AREA_MM2);
        assertThat(charges.rate(0)).isEqualTo(500_000);
        assertThat(charges.rate(1)).isEqualTo(800);
        assertThat(charges.rate(2)).isEqualTo(120_000);
    }

    @Test
    void whatIsAtHandForNothingDoesNotCountBesideWhatIsBought() {
        Outline given = new Outline("o", BORDER, 0, ONE);
        assertThat(charges(given, sheet(Terms.OPEN)).measure()).isEqualTo(Measure.PIECES);
        assertThat(charges(given, sheet(Terms.OPEN)).rate(0)).isZero();
        assertThat(charges(given, sheet(Terms.OPEN)).rate(1)).isEqualTo(1);
        Charges several = charges(given, sheet(Terms.OPEN), roll(Terms.OPEN));
        assertThat(several.measure()).isEqualTo(Measure.AREA_MM2);
        assertThat(several.rate(0)).isZero();
        assertThat(charges(given, given).measure()).isEqualTo(Measure.AREA_MM2);
        assertThat(charges(given, given).rate(0)).isEqualTo(120_000);
        assertThat(charges(given).measure()).isEqualTo(Measure.PIECES);
        assertThat(charges(given).rate(0)).isEqualTo(1);
    }

    private static Filled filled(Stock stock, double... xs) {
        List<Spot> spots =
                Arrays.stream(xs).mapToObj(x -> new Spot(0, false, 0, x, 0)).toList();
        return new Filled(Field.of(0, stock), spots);
    }

    @Test
    void ofARollTheLengthUpToTheLastPartIsPaidAndBothMargins() {
        Charges charges = charges(roll(price(7)));
        Filled two = filled(roll(price(7)), 450, 20);
        assertThat(charges.takenMm(two)).isCloseTo(790, within(1e-9));
        assertThat(charges.cost(two)).isCloseTo(5.53, within(1e-9));
        assertThat(charges.cost(List.of(two, filled(roll(price(7)), 0)))).isCloseTo(5.53 + 2.38, within(1e-9));
    }

    @Test
    void ofASheetAllIsPaid() {
        Sheet sheet = sheet(price(12));
        assertThat(charges(sheet).cost(filled(sheet, 0))).isEqualTo(12);
        assertThat(charges(sheet).cost(List.of(filled(sheet, 0), filled(sheet, 0, 300))))
                .isEqualTo(24);
        CutSheet whole = new CutSheet(sheet, 1000, 500, List.of(), List.of());
        assertThat(charges(sheet).cost(0, whole)).isEqualTo(12);
        CutSheet stretch = new CutSheet(roll(price(7)), 2000, 800, List.of(), List.of());
        assertThat(charges(roll(price(7))).cost(0, stretch)).isCloseTo(14, within(1e-12));
    }

    @Test
    void theSameStockAtNoKnownPriceKeepsItsMeasures() {
        assertThat(Charges.open(sheet(price(12)))).isEqualTo(sheet(Terms.OPEN));
        Roll ending = new Roll(800, 20, OptionalDouble.of(3000), price(7));
        assertThat(Charges.open(ending)).isEqualTo(new Roll(800, 20, OptionalDouble.of(3000), Terms.OPEN));
    }
}
