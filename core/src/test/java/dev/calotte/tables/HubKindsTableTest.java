package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.parts.Hand;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;

class HubKindsTableTest {

    private static final double DEGREES = 1e-6;

    @Table("hub-kinds")
    void hubsOfSpheresAreCountedByHand(Row row) {
        checkHubs(row);
    }

    @Table("dome-hub-kinds")
    void hubsOfDomesAreCountedByHand(Row row) {
        checkHubs(row);
    }

    private static void checkHubs(Row row) {
        Parts parts = row.parts();
        int found = 0;
        for (JsonNode known : row.value()) {
            assertThat(count(parts, known, Hand.LEFT))
                    .isEqualTo(known.required("as_listed").asInt());
            assertThat(count(parts, known, Hand.RIGHT))
                    .isEqualTo(known.required("mirrored").asInt());
            assertThat(count(parts, known, Hand.NONE))
                    .isEqualTo(known.required("symmetric").asInt());
            found += known.required("count").asInt();
        }
        assertThat(found).isEqualTo(parts.dome().hubs().size());
    }

    /** A right hub's circle is the mirror image of the one listed. */
    private static int count(Parts parts, JsonNode known, Hand hand) {
        Ring listed = Ring.ofHub(known);
        Ring ring = hand == Hand.RIGHT ? listed.mirrored() : listed;
        return parts.hubKinds().stream()
                .filter(kind -> kind.hand() == hand)
                .filter(kind -> kind.open() == known.required("open").asBoolean())
                .filter(kind -> Ring.ofHub(kind).isTurnOf(ring, DEGREES))
                .mapToInt(HubKind::count)
                .sum();
    }
}
