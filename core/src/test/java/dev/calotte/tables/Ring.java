package dev.calotte.tables;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.dome.Panel;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strut kinds in a circle, counter-clockwise, with an angle in degrees for each: round a hub the gap to the next strut
 * (none after the last of an open circle), round a panel the dihedral angle over the strut.
 */
record Ring(List<Integer> struts, List<Double> degrees, boolean angleFollows) {

    static Ring ofHub(HubKind kind) {
        return new Ring(
                kind.struts(), kind.gapsRad().stream().map(Math::toDegrees).toList(), true);
    }

    static Ring ofHub(JsonNode hub) {
        return new Ring(Row.integers(hub.required("struts_ccw")), Row.numbers(hub.required("gaps_deg")), true);
    }

    static Ring ofPanel(Parts parts, Panel panel) {
        var struts =
                panel.struts().stream().map(i -> parts.dome().struts().get(i)).toList();
        return new Ring(
                struts.stream().map(s -> parts.kindOf(s).number()).toList(),
                struts.stream()
                        .map(s -> Math.toDegrees(s.dihedralRad().orElseThrow()))
                        .toList(),
                false);
    }

    static Ring ofPanel(JsonNode sides) {
        return new Ring(
                Row.list(sides).stream().map(s -> s.required("strut").asInt()).toList(),
                Row.list(sides).stream()
                        .map(s -> s.required("dihedral_deg").asDouble())
                        .toList(),
                false);
    }

    private boolean isOpen() {
        return degrees.size() < struts.size();
    }

    /** The same seen from inside. */
    Ring mirrored() {
        int n = struts.size();
        int last = angleFollows ? 2 * n - 2 : n - 1;
        return new Ring(
                IntStream.range(0, n).mapToObj(i -> struts.get(n - 1 - i)).toList(),
                IntStream.range(0, degrees.size())
                        .mapToObj(i -> degrees.get((last - i) % n))
                        .toList(),
                angleFollows);
    }

    /** Whether both are the same circle, begun at the same or another strut. */
    boolean isTurnOf(Ring other, double tolerance) {
        boolean alike = struts.size() == other.struts.size() && isOpen() == other.isOpen();
        int turns = isOpen() ? 1 : struts.size();
        return alike && IntStream.range(0, turns).anyMatch(turn -> matches(other, turn, tolerance));
    }

    private boolean matches(Ring other, int turn, double tolerance) {
        int n = struts.size();
        return IntStream.range(0, n).allMatch(i -> struts.get(i).equals(other.struts.get((i + turn) % n)))
                && IntStream.range(0, degrees.size())
                        .allMatch(i -> Math.abs(degrees.get(i) - other.degrees.get((i + turn) % n)) <= tolerance);
    }
}
