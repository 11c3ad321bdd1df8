package dev.calotte.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which patterns of sheets are cut, and how often: an integer programme over those that fit. The same programme with
 * those that may fit as well bounds every plan on sheets.
 */
final class SheetMix {

    private static final int NODES = 3000;
    private static final int BOUND_NODES = 300;

    /** Less is never worth while: few kinds are decided with it for good. */
    private static final int LEAST = 1000;

    private final Kinds kinds;
    private final List<Field> fields;
    private final double[] have;
    private final Charges charges;
    private final AreaBound area;
    private final Layout layout;
    private List<Filled> best = List.of();
    private double cost = Double.POSITIVE_INFINITY;
    private double bound;
    private int steps;

    SheetMix(Kinds kinds, List<Field> fields, int[] have, Charges charges, Layout layout) {
        this.kinds = kinds;
        this.fields = fields.stream().filter(field -> !field.isRoll()).toList();
        this.have = Arrays.stream(have).asDoubleStream().toArray();
        this.charges = charges;
        this.area = new AreaBound(kinds, charges, layout.spacingMm());
        this.layout = layout;
    }

    /** Looks for patterns until the steps are spent or the plan is as good as the bound. */
    void search() {
        List<PatternSearch> searches = new ArrayList<>();
        for (Field field : fields) {
            searches.add(new PatternSearch(kinds, field, area.capacity(field), layout));
        }
        int left = Math.max(layout.steps(), LEAST);
        boolean more = true;
        while (more && left > 0) {
            int spent = 0;
            for (PatternSearch search : searches) {
                spent += search.look((left - spent) / (searches.size() - searches.indexOf(search)));
            }
            mix(searches);
            left -= spent;
            steps += spent;
            // the next round takes four times as long
            more = spent > searches.size() * kinds.count() && left > 2 * spent && cost > bound * (1 + 1e-9);
        }
    }

    private void mix(List<PatternSearch> searches) {
        Columns fitting = new Columns(kinds.count(), have.length);
        Columns possible = new Columns(kinds.count(), have.length);
        List<List<Spot>> spots = new ArrayList<>();
        boolean complete = true;
        for (int f = 0; f < searches.size(); f++) {
            int stock = fields.get(f).stock();
            complete &= searches.get(f).complete();
            for (SheetPattern pattern : searches.get(f).patterns()) {
                possible.add(stock, pattern.parts(), charges.rate(stock));
                if (pattern.fits()) {
                    fitting.add(stock, pattern.parts(), charges.rate(stock));
                    spots.add(pattern.spots());
                }
            }
        }
        IntegerMix mix = IntegerMix.of(fitting, kinds.need(), have, NODES);
        if (mix.found() && mix.cost() < cost) {
            cost = mix.cost();
            best = cut(fitting, mix, spots);
        }
        boolean decided = possible.count() == fitting.count();
        IntegerMix least = decided ? mix : IntegerMix.of(possible, kinds.need(), have, BOUND_NODES);
        bound = complete ? Math.max(bound, least.bound()) : bound;
    }

    private List<Filled> cut(Columns columns, IntegerMix mix, List<List<Spot>> spots) {
        List<Filled> sheets = new ArrayList<>();
        int[] left = kinds.needed();
        int[] uses = mix.uses();
        for (int column = 0; column < uses.length; column++) {
            for (int n = 0; n < uses[column]; n++) {
                List<Spot> needed = new ArrayList<>();
                for (Spot spot : spots.get(column)) {
                    if (left[spot.kind()]-- > 0) {
                        needed.add(spot);
                    }
                }
                int stock = columns.stock(column);
                Field field = fields.stream()
                        .filter(f -> f.stock() == stock)
                        .findFirst()
                        .orElseThrow();
                sheets.add(new Filled(field, needed));
            }
        }
        sheets.removeIf(sheet -> sheet.spots().isEmpty());
        return sheets;
    }

    /** How many steps were spent. */
    int steps() {
        return steps;
    }

    /** The best plan found; empty if there is none. */
    List<Filled> best() {
        return best;
    }

    /** What every plan on these sheets spends at least; 0 if that is not known. */
    double bound() {
        return bound;
    }
}
