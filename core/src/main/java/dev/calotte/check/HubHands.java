package dev.calotte.check;

import dev.calotte.check.RecordedDome.HubKind;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Hands of kinds of hubs: one without a hand is its own mirror image, one of two is that of the other, and the letter of the
 * mark says which it is.
 */
final class HubHands {

    /** Half of the last decimal of two angles. */
    private static final double PRINTED_DEG = 2e-9;

    /** More struts than any hub has; whatever a record announces, the time to compare is bounded. */
    private static final int MOST_STRUTS = 100;

    private final RecordedDome dome;
    private final double withinDeg;
    private final Findings findings;
    private final Map<String, HubKind> kinds = new TreeMap<>();

    /** Angles of one kind may differ by as much as what is merged allows. */
    HubHands(RecordedDome dome, double withinDeg, Findings findings) {
        this.dome = dome;
        this.withinDeg = withinDeg;
        this.findings = findings;
        dome.hubKinds().forEach(kind -> kinds.put(kind.mark(), kind));
    }

    void check() {
        dome.hubKinds().forEach(this::kind);
    }

    private void kind(HubKind kind) {
        String hand = Hands.of(kind.mark());
        HubKind twin = kinds.get(Hands.twin(kind.mark()));
        findings.same(kind.mark(), "the hand", kind.hand(), hand);
        if (hand.equals("none")) {
            if (!mirrors(kind, kind, withinDeg)) {
                findings.add(Fault.DIFFERENT, kind.mark(), "it has no hand, and is not its own mirror image.");
            }
        } else if (twin != null && !mirrors(kind, twin, withinDeg)) {
            findings.add(Fault.DIFFERENT, kind.mark(), "it is not the mirror image of " + twin.mark() + ".");
        } else if (!dome.opened() && dome.mergeError() == 0 && mirrors(kind, kind, PRINTED_DEG)) {
            findings.add(Fault.DIFFERENT, kind.mark(), "it has a hand, and is its own mirror image.");
        }
    }

    /** Whether the struts of one, read clockwise from wherever, are those of the other with its angles between them. */
    private static boolean mirrors(HubKind kind, HubKind other, double withinDeg) {
        int size = kind.struts().size();
        if (size > MOST_STRUTS
                || other.struts().size() != size
                || other.gaps().size() != kind.gaps().size()) {
            return false;
        }
        boolean closed = kind.gaps().size() == size;
        for (int turn = 0; turn < (closed ? size : 1); turn++) {
            if (mirrors(kind, other, turn, withinDeg)) {
                return true;
            }
        }
        return false;
    }

    private static boolean mirrors(HubKind kind, HubKind other, int turn, double withinDeg) {
        List<String> struts = kind.struts();
        List<Double> gaps = kind.gaps();
        int size = struts.size();
        for (int i = 0; i < size; i++) {
            int back = Math.floorMod(size - 1 - i - turn, size);
            if (!other.struts().get(i).equals(struts.get(back))) {
                return false;
            }
            int gap = Math.floorMod(back - 1, size);
            if (i < gaps.size()
                    && (gap >= gaps.size() || !(Math.abs(other.gaps().get(i) - gaps.get(gap)) <= withinDeg))) {
                return false;
            }
        }
        return true;
    }
}
