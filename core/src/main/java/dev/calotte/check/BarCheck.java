package dev.calotte.check;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is sawn from bars: every piece at its length, as often as it is needed, and no more of a bar than there is. */
public final class BarCheck {

    private BarCheck() {}

    /**
     * A bar.
     *
     * @param length how long it is
     * @param cuts what is cut from it
     * @param left what remains
     */
    public record Bar(double length, List<Cut> cuts, double left) {

        /**
         * Copies the list.
         *
         * @param length how long it is
         * @param cuts what is cut from it
         * @param left what remains
         */
        public Bar {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * A piece.
     *
     * @param mark the mark of its kind
     * @param length how long it is
     */
    public record Cut(String mark, double length) {}

    /**
     * What is needed of a kind.
     *
     * @param mark its mark
     * @param length how long it is cut; not a number if that is not known
     * @param count how many are needed
     */
    public record Need(String mark, double length, int count) {}

    /**
     * Looks a plan through.
     *
     * @param needs what is cut
     * @param bars from what
     * @param findings takes what is wrong
     */
    public static void of(List<Need> needs, List<Bar> bars, Findings findings) {
        Map<String, Need> known = new TreeMap<>();
        needs.forEach(need -> known.put(need.mark(), need));
        Map<String, Integer> counts = new TreeMap<>();
        for (int i = 0; i < bars.size(); i++) {
            bar("bar " + (i + 1), bars.get(i), known, findings);
            bars.get(i).cuts().forEach(cut -> counts.merge(cut.mark(), 1, Integer::sum));
        }
        needs.forEach(need -> findings.same(
                need.mark(), "how often it is cut from bars", counts.getOrDefault(need.mark(), 0), need.count(), 0));
    }

    /**
     * Adds up what remains of all bars.
     *
     * @param offcut what is said of it, in millimetres
     * @param bars the bars
     * @param findings takes what is wrong
     */
    public static void offcut(double offcut, List<Bar> bars, Findings findings) {
        double left = bars.stream().mapToDouble(Bar::left).sum();
        findings.same("bars.offcut", "what remains of all bars", offcut, left, Printed.RECORD_MM * (1 + bars.size()));
    }

    private static void bar(String name, Bar bar, Map<String, Need> known, Findings findings) {
        double taken = bar.left();
        for (Cut cut : bar.cuts()) {
            taken += cut.length();
            Need need = known.get(cut.mark());
            if (need == null) {
                findings.add(Fault.FOREIGN, name, cut.mark() + " is cut from it, and there is no such kind.");
            } else if (Math.abs(cut.length() - need.length()) > Printed.RECORD_MM) {
                findings.same(name, "the length of " + cut.mark(), cut.length(), need.length(), Printed.RECORD_MM);
            }
        }
        if (taken > bar.length() + Printed.RECORD_MM * (1 + bar.cuts().size())) {
            findings.add(Fault.OUTSIDE, name, "more is cut from it than its " + Findings.text(bar.length()) + " mm.");
        }
    }
}
