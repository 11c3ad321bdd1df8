package dev.calotte.check;

import dev.calotte.check.RecordedSteps.Own;
import dev.calotte.check.RecordedSteps.Step;
import java.util.List;

/** Steps of a stock: sizes in order on either side of the dome's own, each with what it saves of what the dome takes. */
public final class StepCheck {

    private static final double ROUNDING = 1e-9;

    private final RecordedSteps steps;
    private final Own own;
    private final Findings findings;
    private double spent;

    private StepCheck(RecordedSteps steps, Own own, Findings findings) {
        this.steps = steps;
        this.own = own;
        this.findings = findings;
        this.spent = own.spent();
    }

    /**
     * Looks steps through.
     *
     * @param steps what is said of other sizes
     * @param own the dome as it is
     * @param findings takes what is wrong
     */
    public static void of(RecordedSteps steps, Own own, Findings findings) {
        new StepCheck(steps, own, findings).check();
    }

    private void check() {
        List<String> measures = List.of("pieces", "length", "price", "area");
        if (!measures.contains(steps.measure())) {
            findings.same(steps.place() + ".measure", "the word", steps.measure(), String.join(", ", measures));
        }
        double before = own.size();
        for (int i = 0; i < steps.smaller().size(); i++) {
            Step step = steps.smaller().get(i);
            String place = steps.place() + ".smaller " + (i + 1);
            step(place, step);
            if (step.size() >= before) {
                findings.add(Fault.DIFFERENT, place, "its size " + text(step) + " is no smaller than the one before.");
            }
            if (!(step.saves() > 0)) {
                findings.add(Fault.DIFFERENT, place, "it saves nothing.");
            }
            before = step.size();
        }
        for (Step step : steps.larger()) {
            String place = steps.place() + ".larger";
            step(place, step);
            if (step.size() < own.size() * (1 - ROUNDING)) {
                findings.add(Fault.DIFFERENT, place, "its size " + text(step) + " is smaller than the dome's own.");
            }
        }
    }

    private static String text(Step step) {
        return Findings.text(step.size());
    }

    /** Where what the dome takes is not known, the first step tells. */
    private void step(String place, Step step) {
        double sum = step.spent() + step.saves();
        if (!Double.isFinite(spent)) {
            spent = sum;
        }
        findings.same(
                place,
                "what it spends and saves together",
                sum,
                spent,
                2 * Printed.RECORD_MM + ROUNDING * Math.abs(spent));
        step.yields().stream()
                .filter(mark -> !own.kinds().contains(mark))
                .forEach(mark -> findings.add(Fault.FOREIGN, place, "there is no kind " + mark + "."));
    }
}
