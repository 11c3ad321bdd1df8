package dev.calotte.nest;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.stock.Bar;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

/**
 * Cuts and the bars that they come from, with the least that is known to be needed.
 *
 * <p>Parts and the kerfs between them lie within the usable length: n parts take the sum of their lengths and n - 1
 * kerfs, to 1e-6 mm. The cut that frees the last part may run off the bar's end. The trim at both ends holds its own
 * cuts. If all bars have a price the plan spends as little money as it can; else as little length, and with bars of one
 * length that is as few as it can.
 *
 * <pre>{@code
 * BarPlan plan = BarPlan.of(BarNeeds.of(parts), List.of(new Bar(6000, 3, 0, Terms.OPEN)));
 * int bars = plan.bars().size();
 * }</pre>
 *
 * @param bars every bar used, in the order of the stock
 * @param goal what is spent, and what must be
 */
public record BarPlan(List<CutBar> bars, Goal goal) {

    private static final String WHERE = "frame.bar.";

    /**
     * Copies the list.
     *
     * @param bars every bar used
     * @param goal what is spent, and what must be
     */
    public BarPlan {
        bars = List.copyOf(bars);
    }

    /**
     * Plans the cuts. With up to some thousand patterns the plan is the best there is, as a rule; the goal tells the gap.
     *
     * @param cuts what is needed, at least one
     * @param bars the stock, at least one
     * @return the plan, the same for the same input
     * @throws IllegalArgumentException if there is no cut or no bar
     * @throws CalotteException at {@code frame.bar.length} for each cut longer than every bar, at {@code frame.bar.have}
     *     if the bars at hand are too few
     */
    public static BarPlan of(List<Cut> cuts, List<Bar> bars) {
        if (cuts.isEmpty() || bars.isEmpty()) {
            throw new IllegalArgumentException("a plan needs cuts and bars");
        }
        refuseLong(cuts, bars);
        BarLengths lengths = BarLengths.of(cuts);
        BarMix.Mix mix = new BarMix(bars, lengths).solve();
        if (!mix.numbers().found()) {
            throw tooFew(cuts, bars);
        }
        List<CutBar> used = handOut(bars, lengths, mix);
        double cost = used.stream()
                .mapToDouble(bar -> BarPrices.cost(bars, bars.indexOf(bar.bar())))
                .sum();
        return new BarPlan(used, new Goal(BarPrices.measure(bars), cost, mix.bound(), mix.proof()));
    }

    private static void refuseLong(List<Cut> cuts, List<Bar> bars) {
        Bar longest = bars.stream()
                .max(Comparator.comparingDouble(Bar::usableLengthMm))
                .orElseThrow();
        List<Problem> problems = new ArrayList<>();
        for (Cut cut : cuts) {
            if (cut.lengthMm() > longest.usableLengthMm() + BarLengths.ROUNDING_MM) {
                problems.add(tooLong(cut, longest));
            }
        }
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }

    private static Problem tooLong(Cut cut, Bar longest) {
        double needed = cut.lengthMm() + 2 * longest.trimMm();
        String what = text(longest.lengthMm(), 1, RoundingMode.HALF_UP) + " is shorter than strut " + cut.mark() + " ("
                + text(cut.lengthMm(), 1, RoundingMode.HALF_UP) + (longest.trimMm() > 0 ? " and both trims)." : ").");
        String mend =
                "Use bars of at least " + text(needed, 0, RoundingMode.CEILING) + ", or divide the dome more finely.";
        return new Problem(Problem.Code.IMPOSSIBLE, WHERE + "length", what, mend);
    }

    private static String text(double mm, int decimals, RoundingMode rounding) {
        BigDecimal number = new BigDecimal(mm).setScale(decimals, rounding).stripTrailingZeros();
        return number.toPlainString() + " mm";
    }

    private static CalotteException tooFew(List<Cut> cuts, List<Bar> bars) {
        int have = bars.stream().mapToInt(bar -> bar.terms().have().orElse(0)).sum();
        int parts = cuts.stream().mapToInt(Cut::count).sum();
        return new CalotteException(
                Problem.Code.IMPOSSIBLE,
                WHERE + "have",
                "the " + have + " bars at hand are too few for " + parts + " struts.",
                "Raise the number of bars, or list a stock without a limit.");
    }

    private static List<CutBar> handOut(List<Bar> bars, BarLengths lengths, BarMix.Mix mix) {
        List<Iterator<Cut>> waiting = new ArrayList<>();
        for (int kind = 0; kind < lengths.count(); kind++) {
            waiting.add(lengths.marks(kind).iterator());
        }
        int[] uses = mix.numbers().uses();
        List<CutBar> used = new ArrayList<>();
        for (int column = 0; column < uses.length; column++) {
            for (int n = 0; n < uses[column]; n++) {
                Bar bar = bars.get(mix.columns().stock(column));
                used.add(new CutBar(bar, take(waiting, mix.columns().parts(column))));
            }
        }
        used.removeIf(bar -> bar.cuts().isEmpty());
        used.sort(Comparator.comparingInt(cut -> bars.indexOf(cut.bar())));
        return used;
    }

    /** A pattern may yield more than is still needed. */
    private static List<Cut> take(List<Iterator<Cut>> waiting, int[] yield) {
        List<Cut> cuts = new ArrayList<>();
        for (int kind = 0; kind < yield.length; kind++) {
            for (int n = 0; n < yield[kind] && waiting.get(kind).hasNext(); n++) {
                Cut cut = waiting.get(kind).next();
                cuts.add(new Cut(cut.mark(), cut.lengthMm(), 1));
            }
        }
        return cuts;
    }

    /**
     * How much of the bars bought becomes parts.
     *
     * @return from 0 to 1
     */
    public double utilisation() {
        double parts = bars.stream()
                .flatMap(bar -> bar.cuts().stream())
                .mapToDouble(Cut::lengthMm)
                .sum();
        return parts / bars.stream().mapToDouble(bar -> bar.bar().lengthMm()).sum();
    }
}
