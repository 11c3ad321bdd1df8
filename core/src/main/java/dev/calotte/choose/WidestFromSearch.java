package dev.calotte.choose;

import dev.calotte.choose.WidestFrom.Question;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Size;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import dev.calotte.nest.SheetPlan;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Looks for the largest dome of {@link WidestFrom}. */
final class WidestFromSearch {

    /** Within the bounds of what a brief takes. */
    private static final double LARGEST_MM = 1e6;

    private static final double SMALLEST_MM = 1;

    /** How closely the bound is known. */
    private static final double ACCURACY = 1e-7;

    /** The work spent on each plan in the end; on rolls a little finds nearly all that there is. */
    private static final int STEPS = 400;

    private static final int STEPS_ON_ROLLS = 50;

    private static final double FIRST_STRIDE = 0.04;
    private static final double SHORT_STRIDE = 0.01;
    private static final double LAST_STRIDE = 5e-4;

    /** From one size that cannot be cut to the next below it, at least; of a roll little less makes do. */
    private static final double DOWN = 0.985;

    private static final double DOWN_ON_ROLLS = 0.999;

    private static final int MOST_DOWN = 80;
    private static final int MOST_UP = 40;

    private final Function<Size, Parts> domes;
    private final Question question;
    private final int threads;

    WidestFromSearch(Function<Size, Parts> domes, Question question, int threads) {
        this.domes = domes;
        this.question = question;
        this.threads = threads;
    }

    WidestFrom largest() {
        double bound = bound();
        boolean whole = question.cover().treatment().split() == Splitting.NEVER;
        Found found = down(bound);
        if (found.radiusMm < bound) {
            found = counted() ? up(found, bound, FIRST_STRIDE, 0) : found;
            found = up(found, bound, SHORT_STRIDE, counted() ? STEPS : STEPS_ON_ROLLS);
        }
        return new WidestFrom(
                Size.radius(found.radiusMm),
                found.plan,
                found.steps,
                whole ? OptionalDouble.of(bound) : OptionalDouble.empty());
    }

    /** A dome that can be cut. */
    private record Found(double radiusMm, CoverPlan plan, int steps) {}

    /** The largest radius at which everything fits and covers no more than there is. */
    private double bound() {
        double low = some();
        while (!isPossible(low)) {
            low /= 2;
            if (low < SMALLEST_MM) {
                throw refusal("the allowances alone take more than there is, or do not fit, however small the dome.");
            }
        }
        double high = low;
        while (isPossible(high) && high < LARGEST_MM) {
            low = high;
            high *= 2;
        }
        while (high - low > ACCURACY * low) {
            double middle = (low + high) / 2;
            if (isPossible(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The radius at which the skin has the area of the stock. */
    private double some() {
        // so large that joints use nothing up: what goes wrong here is wrong with the dome in every size
        Measures large = domes.apply(Size.radius(LARGEST_MM)).dome().measures();
        double area = question.stock() instanceof Sheet sheet
                ? sheet.lengthMm() * sheet.widthMm()
                : ((Roll) question.stock()).widthMm();
        return LARGEST_MM * Math.sqrt(question.supply().amount() * area / large.surfaceAreaMm2());
    }

    /** Whether neither size nor area of the pieces forbid it; a dome too small to be made is not too large. */
    private boolean isPossible(double radiusMm) {
        try {
            CoverFit fit = fit(radiusMm);
            return fit.misfits().isEmpty()
                    && question.supply()
                            .holds(SheetPlan.least(CoverPlan.pieces(fit), question.stock(), question.spacingMm()));
        } catch (CalotteException nothingLeft) {
            return true;
        }
    }

    private CoverFit fit(double radiusMm) {
        Parts parts = domes.apply(Size.radius(radiusMm));
        return CoverFit.of(Patterns.of(parts, question.cover()), List.of(question.stock()));
    }

    private Optional<CoverPlan> plan(double radiusMm, int steps) {
        try {
            return CoverPlan.of(fit(radiusMm), new Layout(question.spacingMm(), steps, threads));
        } catch (CalotteException nothingLeftOrTooLittle) {
            return Optional.empty();
        }
    }

    private boolean counted() {
        return question.supply().measure() == Measure.PIECES;
    }

    private boolean isEnoughFor(CoverPlan plan) {
        return question.supply().holds(question.supply().usedBy(plan.plan()));
    }

    /** From the bound down to the first dome that can be cut. */
    private Found down(double bound) {
        double radius = bound;
        for (int tries = 0; tries < MOST_DOWN; tries++) {
            Optional<CoverPlan> plan = plan(radius, 0);
            if (plan.isPresent() && isEnoughFor(plan.get())) {
                return new Found(radius, plan.get(), 0);
            }
            double less = counted() ? DOWN : DOWN_ON_ROLLS;
            if (plan.isPresent()) {
                double used = question.supply().usedBy(plan.get().plan());
                // the area falls with the square; on sheets the parts may lie better in a size close to that
                double square = Math.sqrt(question.supply().amount() / used);
                less = Math.min(less, counted() ? 1.01 * square : square);
            }
            radius *= less;
        }
        throw refusal("no dome was found that is cut from so little: in smaller ones joints use up the parts.");
    }

    private static CalotteException refusal(String what) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "size.widest-from",
                what,
                "Give more of the stock, take a lower breakdown, or leave smaller gaps and allowances.");
    }

    /** Larger domes in strides that are halved where one fails. */
    private Found up(Found from, double bound, double firstStride, int steps) {
        Found found = from;
        double stride = firstStride;
        for (int tries = 0; tries < MOST_UP && stride >= LAST_STRIDE && found.radiusMm < bound; tries++) {
            double radius = Math.min(bound, found.radiusMm * (1 + stride));
            Optional<CoverPlan> plan = plan(radius, steps);
            if (plan.isPresent() && isEnoughFor(plan.get())) {
                found = new Found(radius, plan.get(), steps);
            } else {
                stride /= 2;
            }
        }
        return found;
    }
}
