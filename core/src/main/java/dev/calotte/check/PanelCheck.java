package dev.calotte.check;

import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.PanelKind;
import dev.calotte.geometry.Triangle;
import dev.calotte.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Panels: that their hubs stand at the sides of their kind, seen from outside in the order of their hand. */
final class PanelCheck {

    private final RecordedDome dome;
    private final Findings findings;
    private final Map<String, PanelKind> kinds = new TreeMap<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private Mismatch worst = Mismatch.NONE;

    PanelCheck(RecordedDome dome, Findings findings) {
        this.dome = dome;
        this.findings = findings;
        dome.panelKinds().forEach(kind -> kinds.put(kind.mark(), kind));
    }

    static Vector3D normal(RecordedDome dome, Panel panel) {
        Vector3D first = dome.vertex(panel.vertices().get(0));
        return dome.vertex(panel.vertices().get(1))
                .subtract(first)
                .crossProduct(dome.vertex(panel.vertices().get(2)).subtract(first));
    }

    Mismatch check() {
        double area = 0;
        for (Panel panel : dome.panels()) {
            PanelKind kind = kinds.get(panel.kind());
            if (kind == null) {
                findings.add(Fault.FOREIGN, panel.mark(), "there is no kind of panels " + panel.kind() + ".");
            } else {
                counts.merge(kind.mark(), 1, Integer::sum);
                sides(panel, kind);
            }
            Vector3D normal = normal(dome, panel);
            area += normal.getNorm() / 2e6;
            if (normal.dotProduct(dome.vertex(panel.vertices().get(0))) <= 0) {
                findings.add(Fault.MIRRORED, panel.mark(), "its hubs run clockwise seen from outside.");
            }
        }
        findings.same(
                "dome.surfaceArea",
                "the area of all panels, in m²,",
                dome.figures().surfaceArea(),
                area,
                1e-6);
        dome.panelKinds().forEach(this::kind);
        return worst;
    }

    private void sides(Panel panel, PanelKind kind) {
        List<Double> seen = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            seen.add(dome.vertex(panel.vertices().get(k))
                    .distance(dome.vertex(panel.vertices().get((k + 1) % 3))));
        }
        double off = Math.min(off(seen, kind, false), off(seen, kind, true));
        double own =
                kind.hand().equals("none") ? off : off(seen, kind, kind.hand().equals("right"));
        double within = 2 * dome.mergeError() + Printed.RECORD_MM;
        worst = worst.or(new Mismatch(own, "panel " + panel.mark()));
        if (!(off <= within)) {
            findings.add(
                    Fault.DIFFERENT,
                    panel.mark(),
                    "its hubs are up to " + Findings.text(off) + " mm from where the sides of " + kind.mark()
                            + " have them.");
        } else if (!(own <= within)) {
            findings.add(Fault.MIRRORED, panel.mark(), "it is the mirror image of its kind " + kind.mark() + ".");
        }
    }

    /** The largest difference of sides, counter-clockwise short, middle, long, or the other way round. */
    private static double off(List<Double> seen, PanelKind kind, boolean right) {
        double best = Double.POSITIVE_INFINITY;
        for (int turn = 0; turn < 3; turn++) {
            double most = 0;
            for (int k = 0; k < 3; k++) {
                int side = right ? (3 - k) % 3 : k;
                most = Math.max(
                        most, Math.abs(seen.get((k + turn) % 3) - kind.sides().get(side)));
            }
            best = Math.min(best, most);
        }
        return best;
    }

    private void kind(PanelKind kind) {
        findings.same(kind.mark(), "the count", kind.count(), counts.getOrDefault(kind.mark(), 0), 0);
        Triangle triangle;
        try {
            triangle = new Triangle(
                    kind.sides().get(0), kind.sides().get(1), kind.sides().get(2));
        } catch (IllegalArgumentException noTriangle) {
            findings.add(Fault.DIFFERENT, kind.mark(), "its sides make no triangle.");
            return;
        }
        for (int side = 0; side < 3; side++) {
            findings.same(
                    kind.mark(),
                    "angle " + (side + 1),
                    kind.angles().get(side),
                    Angle.degrees(triangle.angleRad(side)),
                    Printed.RECORD_DEG);
            findings.same(
                    kind.mark(),
                    "altitude " + (side + 1),
                    kind.altitudes().get(side),
                    triangle.altitude(side),
                    Printed.RECORD_MM);
        }
        findings.same(
                kind.mark(), "the narrowest width", kind.narrowest(), triangle.narrowestWidth(), Printed.RECORD_MM);
        findings.same(kind.mark(), "the area, in m²,", kind.area(), triangle.area() / 1e6, Printed.RECORD_FINE);
    }
}
