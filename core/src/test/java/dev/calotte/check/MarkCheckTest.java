package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedDome.Hub;
import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedDome.Strut;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final Altered ALTERED = new Altered(DOME);

    private static List<String> found(RecordedDome dome) {
        return Found.by(findings -> new MarkCheck(dome, findings).check());
    }

    private static Hub marked(Hub hub, String mark) {
        return new Hub(mark, hub.kind(), hub.vertex(), hub.row());
    }

    private static Strut marked(Strut strut, String mark) {
        return new Strut(mark, strut.kind(), strut.from(), strut.to(), strut.dihedral());
    }

    private static Panel marked(Panel panel, String mark) {
        return new Panel(mark, panel.kind(), panel.vertices(), panel.row());
    }

    @Test
    void aMarkOnTwoPiecesIsFound() {
        String first = DOME.panels().get(0).mark();
        assertThat(found(ALTERED.panel(1, panel -> marked(panel, first)))).containsExactly("DOUBLED " + first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"S1", "S1-1", "S1-1.1", "-1.01", "S1 1.01", "S1-1.01x", ""})
    void whatIsNoMarkIsFound(String mark) {
        assertThat(found(ALTERED.strut(0, strut -> marked(strut, mark))))
                .containsExactly(("DIFFERENT " + mark).strip());
    }

    /** The row and the place stay. */
    @Test
    void aMarkOfAnotherKindIsFound() {
        String mark = DOME.hubs().get(3).mark().replaceFirst("^H\\d+", "H9");
        assertThat(found(ALTERED.hub(3, hub -> marked(hub, mark)))).containsExactly("DIFFERENT " + mark);
    }

    @Test
    void anotherRowThanThatOfTheMarkIsFound() {
        Panel last = DOME.panels().get(DOME.panels().size() - 1);
        assertThat(found(ALTERED.panel(
                        DOME.panels().size() - 1, p -> new Panel(p.mark(), p.kind(), p.vertices(), p.row() + 1))))
                .containsExactly("DIFFERENT " + last.mark());
    }

    /** Each is right by itself, but counted round the dome the second has the smaller place. */
    @Test
    void swappedPlacesAreFound() {
        int at = 0;
        while (!next(DOME.struts(), at)) {
            at++;
        }
        String one = DOME.struts().get(at).mark();
        String other = DOME.struts().get(at + 1).mark();
        int second = at + 1;
        RecordedDome dome = new Altered(ALTERED.strut(at, strut -> marked(strut, other)))
                .strut(second, strut -> marked(strut, one));
        assertThat(found(dome)).contains("DIFFERENT " + one).doesNotContain("DOUBLED " + one);
    }

    private static boolean next(List<Strut> struts, int at) {
        return kindAndRow(struts.get(at)).equals(kindAndRow(struts.get(at + 1)));
    }

    private static String kindAndRow(Strut strut) {
        return strut.mark().substring(0, strut.mark().indexOf('.'));
    }

    /** The marks stay in their order, but two hubs of a row stand at each other's place. */
    @Test
    void swappedPiecesAreFound() {
        int at = 3;
        assertThat(DOME.hubs().get(at).row()).isEqualTo(DOME.hubs().get(at + 1).row());
        int one = DOME.hubs().get(at).vertex();
        int other = DOME.hubs().get(at + 1).vertex();
        RecordedDome dome = new Altered(ALTERED.hub(at, h -> new Hub(h.mark(), h.kind(), other, h.row())))
                .hub(at + 1, h -> new Hub(h.mark(), h.kind(), one, h.row()));
        assertThat(found(dome))
                .containsExactly("DIFFERENT " + DOME.hubs().get(at + 1).mark());
    }

    /** From the base upwards every piece has a smaller row, or a smaller place, than the one before it. */
    @Test
    void aListFromTheBaseUpwardsIsFound() {
        List<Hub> back = new ArrayList<>(DOME.hubs());
        Collections.reverse(back);
        assertThat(found(ALTERED.hubs(back))).hasSize(DOME.hubs().size() - 1);
    }
}
