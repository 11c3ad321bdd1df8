package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import java.util.List;

class PanelKindsTableTest {

    private static final double DEGREES_OF_BEVELS = 1e-5;

    @Table("panel-kinds")
    void handsAreCounted(Row row) {
        Parts parts = row.parts();
        int found = 0;
        for (JsonNode known : row.value()) {
            List<Integer> sides = Row.integers(known.required("struts"));
            assertThat(count(parts, sides, Hand.LEFT))
                    .isEqualTo(known.required("ccw_rising").asInt());
            assertThat(count(parts, sides, Hand.RIGHT))
                    .isEqualTo(known.required("cw_rising").asInt());
            assertThat(count(parts, sides, Hand.NONE))
                    .isEqualTo(known.required("symmetric").asInt());
            found += known.required("count").asInt();
        }
        assertThat(found).isEqualTo(parts.dome().panels().size());
    }

    private static int count(Parts parts, List<Integer> sides, Hand hand) {
        return parts.panelKinds().stream()
                .filter(kind -> kind.struts().equals(sides) && kind.hand() == hand)
                .mapToInt(PanelKind::count)
                .sum();
    }

    @Table("panel-kinds")
    void trianglesHaveTheirMeasures(Row row) {
        Parts parts = row.parts();
        for (JsonNode known : row.value()) {
            List<Integer> sides = Row.integers(known.required("struts"));
            for (PanelKind kind : parts.panelKinds()) {
                if (kind.struts().equals(sides)) {
                    checkTriangle(kind.triangle().scaled(1 / Row.RADIUS_MM), known);
                }
            }
        }
    }

    private static void checkTriangle(Triangle triangle, JsonNode known) {
        assertThat(triangle.area()).isCloseTo(known.required("area").asDouble(), Row.LENGTH);
        double perimeter = triangle.a() + triangle.b() + triangle.c();
        assertThat(2 * triangle.area() / perimeter)
                .isCloseTo(known.required("inradius").asDouble(), Row.LENGTH);
        for (int k = 0; k < 3; k++) {
            assertThat(triangle.side(k)).isCloseTo(at(known, "sides", k), Row.LENGTH);
            assertThat(triangle.altitude(k)).isCloseTo(at(known, "altitudes", k), Row.LENGTH);
            assertThat(Math.toDegrees(triangle.angleRad(k))).isCloseTo(at(known, "angles_deg", k), Row.DEGREES);
        }
    }

    private static double at(JsonNode known, String name, int k) {
        return known.required(name).required(k).asDouble();
    }

    @Table("panel-bevels")
    void congruentPanelsFallIntoTheKnownSetsOfBevels(Row row) {
        Parts parts = row.parts();
        List<Ring> panels = parts.dome().panels().stream()
                .map(panel -> Ring.ofPanel(parts, panel))
                .toList();
        for (JsonNode kind : row.value()) {
            for (JsonNode variant : kind.required("variants")) {
                checkHands(panels, Ring.ofPanel(variant.required("sides_ccw")), variant);
            }
        }
    }

    private static void checkHands(List<Ring> panels, Ring known, JsonNode counts) {
        Ring mirror = known.mirrored();
        int[] found = new int[4];
        for (Ring panel : panels) {
            int listed = panel.isTurnOf(known, DEGREES_OF_BEVELS) ? 1 : 0;
            int mirrored = panel.isTurnOf(mirror, DEGREES_OF_BEVELS) ? 2 : 0;
            found[listed + mirrored]++;
        }
        assertThat(found[1]).isEqualTo(counts.required("as_listed").asInt());
        assertThat(found[2]).isEqualTo(counts.required("mirrored").asInt());
        assertThat(found[3]).isEqualTo(counts.required("symmetric").asInt());
    }
}
