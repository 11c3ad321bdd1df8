package dev.calotte.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RiserWall;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Patterns;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A half 2V of 2 m radius: 30 struts S1 and 35 S2, 30 panels P1 and 10 P2, counted by hand. */
class BillTest {

    private static final Terms PRICED = new Terms(OptionalDouble.of(20), OptionalDouble.of(0.5), OptionalInt.of(40));

    @Test
    void sparesAreWholePiecesOneOfEachSortAtLeast() {
        Bill bill = Bill.of(needs(0.05, List.of(new Bar(6000, 3, 0, PRICED)), List.of()));
        assertThat(line(bill, Item.STRUT, "S1")).returns(30.0, BillLine::needed).returns(2.0, BillLine::spare);
        assertThat(line(bill, Item.STRUT, "S2")).returns(35.0, BillLine::needed).returns(2.0, BillLine::spare);
        assertThat(line(bill, Item.HUB, "H2")).returns(1.0, BillLine::spare);
        assertThat(line(bill, Item.PANEL, "P1")).returns(30.0, BillLine::needed).returns(0.0, BillLine::spare);
        assertThat(bill.made()).allMatch(each -> each.priceEach().isEmpty());
    }

    @Test
    void spareBarsAreThoseThatTheSpareStrutsComeOutOf() {
        // two of 1093 mm and two of 1236 mm take 4.66 m and three cuts
        Bill bill = Bill.of(needs(0.05, List.of(new Bar(6000, 3, 0, PRICED)), List.of()));
        BillLine bars = bill.bought().get(0);
        assertThat(bars.item()).isEqualTo(Item.BAR);
        assertThat(bars.spare()).isEqualTo(1);
        assertThat(bars.price().orElseThrow()).isCloseTo(20 * (bars.needed() + 1), within(1e-9));
        assertThat(bars.massKg().orElseThrow()).isCloseTo(0.5 * 6 * (bars.needed() + 1), within(1e-9));
        assertThat(bars.totalLengthMm().orElseThrow()).isCloseTo(6000 * (bars.needed() + 1), within(1e-9));
        // of 3 m bars that hold two struts each it takes two
        assertThat(Bill.of(needs(0.05, List.of(new Bar(3000, 3, 0, Terms.OPEN)), List.of()))
                        .bought()
                        .get(0)
                        .spare())
                .isEqualTo(2);
    }

    @Test
    void nothingIsSparedWhereNoneIsWanted() {
        Bill bill = Bill.of(needs(
                0, List.of(new Bar(6000, 3, 0, PRICED)), List.of(new Roll(1500, 10, OptionalDouble.empty(), PRICED))));
        assertThat(bill.lines()).isNotEmpty().allMatch(each -> each.spare() == 0);
    }

    @Test
    void sheetsAreWholeAndRollsAreMeasured() {
        Bill sheets = Bill.of(needs(0.1, List.of(), List.of(new Sheet(2440, 1220, 0, PRICED))));
        BillLine sheet = sheets.bought().get(0);
        assertThat(sheet.item()).isEqualTo(Item.SHEET);
        assertThat(sheet.spare()).isEqualTo(Math.ceil(sheet.needed() / 10));
        assertThat(sheet.massKg().orElseThrow()).isCloseTo(0.5 * 2.44 * 1.22 * sheet.amount(), within(1e-9));
        Bill rolls = Bill.of(needs(0.1, List.of(), List.of(new Roll(1500, 10, OptionalDouble.empty(), PRICED))));
        BillLine roll = rolls.bought().get(0);
        assertThat(roll.item()).isEqualTo(Item.ROLL);
        assertThat(roll.needed()).isBetween(10.0, 40.0);
        assertThat(roll.spare()).isCloseTo(roll.needed() / 10, within(1e-9));
        assertThat(roll.totalLengthMm().orElseThrow()).isCloseTo(1100 * roll.needed(), within(1e-6));
        assertThat(rolls.price().orElseThrow()).isCloseTo(22 * roll.needed(), within(1e-9));
        assertThat(rolls.lacksPrices()).isFalse();
    }

    @Test
    void unknownPricesAreSaid() {
        Bill bill =
                Bill.of(needs(0, List.of(new Bar(6000, 3, 0, Terms.OPEN)), List.of(new Sheet(2440, 1220, 0, PRICED))));
        assertThat(bill.lacksPrices()).isTrue();
        assertThat(bill.price()).isPresent();
    }

    @Test
    void holesAreFastenersAndFlattenedEndsTakeABoltAHub() {
        Joinery flat = Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 10.5, 20, OptionalDouble.of(1.5)));
        Parts parts = Parts.of(dome(), flat);
        Cover cover = Cover.of("cover").with(new Fasteners(6, 30, 300));
        CoverFit fit = CoverFit.of(Patterns.of(parts, cover), List.of());
        Bill bill = Bill.of(new Needs(parts, Optional.empty(), Optional.empty(), List.of(fit), List.of(), 0.05));
        int holes = fit.fits().stream()
                .mapToInt(each ->
                        each.pattern().count() * each.pattern().whole().holes().size())
                .sum();
        assertThat(line(bill, Item.FASTENER, "cover")).returns((double) holes, BillLine::needed);
        List<BillLine> bolts =
                bill.bought().stream().filter(each -> each.item() == Item.BOLT).toList();
        assertThat(bolts).allMatch(bolt -> bolt.mark().equals("M10"));
        assertThat(bolts.stream().mapToDouble(BillLine::needed).sum()).isEqualTo(26);
        assertThat(bolts.stream().map(bolt -> bolt.lengthMm().orElseThrow())).doesNotHaveDuplicates();
    }

    @Test
    void theWallUnderTheBaseIsCountedToo() {
        Parts parts = Parts.of(dome(), Joinery.nodeToNode());
        RiserWall wall = RiserWall.of(parts.dome(), 600);
        Bill bill = Bill.of(new Needs(parts, Optional.of(wall), Optional.empty(), List.of(), List.of(), 0.05));
        assertThat(line(bill, Item.RISER_UPRIGHT, "U1")).returns(10.0, BillLine::needed);
        assertThat(line(bill, Item.RISER_BAY, "W1").totalAreaMm2().orElseThrow())
                .isCloseTo(10 * 600 * wall.walls().get(0).widthMm(), within(1e-3));
    }

    @Test
    void massesAddUp() {
        Needs needs = needs(0, List.of(new Bar(6000, 3, 0, PRICED)), List.of(new Sheet(2440, 1220, 0, PRICED)));
        Masses masses = Masses.of(needs);
        Dome dome = needs.parts().dome();
        double struts = dome.struts().stream()
                .mapToDouble(strut -> masses.ofStrut(strut).orElseThrow())
                .sum();
        assertThat(masses.frameKg().orElseThrow()).isCloseTo(struts, within(1e-9));
        assertThat(masses.ofStruts(dome.struts()).orElseThrow()).isCloseTo(struts, within(1e-9));
        // panels lie in the plane of the hubs without allowances: the skin of the dome at half a kilogram a square
        // metre
        assertThat(masses.panelsKg().orElseThrow())
                .isCloseTo(0.5 * dome.measures().surfaceAreaMm2() / 1e6, within(1e-9));
    }

    @Test
    void whatIsNotKnownIsNotWeighed() {
        Masses masses = Masses.of(needs(0, List.of(new Bar(6000, 3, 0, Terms.OPEN)), List.of()));
        assertThat(masses.frameKg()).isEmpty();
        assertThat(masses.panelsKg()).isEmpty();
        assertThat(masses.ofPanel(dome().panels().get(0))).isEmpty();
        assertThat(masses.ofStruts(dome().struts())).isEmpty();
    }

    @Test
    void aShareIsAPartOfAll() {
        assertThatThrownBy(() -> needs(1.5, List.of(), List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    private static BillLine line(Bill bill, Item item, String mark) {
        return bill.lines().stream()
                .filter(each -> each.item() == item && each.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    private static Dome dome() {
        return Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))
                .withKeep(new Keep.Rows(1, 2)));
    }

    private static Needs needs(double share, List<Bar> bars, List<Stock> stocks) {
        Parts parts = Parts.of(dome(), Joinery.nodeToNode());
        Optional<BarPlan> plan = bars.isEmpty() ? Optional.empty() : Optional.of(BarNeeds.plan(parts, bars));
        CoverFit fit = CoverFit.of(Patterns.of(parts, Cover.of("cover")), stocks);
        List<CoverPlan> plans = CoverPlan.of(fit, new Layout(5, 0, 1)).stream().toList();
        return new Needs(parts, Optional.empty(), plan, stocks.isEmpty() ? List.of() : List.of(fit), plans, share);
    }
}
