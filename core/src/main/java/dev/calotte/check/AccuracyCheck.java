package dev.calotte.check;

import dev.calotte.check.RecordedAccuracy.Dimple;
import dev.calotte.check.RecordedDome.StrutKind;
import java.util.List;

/** What errors in the length of struts do: by the angles at which struts leave their hubs, and the sides of the base ring. */
public final class AccuracyCheck {

    private AccuracyCheck() {}

    /**
     * Computes it anew.
     *
     * @param dome a dome
     * @param accuracy what is said of its accuracy
     * @param baseHubs how many hubs the base ring has; with openings some of them may be gone
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedAccuracy accuracy, int baseHubs, Findings findings) {
        List<String> marks = accuracy.dimples().stream().map(Dimple::mark).toList();
        List<String> kinds = dome.strutKinds().stream().map(StrutKind::mark).toList();
        if (marks.equals(kinds)) {
            for (int i = 0; i < kinds.size(); i++) {
                dimple(dome.strutKinds().get(i), accuracy.dimples().get(i), accuracy.tolerance(), findings);
            }
        } else {
            findings.add(
                    Fault.DIFFERENT,
                    "accuracy.dimples",
                    "they are of " + String.join(" ", marks) + ", the kinds of struts are " + String.join(" ", kinds)
                            + ".");
        }
        if (!dome.opened()) {
            base(accuracy, baseHubs, findings);
        }
    }

    private static void dimple(StrutKind kind, Dimple dimple, double tolerance, Findings findings) {
        double factor = 1 / StrictMath.sin(StrictMath.toRadians(kind.axialAngle()));
        double within = Printed.RECORD_MM * (1 + factor * factor);
        String place = "accuracy.dimples " + kind.mark();
        findings.same(place, "the factor", dimple.factor(), factor, within);
        findings.same(
                place, "the height", dimple.height(), factor * tolerance, within * Math.max(1, Math.abs(tolerance)));
    }

    private static void base(RecordedAccuracy accuracy, int baseHubs, Findings findings) {
        boolean given = Double.isFinite(accuracy.baseRadius());
        if (given && baseHubs > 0) {
            double factor = 1 / (2 * StrictMath.sin(Math.PI / baseHubs));
            findings.same(
                    "accuracy.baseRadius",
                    "the error of the base ring's radius",
                    accuracy.baseRadius(),
                    factor * accuracy.tolerance(),
                    Printed.RECORD_MM * (1 + factor));
        } else if (given != baseHubs > 0) {
            findings.add(
                    Fault.DIFFERENT,
                    "accuracy.baseRadius",
                    given ? "it is given, and there is no base ring." : "it is not given for the base ring.");
        }
    }
}
