package dev.calotte.nest;

import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Groups of batches laid one after the other: each on sheets of its own, or behind what lies on the roll already. */
final class Batches {

    private final List<Stock> stocks;
    private final Kinds kinds;
    private final Charges charges;
    private final double spacing;
    private final List<Integer> groups = new ArrayList<>();
    private final List<Laid> all = new ArrayList<>();

    /** The roll of each stock that is not used up. */
    private final Map<Integer, Laid> open = new TreeMap<>();

    /** What lies on a sheet or roll, and for each part the number of its group. */
    private record Laid(Field field, List<Spot> spots, List<Integer> groups) {

        void add(List<Spot> more, int group) {
            more.forEach(spot -> {
                spots.add(spot);
                groups.add(group);
            });
        }
    }

    Batches(BatchPlan.Order order, double spacing) {
        this.stocks = order.stocks();
        this.kinds = new Kinds(order.pieces());
        this.charges = new Charges(kinds, stocks);
        this.spacing = spacing;
    }

    /** How many more may be taken of each stock; a roll that is not used up counts as one. */
    List<OptionalInt> left() {
        List<OptionalInt> left = new ArrayList<>();
        for (int stock = 0; stock < stocks.size(); stock++) {
            OptionalInt have = stocks.get(stock).terms().have();
            int more = open.containsKey(stock) ? 1 : 0;
            left.add(have.isPresent() ? OptionalInt.of(have.getAsInt() - used(stock) + more) : have);
        }
        return left;
    }

    private int used(int stock) {
        return (int) all.stream().filter(laid -> laid.field().stock() == stock).count();
    }

    /** Adds a group as it is laid by itself; false if there is less of a stock than that takes. */
    boolean add(int batches, CutPlan plan) {
        for (CutSheet sheet : plan.sheets()) {
            int stock = stocks.indexOf(sheet.stock());
            Field field = Field.of(stock, sheet.stock());
            List<Spot> spots = sheet.parts().stream()
                    .map(part -> spot(part).moved(-field.margin(), -field.margin()))
                    .toList();
            if (!append(field, spots)) {
                begin(field, spots);
            }
        }
        groups.add(batches);
        return suffices();
    }

    private boolean suffices() {
        for (int stock = 0; stock < stocks.size(); stock++) {
            if (used(stock) > stocks.get(stock).terms().have().orElse(Integer.MAX_VALUE)) {
                return false;
            }
        }
        return true;
    }

    private boolean append(Field field, List<Spot> spots) {
        Laid roll = open.get(field.stock());
        if (roll == null) {
            return false;
        }
        List<Spot> behind = new Stretch(kinds, field, spacing).behind(roll.spots(), spots);
        if (behind.isEmpty()) {
            return false;
        }
        roll.add(behind, groups.size());
        return true;
    }

    private void begin(Field field, List<Spot> spots) {
        Laid laid = new Laid(field, new ArrayList<>(), new ArrayList<>());
        laid.add(spots, groups.size());
        all.add(laid);
        if (field.isRoll()) {
            open.put(field.stock(), laid);
        }
    }

    private Spot spot(Placed part) {
        int kind = 0;
        while (!kinds.piece(kind).mark().equals(part.mark())) {
            kind++;
        }
        return new Spot(kind, part.mirrored(), part.turnRad(), part.xMm(), part.yMm());
    }

    private List<Filled> filled() {
        return all.stream().map(laid -> new Filled(laid.field(), laid.spots())).toList();
    }

    double cost() {
        return charges.cost(filled());
    }

    BatchPlan plan(Goal free) {
        Goal goal = new Goal(free.measure(), cost(), free.bound(), free.proof());
        return new BatchPlan(
                new Laying(kinds, stocks, new Charges(kinds, stocks), spacing).plan(filled(), goal),
                groups,
                all.stream().map(Laid::groups).toList());
    }
}
