package dev.calotte.bill;

import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.CutBar;
import dev.calotte.nest.CutSheet;
import dev.calotte.parts.BoltStack;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.RiserWall;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Counts line by line. */
final class BillMaking {

    private final Needs needs;
    private final List<BillLine> lines = new ArrayList<>();

    BillMaking(Needs needs) {
        this.needs = needs;
    }

    Bill bill() {
        needs.bars().ifPresent(this::addBars);
        needs.plans().forEach(this::addStock);
        addBolts();
        needs.covers().forEach(this::addFasteners);
        addLengths();
        addPanels();
        for (HubKind kind : needs.parts().hubKinds()) {
            add(BillLine.pieces(Item.HUB, kind.mark(), kind.count()));
        }
        needs.riser().ifPresent(this::addRiser);
        return new Bill(lines);
    }

    private void add(BillLine line) {
        lines.add(line.spared(needs.sparePieces(line.needed())));
    }

    private void addBars(BarPlan plan) {
        Map<Bar, Integer> used = count(plan);
        Map<Bar, Integer> spare = spareBars(List.copyOf(used.keySet()));
        used.forEach((bar, count) -> lines.add(BillLine.pieces(Item.BAR, "", count)
                .ofLength(bar.lengthMm())
                .spared(spare.getOrDefault(bar, 0))
                .at(bar.terms().price(), times(bar.terms().massKg(), bar.lengthMm() / 1000))));
    }

    private static Map<Bar, Integer> count(BarPlan plan) {
        Map<Bar, Integer> bars = new LinkedHashMap<>();
        plan.bars().stream().map(CutBar::bar).forEach(bar -> bars.merge(bar, 1, Integer::sum));
        return bars;
    }

    /** As many as the spare pieces are cut from; how many are left at the seller's is not asked. */
    private Map<Bar, Integer> spareBars(List<Bar> bars) {
        List<Cut> spares = new ArrayList<>();
        for (Cut cut : BarNeeds.of(needs.parts())) {
            int count = (int) needs.sparePieces(cut.count());
            if (count > 0) {
                spares.add(new Cut(cut.mark(), cut.lengthMm(), count));
            }
        }
        List<Bar> open = bars.stream().map(BillMaking::unlimited).toList();
        Map<Bar, Integer> spare = new LinkedHashMap<>();
        if (!spares.isEmpty()) {
            count(BarPlan.of(spares, open)).forEach((bar, count) -> spare.put(bars.get(open.indexOf(bar)), count));
        }
        return spare;
    }

    private static Bar unlimited(Bar bar) {
        return new Bar(bar.lengthMm(), bar.kerfMm(), bar.trimMm(), bar.terms().unlimited());
    }

    private void addStock(CoverPlan plan) {
        Map<Stock, Double> used = new LinkedHashMap<>();
        for (Stock stock : plan.fit().stocks()) {
            double amount = plan.plan().sheets().stream()
                    .filter(sheet -> sheet.stock().equals(stock))
                    .mapToDouble(BillMaking::amount)
                    .sum();
            if (amount > 0) {
                used.put(stock, amount);
            }
        }
        used.forEach((stock, amount) -> addStock(plan.fit().patterns().cover().name(), stock, amount));
    }

    private static double amount(CutSheet sheet) {
        return sheet.stock() instanceof Roll ? sheet.lengthMm() / 1000 : 1;
    }

    private void addStock(String cover, Stock stock, double amount) {
        if (stock instanceof Roll roll) {
            double areaMm2 = roll.widthMm() * 1000;
            lines.add(BillLine.pieces(Item.ROLL, cover, amount)
                    .ofWidth(roll.widthMm())
                    .ofArea(areaMm2)
                    .spared(amount * needs.spareShare())
                    .at(roll.terms().price(), times(roll.terms().massKg(), areaMm2 / 1e6)));
        } else if (stock instanceof Outline outline) {
            double areaMm2 = outline.border().area();
            lines.add(BillLine.pieces(Item.OFFCUT, outline.name(), amount)
                    .ofArea(areaMm2)
                    .at(outline.terms().price(), times(outline.terms().massKg(), areaMm2 / 1e6)));
        } else if (stock instanceof Sheet sheet) {
            double areaMm2 = sheet.lengthMm() * sheet.widthMm();
            add(BillLine.pieces(Item.SHEET, cover, amount)
                    .ofLength(sheet.lengthMm())
                    .ofWidth(sheet.widthMm())
                    .ofArea(areaMm2)
                    .at(sheet.terms().price(), times(sheet.terms().massKg(), areaMm2 / 1e6)));
        }
    }

    private static OptionalDouble times(OptionalDouble each, double amount) {
        return each.isPresent() ? OptionalDouble.of(each.getAsDouble() * amount) : each;
    }

    /** One bolt goes through all flattened ends of a hub. */
    private void addBolts() {
        Map<String, BillLine> bolts = new LinkedHashMap<>();
        for (HubKind kind : needs.parts().hubKinds()) {
            needs.parts().boltStack(kind).ifPresent(stack -> {
                BillLine line =
                        BillLine.pieces(Item.BOLT, thread(stack), kind.count()).ofLength(stack.lengthMm());
                bolts.merge(thread(stack) + "x" + stack.lengthMm(), line, BillMaking::both);
            });
        }
        bolts.values().forEach(this::add);
    }

    private static String thread(BoltStack stack) {
        return "M" + NumberText.trimmed(stack.diameterMm(), 1);
    }

    private static BillLine both(BillLine one, BillLine other) {
        return BillLine.pieces(one.item(), one.mark(), one.needed() + other.needed())
                .ofLength(one.lengthMm().orElseThrow());
    }

    private void addFasteners(CoverFit fit) {
        int holes = 0;
        for (PatternFit each : fit.fits()) {
            holes += each.pattern().count()
                    * each.pieces().stream()
                            .mapToInt(piece -> piece.holes().size())
                            .sum();
        }
        if (holes > 0) {
            add(BillLine.pieces(Item.FASTENER, fit.patterns().cover().name(), holes));
        }
    }

    /** Struts, or the rails that stand in their place. */
    private void addLengths() {
        Item item = needs.parts().railKinds().isEmpty() ? Item.STRUT : Item.RAIL;
        for (Cut cut : BarNeeds.of(needs.parts())) {
            add(BillLine.pieces(item, cut.mark(), cut.count()).ofLength(cut.lengthMm()));
        }
    }

    private void addPanels() {
        needs.parts()
                .panelKinds()
                .forEach(kind -> lines.add(BillLine.pieces(Item.PANEL, kind.mark(), kind.count())
                        .ofArea(kind.triangle().area())));
    }

    private void addRiser(RiserWall wall) {
        wall.uprights()
                .forEach(u -> add(
                        BillLine.pieces(Item.RISER_UPRIGHT, u.mark(), u.count()).ofLength(u.lengthMm())));
        wall.bottomPlates()
                .forEach(b -> add(BillLine.pieces(Item.RISER_BOTTOM_PLATE, b.mark(), b.count())
                        .ofLength(b.lengthMm())));
        wall.walls()
                .forEach(w -> lines.add(BillLine.pieces(Item.RISER_BAY, w.mark(), w.count())
                        .ofLength(w.widthMm())
                        .ofArea(w.widthMm() * (w.lowMm() + w.highMm()) / 2)));
    }
}
