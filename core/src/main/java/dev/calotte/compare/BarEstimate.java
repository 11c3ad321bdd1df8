package dev.calotte.compare;

import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.stock.Bar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How many bars a frame takes if each part, the longest first, is cut from the first bar that has room for it, all bars
 * of the length that comes cheapest. That is quick for any number of kinds; a plan may use a little less.
 */
final class BarEstimate {

    private static final double ROUNDING_MM = 1e-6;

    private BarEstimate() {}

    /** The exception says which parts are longer than every bar. */
    static BarUse of(List<Cut> cuts, List<Bar> stock) {
        double longest = stock.stream().mapToDouble(Bar::usableLengthMm).max().orElseThrow();
        List<Cut> tooLong = cuts.stream()
                .filter(cut -> cut.lengthMm() > longest + ROUNDING_MM)
                .toList();
        if (!tooLong.isEmpty()) {
            // a plan says it in full
            BarPlan.of(tooLong, stock);
        }
        double[] lengths = lengths(cuts);
        boolean priced = stock.stream().allMatch(bar -> bar.terms().price().isPresent());
        return stock.stream()
                .filter(bar -> lengths[0] <= bar.usableLengthMm() + ROUNDING_MM)
                .map(bar -> use(lengths, bar, priced))
                .min(Comparator.comparingDouble(use -> use.price().orElse(use.lengthMm())))
                .orElseThrow();
    }

    /** A length for each single part, the longest first. */
    private static double[] lengths(List<Cut> cuts) {
        return cuts.stream()
                .sorted(Comparator.comparingDouble(Cut::lengthMm).reversed())
                .flatMapToDouble(cut -> IntStream.range(0, cut.count()).mapToDouble(i -> cut.lengthMm()))
                .toArray();
    }

    private static BarUse use(double[] lengths, Bar bar, boolean priced) {
        List<Double> left = new ArrayList<>();
        double used = 0;
        for (double length : lengths) {
            used += length;
            int first = firstWithRoom(left, length + bar.kerfMm());
            double room = first < left.size() ? left.get(first) : bar.usableLengthMm() + bar.kerfMm();
            double rest = room - length - bar.kerfMm();
            if (first < left.size()) {
                left.set(first, rest);
            } else {
                left.add(rest);
            }
        }
        double all = left.size() * bar.lengthMm();
        OptionalDouble price =
                priced ? OptionalDouble.of(left.size() * bar.terms().price().orElseThrow()) : OptionalDouble.empty();
        return new BarUse(left.size(), all, used / all, price, false);
    }

    private static int firstWithRoom(List<Double> left, double neededMm) {
        int first = 0;
        while (first < left.size() && left.get(first) < neededMm - ROUNDING_MM) {
            first++;
        }
        return first;
    }
}
