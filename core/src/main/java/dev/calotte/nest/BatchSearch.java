package dev.calotte.nest;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Into which groups batches are put: for each largest number of batches in a group, the groups whose first plans together
 * spend the least; then those are laid with the steps there are.
 */
final class BatchSearch {

    /** A larger group has to save so much. */
    private static final double WORTH = 0.01;

    private final BatchPlan.Order order;
    private final Layout layout;
    private final GroupPlans glances;

    BatchSearch(BatchPlan.Order order, Layout layout) {
        this.order = order;
        this.layout = layout;
        this.glances = new GroupPlans(order, layout.withSteps(0));
    }

    BatchPlan best(Goal free) {
        Set<List<Integer>> divisions = divisions();
        Optional<Batches> best = Optional.empty();
        for (List<Integer> groups : divisions) {
            Optional<Batches> laid = laid(groups, layout.steps() / divisions.size());
            if (laid.isPresent() && best.map(b -> saves(laid.get(), b)).orElse(true)) {
                best = laid;
            }
        }
        return best.orElseThrow(BatchSearch::tooLittle).plan(free);
    }

    private static boolean saves(Batches one, Batches other) {
        return one.cost() < other.cost() * (1 - WORTH);
    }

    /** The sizes of groups that are worth laying, those with the smallest groups first. */
    private Set<List<Integer>> divisions() {
        int most = Math.min(BatchPlan.MOST_IN_A_GROUP, order.counts().size() / 2);
        Set<List<Integer>> divisions = new LinkedHashSet<>();
        for (int size = 1; size <= Math.max(1, most); size++) {
            divisions.add(division(size));
        }
        return divisions;
    }

    /** The division into groups of no more than so many batches that spends least by first plans. */
    private List<Integer> division(int most) {
        int batches = order.counts().size();
        double[] cost = new double[batches + 1];
        int[] last = new int[batches + 1];
        for (int end = 1; end <= batches; end++) {
            cost[end] = Double.POSITIVE_INFINITY;
            for (int size = 1; size <= Math.min(most, end); size++) {
                double with = cost[end - size] + glances.cost(end - size, size);
                if (size == 1 || with < cost[end]) {
                    cost[end] = with;
                    last[end] = size;
                }
            }
        }
        List<Integer> groups = new ArrayList<>();
        for (int end = batches; end > 0; end -= last[end]) {
            groups.add(0, last[end]);
        }
        return groups;
    }

    private Optional<Batches> laid(List<Integer> groups, int steps) {
        Map<String, Integer> parts = new TreeMap<>();
        int first = 0;
        for (int size : groups) {
            List<Integer> counts = glances.counts(first, size);
            parts.put(counts.toString(), counts.stream().mapToInt(n -> n).sum());
            first += size;
        }
        int all = parts.values().stream().mapToInt(n -> n).sum();
        Batches batches = new Batches(order, layout.spacingMm());
        GroupPlans plans = new GroupPlans(order, layout);
        first = 0;
        for (int size : groups) {
            List<Integer> counts = plans.counts(first, size);
            int share = (int) ((long) steps * parts.get(counts.toString()) / all);
            Optional<CutPlan> plan = plans.of(counts, batches.left(), share);
            if (plan.isEmpty() || !batches.add(size, plan.get())) {
                return Optional.empty();
            }
            first += size;
        }
        return Optional.of(batches);
    }

    private static CalotteException tooLittle() {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "covers.cut-by",
                "the sheets and rolls at hand do not hold all parts patch by patch.",
                "Write cut-by: stock, raise their number, or list a stock without a limit.");
    }
}
