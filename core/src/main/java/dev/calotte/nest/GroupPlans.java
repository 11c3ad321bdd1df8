package dev.calotte.nest;

import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Plans of groups of batches, each by itself; groups that want the same parts of the same stock have the same plan. */
final class GroupPlans {

    private final BatchPlan.Order order;
    private final Layout layout;
    private final Charges charges;
    private final Map<String, Optional<CutPlan>> made = new TreeMap<>();

    GroupPlans(BatchPlan.Order order, Layout layout) {
        this.order = order;
        this.layout = layout;
        this.charges = new Charges(new Kinds(order.pieces()), order.stocks());
    }

    /** How many of each piece a group of so many batches wants. */
    List<Integer> counts(int first, int size) {
        return IntStream.range(0, order.pieces().size())
                .map(kind -> order.counts().subList(first, first + size).stream()
                        .mapToInt(batch -> batch.get(kind))
                        .sum())
                .boxed()
                .toList();
    }

    /** What a group spends by its first plan if it is laid behind another; infinite if the stock does not hold it. */
    double cost(int first, int size) {
        List<OptionalInt> all =
                order.stocks().stream().map(stock -> stock.terms().have()).toList();
        return of(counts(first, size), all, 0)
                .map(plan -> plan.sheets().stream().mapToDouble(this::cost).sum())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double cost(CutSheet sheet) {
        double rate = charges.rate(order.stocks().indexOf(sheet.stock()));
        return sheet.stock() instanceof Roll roll
                ? rate * (sheet.lengthMm() - 2 * roll.marginMm() + layout.spacingMm())
                : rate;
    }

    /** A plan of so many of each piece, from what is left of each stock; nothing if that does not hold them. */
    Optional<CutPlan> of(List<Integer> counts, List<OptionalInt> left, int steps) {
        return made.computeIfAbsent(counts + " of " + left, key -> plan(pieces(counts), left, steps));
    }

    private List<Piece> pieces(List<Integer> counts) {
        List<Piece> pieces = new ArrayList<>();
        for (int kind = 0; kind < counts.size(); kind++) {
            Piece piece = order.pieces().get(kind);
            if (counts.get(kind) > 0) {
                pieces.add(new Piece(
                        piece.mark(), piece.outline(), counts.get(kind), piece.mayMirror(), piece.grainRad()));
            }
        }
        return pieces;
    }

    private Optional<CutPlan> plan(List<Piece> pieces, List<OptionalInt> left, int steps) {
        List<Stock> offered = new ArrayList<>();
        List<Stock> originals = new ArrayList<>();
        for (int stock = 0; stock < left.size(); stock++) {
            if (left.get(stock).orElse(1) > 0) {
                offered.add(limited(order.stocks().get(stock), left.get(stock)));
                originals.add(order.stocks().get(stock));
            }
        }
        if (offered.isEmpty()) {
            return Optional.empty();
        }
        try {
            CutPlan plan = SheetPlan.of(pieces, offered, layout.withSteps(steps));
            return Optional.of(new CutPlan(
                    plan.sheets().stream()
                            .map(sheet -> sheet.of(originals.get(offered.indexOf(sheet.stock()))))
                            .toList(),
                    plan.goal()));
        } catch (CalotteException tooLittle) {
            return Optional.empty();
        }
    }

    private static Stock limited(Stock stock, OptionalInt have) {
        Terms terms = new Terms(stock.terms().price(), stock.terms().massKg(), have);
        if (stock instanceof Sheet sheet) {
            return new Sheet(sheet.lengthMm(), sheet.widthMm(), sheet.marginMm(), terms);
        }
        Roll roll = (Roll) stock;
        return new Roll(roll.widthMm(), roll.marginMm(), roll.lengthMm(), terms);
    }
}
