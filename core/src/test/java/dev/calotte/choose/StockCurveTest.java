package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.choose.StockCurve.Step;
import dev.calotte.choose.StockCurve.Yield;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class StockCurveTest {

    private static final DomeSpec ICOSAHEDRON =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), new Size(Size.Measure.LONGEST_STRUT, 1000));
    private static final DomeSpec HALF =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000)).withKeep(new Keep.Rows(1, 2));
    private static final Layout QUICK = new Layout(0, 0, 1);
    private static final Layout FINE = new Layout(0, 1, 1);

    private static Resizing resizing(DomeSpec spec, Joinery joinery, boolean mayGrow) {
        Function<Size, Parts> domes = size -> Parts.of(Dome.of(spec.withSize(size)), joinery);
        return new Resizing(domes, spec.size(), 1, mayGrow);
    }

    private static StockCurve ofBars(DomeSpec spec, Joinery joinery, List<Bar> bars) {
        Resizing resizing = resizing(spec, joinery, true);
        BarPlan plan = BarNeeds.plan(resizing.domes().apply(spec.size()), bars);
        return StockCurve.ofBars(plan, bars, resizing).orElseThrow();
    }

    private static CoverPlan plan(Resizing resizing, double value, Cover cover, Stock... stocks) {
        Parts parts = resizing.domes().apply(new Size(resizing.size().measure(), value));
        return CoverPlan.of(CoverFit.of(Patterns.of(parts, cover), List.of(stocks)), QUICK)
                .orElseThrow();
    }

    /**
     * By hand: 30 struts. Of a bar of 4200 mm with kerfs of 3 mm and trims of 50 mm, three come at 1000 mm (4100 usable),
     * four at (4100 - 3 * 3) / 4 = 1022.75 mm: so they do up to 1022 mm, and at 1000 mm already. Five at
     * (4100 - 4 * 3) / 5 = 817.6 mm are out of reach.
     */
    @Test
    void barsTakeNoMoreUpToWhereOneStrutLessComesOut() {
        List<Bar> bars = List.of(new Bar(4200, 3, 50, Terms.OPEN));
        StockCurve curve = ofBars(ICOSAHEDRON, Joinery.nodeToNode(), bars);
        assertThat(curve.spent()).isEqualTo(8);
        assertThat(curve.measure()).isEqualTo(Measure.PIECES);
        assertThat(curve.by()).isEqualTo(Size.Measure.LONGEST_STRUT);
        assertThat(curve.larger()).contains(new Step(1022, 8, List.of()));
        assertThat(curve.smaller()).isEmpty();
    }

    /** By hand: two come out of a bar at (usable - kerf) / 2 and below, here at 947 mm exactly, 1047 mm with the gaps. */
    @Test
    void twoComeOutOfABarAtHalfOfWhatAKerfLeaves() {
        DomeSpec larger = ICOSAHEDRON.withSize(new Size(Size.Measure.LONGEST_STRUT, 1100));
        List<Bar> bars = List.of(new Bar(2 * 947 + 4 + 2 * 20, 4, 20, Terms.OPEN));
        StockCurve curve = ofBars(larger, Joinery.gap(50), bars);
        assertThat(curve.spent()).isEqualTo(30);
        assertThat(curve.smaller()).containsExactly(new Step(1047, 15, List.of(new Yield("S1", 2, 1938))));
        // a tenth more is within one bar still
        assertThat(curve.larger()).contains(new Step(1210, 30, List.of()));
    }

    @Test
    void stepsOfBarsAreTheLargestOfTheirKind() {
        List<Bar> bars = List.of(new Bar(6000, 3, 0, Terms.OPEN));
        for (Joinery joinery :
                List.of(Joinery.nodeToNode(), Joinery.gap(45), Joinery.gap(20).withMergeWithin(5))) {
            StockCurve curve = ofBars(HALF, joinery, bars);
            Resizing resizing = resizing(HALF, joinery, true);
            double before = curve.spent();
            for (Step step : curve.smaller()) {
                assertThat(bars(resizing, step.size(), bars)).isEqualTo((int) step.spent());
                assertThat(bars(resizing, step.size() + 1, bars)).isEqualTo((int) before);
                before = step.spent();
            }
            double most = curve.larger().map(Step::size).orElse(2000.0);
            assertThat(bars(resizing, most, bars)).isEqualTo((int) curve.spent());
            assertThat(bars(resizing, most + 1, bars)).isGreaterThan((int) curve.spent());
        }
        assertThat(ofBars(HALF, Joinery.gap(45), bars).smaller()).hasSizeGreaterThan(1);
    }

    private static int bars(Resizing resizing, double value, List<Bar> bars) {
        return BarNeeds.plan(resizing.parts(value), bars).bars().size();
    }

    /** By hand: of bars of 2 m for 10 and of 3 m for 14, one strut of 1000 mm costs 5 or 14/3, of 1001 mm 10 or 7. */
    @Test
    void severalBarsAreComparedByPrice() {
        List<Bar> bars = List.of(new Bar(2000, 0, 0, priced(10)), new Bar(3000, 0, 0, priced(14)));
        StockCurve curve = ofBars(ICOSAHEDRON, Joinery.nodeToNode(), bars);
        assertThat(curve.measure()).isEqualTo(Measure.PRICE);
        assertThat(curve.spent()).isCloseTo(140, within(1e-9));
        assertThat(curve.larger()).isEmpty();
        DomeSpec more = ICOSAHEDRON.withSize(new Size(Size.Measure.LONGEST_STRUT, 1050));
        StockCurve less = ofBars(more, Joinery.nodeToNode(), bars);
        assertThat(less.spent()).isCloseTo(15 * 14, within(1e-9));
        assertThat(less.smaller().get(0).size()).isEqualTo(1000);
        assertThat(less.smaller().get(0).yields()).containsExactly(new Yield("S1", 2, 2000), new Yield("S1", 3, 3000));
    }

    private static Terms priced(double price) {
        return new Terms(OptionalDouble.of(price), OptionalDouble.empty(), OptionalInt.empty());
    }

    @Test
    void aFloorAreaGrowsWithTheSquare() {
        Size area = new Size(Size.Measure.FLOOR_AREA, 12e6);
        DomeSpec spec = HALF.withSize(area);
        List<Bar> bars = List.of(new Bar(6000, 3, 0, Terms.OPEN));
        Function<Size, Parts> domes = size -> Parts.of(Dome.of(spec.withSize(size)), Joinery.gap(45));
        Resizing resizing = new Resizing(domes, area, 1e4, true);
        StockCurve curve = StockCurve.ofBars(BarNeeds.plan(domes.apply(area), bars), bars, resizing)
                .orElseThrow();
        assertThat(curve.smaller()).isNotEmpty();
        for (Step step : curve.smaller()) {
            assertThat(step.size() / 1e4).isCloseTo(Math.rint(step.size() / 1e4), within(1e-6));
            assertThat(bars(resizing, step.size(), bars)).isEqualTo((int) step.spent());
        }
    }

    @Test
    void whatTakesLongIsNotTried() {
        List<Bar> bars = List.of(new Bar(6000, 3, 0, Terms.OPEN));
        DomeSpec many = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(16), Size.radius(5000));
        Resizing resizing = resizing(many, Joinery.nodeToNode(), true);
        BarPlan any = BarNeeds.plan(resizing(HALF, Joinery.nodeToNode(), true).parts(2000), bars);
        assertThat(StockCurve.ofBars(any, bars, resizing)).isEmpty();
        // of 500 pieces two sizes could be tried, which is of no use
        DomeSpec five = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(5), Size.radius(1000));
        Resizing whole = resizing(five, Joinery.nodeToNode(), false);
        CoverPlan plan = plan(whole, 1000, Cover.of("net"), new Sheet(3000, 2000, 0, Terms.OPEN));
        assertThat(StockCurve.ofCover(plan, whole, QUICK)).isEmpty();
    }

    /**
     * By hand: the half sphere of frequency 2 has 40 panels. Every step is a plan that can be made in its size by anybody
     * who asks for it.
     */
    @Test
    void stepsOfSheetsAreKept() {
        Cover cover = Cover.of("ply")
                .with(new Treatment(true, false, Cover.of("x").treatment().split(), false));
        Stock sheet = new Sheet(2440, 1220, 10, priced(46));
        for (Layout layout : List.of(QUICK, FINE)) {
            Resizing resizing = resizing(HALF, Joinery.nodeToNode(), true);
            StockCurve curve = StockCurve.ofCover(plan(resizing, 2000, cover, sheet), resizing, layout)
                    .orElseThrow();
            assertThat(curve.measure()).isEqualTo(Measure.PIECES);
            assertThat(curve.smaller()).isNotEmpty();
            double before = curve.spent();
            for (Step step : curve.smaller()) {
                assertThat(step.size()).isBetween(1800.0, 1999.0).isEqualTo(Math.rint(step.size()));
                assertThat(step.spent()).isLessThan(before);
                assertThat(step.yields()).isEmpty();
                before = step.spent();
                int sheets = plan(resizing, step.size(), cover, sheet)
                        .plan()
                        .sheets()
                        .size();
                assertThat(sheets).isLessThanOrEqualTo((int) step.spent());
            }
            curve.larger().ifPresent(step -> {
                assertThat(step.size()).isBetween(2001.0, 2200.0);
                assertThat(plan(resizing, step.size(), cover, sheet).plan().sheets())
                        .hasSizeLessThanOrEqualTo((int) curve.spent());
            });
        }
    }

    /** By hand: triangles with sides of 999 mm lie two a sheet, and so they do up to 1000 mm; larger ones do not fit. */
    @Test
    void trianglesOnSheetsDoUpToWhereTheyTouch() {
        Stock sheet = new Sheet(1500, 1000 * Math.sqrt(0.75), 0, Terms.OPEN);
        DomeSpec spec = ICOSAHEDRON.withSize(new Size(Size.Measure.LONGEST_STRUT, 999));
        Resizing resizing = resizing(spec, Joinery.nodeToNode(), true);
        CoverPlan plan = plan(resizing, 999, Cover.of("net"), sheet);
        StockCurve curve = StockCurve.ofCover(plan, resizing, FINE).orElseThrow();
        assertThat(curve.spent()).isEqualTo(10);
        assertThat(curve.larger()).contains(new Step(1000, 10, List.of()));
    }

    /** By hand: twenty triangles head to tail on a roll are ten and a half sides long; in smaller sizes that is one way. */
    @Test
    void rollsHaveNoStepsButLengths() {
        Stock roll = new Roll(1000 * Math.sqrt(0.75), 0, OptionalDouble.empty(), priced(7));
        Resizing resizing = resizing(ICOSAHEDRON, Joinery.nodeToNode(), true);
        CoverPlan plan = plan(resizing, 1000, Cover.of("net"), roll);
        StockCurve curve = StockCurve.ofCover(plan, resizing, FINE).orElseThrow();
        assertThat(curve.measure()).isEqualTo(Measure.LENGTH_MM);
        assertThat(curve.spent()).isCloseTo(10_500, within(1e-3));
        assertThat(curve.smaller()).extracting(Step::size).containsExactly(950.0, 900.0);
        assertThat(curve.smaller().get(0).spent()).isBetween(0.95 * 9_000, 9_975.001);
        assertThat(curve.larger()).isEmpty();
        assertThat(StockCurve.ofCover(plan, resizing, QUICK).orElseThrow().smaller())
                .hasSize(1);
        Stock wide = new Roll(1200, 0, OptionalDouble.empty(), Terms.OPEN);
        CoverPlan more = plan(resizing, 1000, Cover.of("net"), wide);
        assertThat(StockCurve.ofCover(more, resizing, QUICK).orElseThrow().larger())
                .hasValueSatisfying(step -> assertThat(step.size()).isEqualTo(1050));
        Resizing widest = resizing(ICOSAHEDRON, Joinery.nodeToNode(), false);
        assertThat(StockCurve.ofCover(more, widest, QUICK).orElseThrow().larger())
                .isEmpty();
    }

    @Test
    void sizesAreWholeUnits() {
        Resizing sixteenths = new Resizing(size -> null, Size.radius(1000), 25.4 / 16, true);
        assertThat(sixteenths.times(1) * 16 / 25.4).isCloseTo(629, within(1e-9));
        assertThat(sixteenths.down(629 * 25.4 / 16) * 16 / 25.4).isCloseTo(629, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> new Resizing(size -> null, Size.radius(1000), 0, true));
    }
}
