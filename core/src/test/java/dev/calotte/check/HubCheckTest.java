package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.check.RecordedDome.Strut;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class HubCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final Altered ALTERED = new Altered(DOME);

    private static List<String> found(RecordedDome dome) {
        return Found.by(findings -> new HubCheck(dome, findings).check());
    }

    private static List<String> hubs(RecordedDome dome, String kind) {
        return dome.hubs().stream()
                .filter(hub -> hub.kind().equals(kind))
                .map(hub -> "DIFFERENT " + hub.mark())
                .toList();
    }

    @Test
    void aHubOfNoKindIsFound() {
        Hub first = DOME.hubs().get(0);
        assertThat(found(ALTERED.hub(0, h -> new Hub(h.mark(), "H9", h.vertex(), h.row()))))
                .containsExactly("FOREIGN " + first.mark(), "DIFFERENT " + first.kind());
    }

    @Test
    void aHubOfAnotherKindIsFoundWithBothCounts() {
        Hub first = DOME.hubs().get(0);
        String other = DOME.hubKinds().stream()
                .map(HubKind::mark)
                .filter(mark -> !mark.equals(first.kind()))
                .findFirst()
                .orElseThrow();
        assertThat(found(ALTERED.hub(0, h -> new Hub(h.mark(), other, h.vertex(), h.row()))))
                .containsExactlyInAnyOrder(
                        "DIFFERENT " + first.mark(), "DIFFERENT " + first.kind(), "DIFFERENT " + other);
    }

    @Test
    void twoHubsAtOneVertexLeaveAnotherWithoutOne() {
        Hub first = DOME.hubs().get(0);
        int taken = DOME.hubs().get(1).vertex();
        RecordedDome dome = ALTERED.hub(0, h -> new Hub(h.mark(), h.kind(), taken, h.row()));
        assertThat(found(dome)).contains("DOUBLED " + DOME.hubs().get(1).mark(), "MISSING vertex " + first.vertex());
    }

    @Test
    void aHubThatIsGoneIsFound() {
        Hub gone = DOME.hubs().get(5);
        assertThat(found(ALTERED.hubs(Found.without(DOME.hubs(), 5))))
                .containsExactly("MISSING vertex " + gone.vertex(), "DIFFERENT " + gone.kind());
    }

    /** The hubs of a kind of two hands, and that both kinds are no mirror images of each other any more. */
    private static List<String> withTwins(HubKind kind) {
        List<String> found = new ArrayList<>(hubs(DOME, kind.mark()));
        found.add("DIFFERENT " + kind.mark().replace('R', 'L'));
        found.add("DIFFERENT " + kind.mark().replace('L', 'R'));
        return found;
    }

    @Test
    void aHandThatIsNotThatOfTheMarkOrTheShapeIsFound() {
        int own = 0;
        while (!DOME.hubKinds().get(own).hand().equals("none")) {
            own++;
        }
        String mark = DOME.hubKinds().get(own).mark();
        assertThat(found(ALTERED.hubKind(
                        own,
                        k -> new HubKind(
                                k.mark(), "left", k.count(), k.struts(), k.gaps(), k.axialAngles(), k.open()))))
                .containsExactly("DIFFERENT " + mark);
    }

    @Test
    void otherGapsOfAKindAreFoundAtEachOfItsHubs() {
        RecordedDome dome = ALTERED.hubKind(
                0,
                k -> new HubKind(
                        k.mark(),
                        k.hand(),
                        k.count(),
                        k.struts(),
                        Found.changed(k.gaps(), 0, deg -> deg + 0.001),
                        k.axialAngles(),
                        k.open()));
        assertThat(found(dome))
                .containsExactlyElementsOf(withTwins(DOME.hubKinds().get(0)));
    }

    /** Kinds that are mirror images of each other have the same struts and gaps, in the other order. */
    @Test
    void hubsOfTheOtherHandAreFound() {
        int at = 0;
        while (!DOME.hubKinds().get(at).mark().endsWith("L")) {
            at++;
        }
        HubKind left = DOME.hubKinds().get(at);
        HubKind right = DOME.hubKinds().stream()
                .filter(kind -> kind.mark().equals(left.mark().replace('L', 'R')))
                .findFirst()
                .orElseThrow();
        RecordedDome dome = ALTERED.hubKind(
                at,
                k -> new HubKind(
                        k.mark(), k.hand(), k.count(), right.struts(), right.gaps(), right.axialAngles(), k.open()));
        assertThat(found(dome)).isNotEmpty().containsExactlyElementsOf(withTwins(left));
    }

    @Test
    void aStrutTooFewIsFoundAtBothEnds() {
        Strut gone = DOME.struts().get(0);
        List<String> ends = DOME.hubs().stream()
                .filter(hub -> hub.vertex() == gone.from() || hub.vertex() == gone.to())
                .map(hub -> "DIFFERENT " + hub.mark())
                .toList();
        assertThat(ends).hasSize(2);
        assertThat(found(ALTERED.struts(Found.without(DOME.struts(), 0)))).containsExactlyElementsOf(ends);
    }

    @Test
    void countsOfKindsAreFound() {
        assertThat(found(ALTERED.hubKind(
                        2,
                        k -> new HubKind(
                                k.mark(), k.hand(), k.count() + 2, k.struts(), k.gaps(), k.axialAngles(), k.open()))))
                .containsExactly("DIFFERENT " + DOME.hubKinds().get(2).mark());
    }
}
