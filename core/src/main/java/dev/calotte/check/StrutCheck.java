package dev.calotte.check;

import dev.calotte.check.RecordedDome.Strut;
import dev.calotte.check.RecordedDome.StrutKind;
import dev.calotte.units.Angle;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Struts: that they join the hubs they name at the length of their kind, with the angle between their panels. */
final class StrutCheck {

    private final RecordedDome dome;
    private final Edges edges;
    private final Findings findings;
    private final Map<String, StrutKind> kinds = new TreeMap<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private Mismatch worst = Mismatch.NONE;

    StrutCheck(RecordedDome dome, Edges edges, Findings findings) {
        this.dome = dome;
        this.edges = edges;
        this.findings = findings;
        dome.strutKinds().forEach(kind -> kinds.put(kind.mark(), kind));
    }

    Mismatch check() {
        Set<Long> seen = new TreeSet<>();
        for (Strut strut : dome.struts()) {
            if (!seen.add(Edges.key(strut.from(), strut.to()))) {
                findings.add(Fault.DOUBLED, strut.mark(), "another strut joins the same hubs.");
            }
            StrutKind kind = kinds.get(strut.kind());
            if (kind == null) {
                findings.add(Fault.FOREIGN, strut.mark(), "there is no kind of struts " + strut.kind() + ".");
            } else {
                counts.merge(kind.mark(), 1, Integer::sum);
                length(strut, kind);
                dihedral(strut);
            }
        }
        dome.strutKinds().forEach(this::kind);
        edges.all().keySet().stream().filter(edge -> !seen.contains(edge)).forEach(this::missing);
        return worst;
    }

    private void missing(long edge) {
        findings.add(
                Fault.MISSING,
                "vertices " + Edges.from(edge) + " and " + Edges.to(edge),
                "a panel has a side there, and no strut joins them.");
    }

    private void length(Strut strut, StrutKind kind) {
        double mm = dome.vertex(strut.from()).distance(dome.vertex(strut.to()));
        double off = Math.abs(mm - kind.length());
        worst = worst.or(new Mismatch(off, "strut " + strut.mark()));
        if (!(off <= kind.mergeError() + Printed.RECORD_MM)) {
            findings.add(
                    Fault.DIFFERENT,
                    strut.mark(),
                    "its hubs are " + Findings.text(mm) + " mm apart, its kind " + kind.mark() + " is "
                            + Findings.text(kind.length()) + " mm long.");
        }
    }

    private void dihedral(Strut strut) {
        List<Integer> panels = edges.panels(strut.from(), strut.to());
        boolean two = panels.size() == 2;
        if (two != Double.isFinite(strut.dihedral())) {
            findings.add(
                    Fault.DIFFERENT,
                    strut.mark(),
                    (two
                            ? "no angle is given between its two panels."
                            : "an angle is given, but it has no two panels."));
        } else if (two) {
            double angle = 180 - turn(strut, panels.get(0), panels.get(1));
            findings.same(
                    strut.mark(),
                    "the angle between its panels, in degrees,",
                    strut.dihedral(),
                    angle,
                    Printed.RECORD_DEG);
        }
    }

    /** How much one panel is turned against the other in degrees, below 0 at a hollow edge. */
    private double turn(Strut strut, int one, int other) {
        Vector3D n = normal(one);
        Vector3D m = normal(other);
        Vector3D along = dome.vertex(strut.to()).subtract(dome.vertex(strut.from()));
        double turn = StrictMath.atan2(n.crossProduct(m).getNorm(), n.dotProduct(m));
        Vector3D out = along.crossProduct(n);
        double away = out.dotProduct(apex(strut, one).subtract(dome.vertex(strut.from())));
        double hollow = -Math.signum(away) * out.dotProduct(m);
        return Angle.degrees(hollow < 0 ? -turn : turn);
    }

    private Vector3D apex(Strut strut, int panel) {
        int third = dome.panels().get(panel).vertices().stream()
                .filter(v -> v != strut.from() && v != strut.to())
                .findFirst()
                .orElseThrow();
        return dome.vertex(third);
    }

    private Vector3D normal(int panel) {
        return PanelCheck.normal(dome, dome.panels().get(panel));
    }

    private void kind(StrutKind kind) {
        double gaps = kind.gaps().stream().mapToDouble(gap -> gap).sum();
        findings.same(kind.mark(), "the count", kind.count(), counts.getOrDefault(kind.mark(), 0), 0);
        findings.same(
                kind.mark(),
                "the chord factor",
                kind.chordFactor(),
                kind.length() / dome.figures().radius(),
                Printed.RECORD_FINE);
        if (!kind.flattened()) {
            findings.same(kind.mark(), "the cut length", kind.cutLength(), kind.length() - gaps, Printed.RECORD_MM);
        }
    }
}
