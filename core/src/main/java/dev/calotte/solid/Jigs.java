package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Patterns;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What helps to build the dome and can be printed: a jig for each kind of hub, gauges for its angles, guides for saw and
 * drill, a test of the fit, and hubs with sockets where they are wanted. Only what the frame and its covers need.
 *
 * <pre>{@code
 * JigSpec round = new JigSpec(
 *         Optional.of(StrutSection.round(25)), JigSpec.USUAL_CLEARANCE_MM, JigSpec.USUAL_WALL_MM, Bed.USUAL, Optional.empty());
 * Parts gapped = Parts.of(dome, Joinery.gap(40));
 * PrintPlate plate = Jigs.of("Shelter", gapped, List.of(Patterns.of(gapped, cover)), round);
 * }</pre>
 */
public final class Jigs {

    private static final double[] FIT_STEPS = {-0.2, -0.1, 0, 0.1, 0.2};

    private final Parts parts;
    private final JigSpec spec;

    private Jigs(Parts parts, JigSpec spec) {
        this.parts = parts;
        this.spec = spec;
    }

    /**
     * Lists what is printed.
     *
     * @param title what to call the dome
     * @param parts its parts
     * @param covers the patterns of its covers
     * @param spec what the jigs are made for
     * @return the document {@code plate}
     * @throws CalotteException if something cannot be printed or cannot be held
     */
    public static PrintPlate of(String title, Parts parts, List<Patterns> covers, JigSpec spec) {
        List<Problem> problems = spec.problems();
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
        Jigs jigs = new Jigs(parts, spec);
        List<Jig> all = new ArrayList<>();
        if (!(parts.joinery().ends() instanceof Ends.Mitred)) {
            jigs.addCradles(all);
        }
        all.addAll(new Gauges(parts, spec).list(covers));
        spec.sockets().ifPresent(wanted -> all.addAll(new SocketHubs(parts, spec, wanted).list()));
        if (all.isEmpty()) {
            throw new CalotteException(
                    Code.CONFLICT, "jigs", "nothing of this dome needs a jig.", "Leave the section out.");
        }
        all.forEach(new BedRoom(spec)::check);
        return new PrintPlate("plate", "Jigs for " + title, spec.clearanceMm(), spec.wallMm(), all);
    }

    /**
     * What to know about what is printed.
     *
     * @param parts the parts of the dome
     * @param spec what the jigs are made for
     * @return sentences, possibly none
     */
    public static List<String> notes(Parts parts, JigSpec spec) {
        return spec.sockets().map(wanted -> new SocketHubs(parts, spec, wanted).note()).stream()
                .toList();
    }

    private void addCradles(List<Jig> all) {
        StrutSection strut = spec.strut()
                .orElseThrow(() -> new CalotteException(
                        Code.MISSING, "jigs.strut", "the key is missing.", "Write for example strut: round 23.4 mm."));
        List<CradlePlan> plans = parts.hubKinds().stream()
                .map(kind -> new CradlePlan(parts, spec, strut, kind))
                .toList();
        // the gap that mends the narrowest hub mends all
        plans.stream().max(Comparator.comparingDouble(CradlePlan::missingMm)).ifPresent(CradlePlan::checkApart);
        plans.forEach(plan -> all.add(plan.cradle()));
        all.add(new Jig.Fit(
                "fit", "Test of the fit: take the trough that holds a strut without play", strut, steps(strut)));
    }

    /** Round the clearance of the brief, as many as the bed takes side by side. */
    private List<Double> steps(StrutSection strut) {
        List<Double> steps = new ArrayList<>();
        double room = spec.bed().widthMm() - 2 * Bed.MARGIN_MM - spec.wallMm();
        for (double step : FIT_STEPS) {
            double clearance = Math.rint(100 * (spec.clearanceMm() + step)) / 100;
            double wide = strut.widthMm() + 2 * clearance + spec.wallMm();
            if (clearance > 0 && room >= wide) {
                steps.add(clearance);
                room -= wide;
            }
        }
        return steps.isEmpty() ? List.of(spec.clearanceMm()) : steps;
    }
}
