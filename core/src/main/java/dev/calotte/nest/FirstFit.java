package dev.calotte.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * The first plan: parts by falling size, each on the first sheet that has room for it; what has no room begins a new one
 * of the first stock that takes it.
 */
final class FirstFit {

    private final Kinds kinds;
    private final List<Field> fields;
    private final int[] left;
    private final Manners manners;
    private final List<Filling> fillings = new ArrayList<>();
    private final List<Field> used = new ArrayList<>();

    /** Stocks in the order in which they are begun, and how many there are of each. */
    FirstFit(Kinds kinds, List<Field> fields, int[] have, Manners manners) {
        this.kinds = kinds;
        this.fields = fields;
        this.left = have.clone();
        this.manners = manners;
    }

    /** Lays what is needed; returns false if there is not enough stock. */
    boolean lay(int[] counts) {
        for (int kind : bySize(kinds)) {
            int from = 0;
            for (int n = 0; n < counts[kind]; n++) {
                while (from < fillings.size() && !fillings.get(from).add(kind)) {
                    from++;
                }
                if (from == fillings.size() && !begin(kind)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean begin(int kind) {
        for (Field field : fields) {
            Filling filling = new Filling(kinds, field, manners);
            if (left[field.stock()] > 0 && filling.add(kind)) {
                left[field.stock()]--;
                fillings.add(filling);
                used.add(field);
                return true;
            }
        }
        return false;
    }

    static List<Integer> bySize(Kinds kinds) {
        List<Integer> order = new ArrayList<>();
        for (int kind = 0; kind < kinds.count(); kind++) {
            order.add(kind);
        }
        order.sort((a, b) -> Double.compare(
                kinds.piece(b).outline().area(), kinds.piece(a).outline().area()));
        return order;
    }

    /** What lies on each sheet. */
    List<Filled> filled() {
        List<Filled> all = new ArrayList<>();
        for (int i = 0; i < fillings.size(); i++) {
            all.add(new Filled(used.get(i), fillings.get(i).spots()));
        }
        return all;
    }
}
