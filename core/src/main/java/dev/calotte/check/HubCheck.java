package dev.calotte.check;

import dev.calotte.check.Around.Spoke;
import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.check.RecordedDome.StrutKind;
import dev.calotte.units.Angle;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Hubs: that the struts which end there come in the order and at the angles of their kind. */
final class HubCheck {

    private final RecordedDome dome;
    private final Findings findings;
    private final Around around;
    private final Map<String, Integer> counts = new TreeMap<>();
    private final double withinDeg;

    HubCheck(RecordedDome dome, Findings findings) {
        this.dome = dome;
        this.findings = findings;
        this.around = new Around(dome);
        double shortest =
                dome.strutKinds().stream().mapToDouble(StrutKind::length).min().orElse(1);
        this.withinDeg = Printed.RECORD_DEG + Angle.degrees(4 * dome.mergeError() / shortest);
    }

    void check() {
        Map<String, HubKind> kinds = new TreeMap<>();
        dome.hubKinds().forEach(kind -> kinds.put(kind.mark(), kind));
        boolean[] used = new boolean[dome.vertices().size()];
        for (Hub hub : dome.hubs()) {
            if (used[hub.vertex()]) {
                findings.add(Fault.DOUBLED, hub.mark(), "another hub stands at vertex " + hub.vertex() + ".");
            }
            used[hub.vertex()] = true;
            HubKind kind = kinds.get(hub.kind());
            if (kind == null) {
                findings.add(Fault.FOREIGN, hub.mark(), "there is no kind of hubs " + hub.kind() + ".");
            } else {
                counts.merge(kind.mark(), 1, Integer::sum);
                circle(hub, kind);
            }
        }
        for (int vertex = 0; vertex < used.length; vertex++) {
            if (!used[vertex]) {
                findings.add(Fault.MISSING, "vertex " + vertex, "no hub stands there.");
            }
        }
        dome.hubKinds()
                .forEach(kind ->
                        findings.same(kind.mark(), "the count", kind.count(), counts.getOrDefault(kind.mark(), 0), 0));
        new HubHands(dome, withinDeg, findings).check();
    }

    private void circle(Hub hub, HubKind kind) {
        List<Spoke> spokes = around.struts(hub.vertex());
        boolean agrees = spokes.size() == kind.struts().size();
        boolean found = false;
        for (int turn = 0; agrees && !found && turn < spokes.size(); turn++) {
            found = agrees(spokes, kind, turn);
        }
        if (!found) {
            findings.add(
                    Fault.DIFFERENT,
                    hub.mark(),
                    "its struts, counter-clockwise, are "
                            + String.join(
                                    " ",
                                    spokes.stream()
                                            .map(spoke -> spoke.strut().kind())
                                            .toList())
                            + ", in this order or at these angles they make no hub of kind " + kind.mark() + ".");
        }
    }

    private boolean agrees(List<Spoke> spokes, HubKind kind, int turn) {
        int size = spokes.size();
        for (int i = 0; i < size; i++) {
            Spoke spoke = spokes.get((i + turn) % size);
            if (!spoke.strut().kind().equals(kind.struts().get(i))) {
                return false;
            }
            double next = spokes.get((i + 1 + turn) % size).bearing() - spoke.bearing();
            double gap = next <= 0 ? next + 360 : next;
            if (i < kind.gaps().size() && Math.abs(gap - kind.gaps().get(i)) > withinDeg) {
                return false;
            }
        }
        return true;
    }
}
