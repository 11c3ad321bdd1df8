package dev.calotte.nest;

import java.util.ArrayList;
import java.util.List;

/**
 * So many parts of each kind on one sheet.
 *
 * @param counts of each kind
 * @param verdict whether they fit
 * @param spots where they lie, if they fit
 */
record SheetPattern(List<Integer> counts, EdgeBranching.Verdict verdict, List<Spot> spots) {

    static SheetPattern open(List<Integer> counts) {
        return new SheetPattern(counts, EdgeBranching.Verdict.OPEN, List.of());
    }

    SheetPattern {
        counts = List.copyOf(counts);
        spots = List.copyOf(spots);
    }

    boolean fits() {
        return verdict == EdgeBranching.Verdict.FITS;
    }

    boolean cannot() {
        return verdict == EdgeBranching.Verdict.CANNOT;
    }

    /** The same with one part of a kind more, or less. */
    static List<Integer> changed(List<Integer> counts, int kind, int by) {
        List<Integer> changed = new ArrayList<>(counts);
        changed.set(kind, counts.get(kind) + by);
        return changed;
    }

    /** A kind for each part, rising. */
    static int[] kindOf(List<Integer> counts) {
        List<Integer> kinds = new ArrayList<>();
        for (int kind = 0; kind < counts.size(); kind++) {
            for (int n = 0; n < counts.get(kind); n++) {
                kinds.add(kind);
            }
        }
        return kinds.stream().mapToInt(Integer::intValue).toArray();
    }

    int[] parts() {
        return counts.stream().mapToInt(Integer::intValue).toArray();
    }
}
