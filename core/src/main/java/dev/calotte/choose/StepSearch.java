package dev.calotte.choose;

import dev.calotte.choose.StockCurve.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/**
 * Finds the sizes at which less is spent, and how far the same will do, with a limited number of trials: in paces away
 * from the asked size, then halving the pace in which the step lies.
 */
final class StepSearch {

    private static final double REACH = 0.1;
    private static final int MOST_STEPS = 3;

    /** Part of what is spent below which a difference is rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * How finely sizes are tried.
     *
     * @param trials how many at most
     * @param pace from one size to the next, as a part of the size
     * @param halvings how often a pace is halved at most
     */
    record Fineness(int trials, double pace, int halvings) {}

    private final Resizing resizing;
    private final DoubleFunction<Optional<Step>> trial;
    private final double spent;
    private final Fineness fineness;
    private final Map<Double, Optional<Step>> tried = new TreeMap<>();

    StepSearch(Resizing resizing, DoubleFunction<Optional<Step>> trial, double spent, Fineness fineness) {
        this.resizing = resizing;
        this.trial = trial;
        this.spent = spent;
        this.fineness = fineness;
    }

    /** The largest smaller size that spends less, then the next that spends still less, and so on. */
    List<Step> smaller() {
        List<Step> steps = new ArrayList<>();
        double size = resizing.size().value();
        double target = spent;
        while (steps.size() < MOST_STEPS) {
            Optional<Step> next = below(size, target * (1 - ROUNDING));
            if (next.isEmpty()) {
                break;
            }
            steps.add(next.get());
            size = next.get().size();
            target = next.get().spent();
        }
        return steps;
    }

    private Optional<Step> below(double size, double target) {
        double before = size;
        for (int pace = 1; pace * fineness.pace() <= REACH + ROUNDING; pace++) {
            double value = resizing.times(1 - pace * fineness.pace());
            if (value < size) {
                Optional<Step> step = at(value).filter(s -> s.spent() < target);
                if (step.isPresent()) {
                    return Optional.of(nearer(step.get(), before, target));
                }
                before = value;
            }
        }
        return Optional.empty();
    }

    /** The largest size that was found to spend no more than the asked one. */
    Optional<Step> larger() {
        Optional<Step> found = Optional.empty();
        double target = spent * (1 + ROUNDING);
        for (int pace = 1; pace * fineness.pace() <= REACH + ROUNDING; pace++) {
            double value = resizing.times(1 + pace * fineness.pace());
            Optional<Step> step = at(value).filter(s -> s.spent() <= target);
            if (step.isEmpty()) {
                return refined(found, value, target);
            }
            found = step;
        }
        return found;
    }

    private Optional<Step> refined(Optional<Step> found, double beyond, double target) {
        Step low = found.orElse(new Step(resizing.size().value(), spent, List.of()));
        Step most = nearer(low, beyond, Math.nextUp(target));
        return most.size() > resizing.size().value() ? Optional.of(most) : Optional.empty();
    }

    /** From a size that spends less than the target towards one that does not. */
    private Step nearer(Step step, double beyond, double target) {
        Step low = step;
        double high = beyond;
        for (int n = 0; n < fineness.halvings() && high - low.size() > resizing.unit(); n++) {
            double middle = resizing.down((low.size() + high) / 2);
            if (middle <= low.size()) {
                break;
            }
            Optional<Step> better = at(middle).filter(s -> s.spent() < target);
            low = better.orElse(low);
            high = better.isPresent() ? high : middle;
        }
        return low;
    }

    private Optional<Step> at(double value) {
        if (!tried.containsKey(value)) {
            tried.put(value, tried.size() < fineness.trials() && value > 0 ? trial.apply(value) : Optional.empty());
        }
        return tried.get(value);
    }
}
