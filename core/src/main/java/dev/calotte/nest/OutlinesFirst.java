package dev.calotte.nest;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Plans for stock with irregular outlines: they are filled one after the other, those that cost least for their area first,
 * and what is left is laid on the other stock ({@link SheetPlan}). Plans that stop after fewer of them are made as well, and
 * what spends least is kept; of those alike the one with all outlines that cost nothing.
 */
final class OutlinesFirst {

    /** So many plans are made for the rest, on the way to the best. */
    private static final int MOST_PLANS = 12;

    private static final double ROUNDING = 1e-9;

    private final List<Piece> pieces;
    private final Kinds kinds;
    private final List<Stock> stocks;
    private final Layout layout;
    private final Charges charges;
    private final List<Field> fields = new ArrayList<>();
    private final List<Filled> filled = new ArrayList<>();
    private final List<int[]> left = new ArrayList<>();
    private int steps;

    OutlinesFirst(List<Piece> pieces, List<Stock> stocks, Layout layout) {
        this.pieces = List.copyOf(pieces);
        this.kinds = new Kinds(pieces);
        this.stocks = stocks;
        this.layout = layout;
        this.charges = new Charges(kinds, stocks);
        for (int stock = 0; stock < stocks.size(); stock++) {
            Field field = Field.of(stock, stocks.get(stock));
            if (!(stocks.get(stock) instanceof Outline) || takesAny(field)) {
                fields.add(field);
            }
        }
    }

    private boolean takesAny(Field field) {
        for (int kind = 0; kind < kinds.count(); kind++) {
            if (Room.lackingMm(kinds, kind, field) <= Room.TOUCHING_MM) {
                return true;
            }
        }
        return false;
    }

    /** Sheets and what they cost. */
    private record Bought(List<CutSheet> sheets, double cost) {}

    CutPlan plan(List<Manner> manners) {
        List<Stock> others =
                stocks.stream().filter(s -> !(s instanceof Outline)).toList();
        if (fields.isEmpty()) {
            throw tooLittle(kinds.parts());
        }
        Room.check(kinds, fields);
        List<Field> outlines = outlines();
        if (outlines.isEmpty()) {
            return SheetPlan.planned(pieces, others, layout, manners);
        }
        fill(outlines, manners);
        Layout quick = layout.withSteps(0);
        int best = -1;
        Optional<Bought> bought = Optional.empty();
        for (int count : counts()) {
            Optional<Bought> other = bought(count, others, quick, manners);
            if (other.isPresent() && (bought.isEmpty() || isLess(other.get(), bought.get()))) {
                bought = other;
                best = count;
            }
        }
        Bought first = bought.orElseThrow(() -> tooLittle(total(left.get(filled.size()))));
        Layout rest = layout.withSteps(Math.max(0, layout.steps() - steps));
        Bought last = rest.steps() > 0
                ? bought(best, others, rest, manners)
                        .filter(b -> isLess(b, first))
                        .orElse(first)
                : first;
        return finish(last);
    }

    private static boolean isLess(Bought one, Bought other) {
        return one.cost() < other.cost() - ROUNDING * Math.abs(other.cost());
    }

    private CutPlan finish(Bought bought) {
        List<CutSheet> sheets = new ArrayList<>(bought.sheets());
        sheets.sort(Comparator.comparingInt(sheet -> stocks.indexOf(sheet.stock())));
        double bound = new OutlineBound(kinds, charges, layout.spacingMm(), fields).least();
        return new CutPlan(sheets, new Goal(charges.measure(), bought.cost(), bound, Goal.Proof.AREA));
    }

    private List<Field> outlines() {
        return fields.stream()
                .filter(field -> charges.stock(field) instanceof Outline)
                .sorted(Comparator.comparingDouble(field -> charges.rate(field.stock())
                        / ((Outline) charges.stock(field)).border().area()))
                .toList();
    }

    /** Half of the steps go to the outlines, shared evenly. */
    private void fill(List<Field> outlines, List<Manner> manners) {
        int[] wanted = kinds.needed();
        left.add(wanted.clone());
        Layout share = layout.withSteps(layout.steps() / 2 / outlines.size());
        for (Field field : outlines) {
            int have = charges.stock(field).terms().have().orElseThrow();
            Filled same = new Filled(field, List.of());
            for (int n = 0; n < have && total(wanted) > 0; n++) {
                if (n == 0 || !isWanted(same, wanted)) {
                    OutlineFilling filling = new OutlineFilling(kinds, field, share, wanted);
                    same = filling.fill(manners);
                    steps += filling.steps();
                }
                if (same.spots().isEmpty()) {
                    break;
                }
                same.spots().forEach(spot -> wanted[spot.kind()]--);
                filled.add(same);
                left.add(wanted.clone());
            }
        }
    }

    private static boolean isWanted(Filled same, int[] wanted) {
        int[] rest = wanted.clone();
        return same.spots().stream().allMatch(spot -> --rest[spot.kind()] >= 0);
    }

    private static int total(int[] counts) {
        int total = 0;
        for (int count : counts) {
            total += count;
        }
        return total;
    }

    /** How many outlines are used: all that cost nothing, then none, then more and more. */
    private List<Integer> counts() {
        int free = 0;
        while (free < filled.size() && charges.cost(filled.get(free)) == 0) {
            free++;
        }
        TreeSet<Integer> more = new TreeSet<>(List.of(0, filled.size()));
        for (int n = 1; n < MOST_PLANS; n++) {
            more.add(free + (filled.size() - free) * n / MOST_PLANS);
        }
        more.remove(free);
        List<Integer> counts = new ArrayList<>(List.of(free));
        counts.addAll(more);
        return counts;
    }

    /** So many outlines, and what the rest takes; nothing if there is not enough for it. */
    private Optional<Bought> bought(int count, List<Stock> others, Layout how, List<Manner> manners) {
        List<CutSheet> sheets = new ArrayList<>(
                new Laying(kinds, stocks, charges, layout.spacingMm()).sheets(filled.subList(0, count)));
        List<Piece> rest = rest(left.get(count));
        if (!rest.isEmpty() && others.isEmpty()) {
            return Optional.empty();
        }
        try {
            if (!rest.isEmpty()) {
                sheets.addAll(SheetPlan.planned(rest, others, how, manners).sheets());
            }
        } catch (CalotteException tooLittleOrTooSmall) {
            return Optional.empty();
        }
        double cost = sheets.stream()
                .mapToDouble(sheet -> charges.cost(stocks.indexOf(sheet.stock()), sheet))
                .sum();
        return Optional.of(new Bought(sheets, cost));
    }

    private List<Piece> rest(int[] counts) {
        List<Piece> rest = new ArrayList<>();
        for (int kind = 0; kind < counts.length; kind++) {
            Piece piece = pieces.get(kind);
            if (counts[kind] > 0) {
                rest.add(new Piece(piece.mark(), piece.outline(), counts[kind], piece.mayMirror(), piece.grainRad()));
            }
        }
        return rest;
    }

    private CalotteException tooLittle(int without) {
        return new CalotteException(
                Problem.Code.IMPOSSIBLE,
                "covers.stock.have",
                "the stock at hand does not hold all " + kinds.parts() + " parts: " + without
                        + " find no room on the irregular outlines, nor all of them on the rest.",
                "Raise the number of what is at hand, or list a sheet or roll without a limit.");
    }
}
