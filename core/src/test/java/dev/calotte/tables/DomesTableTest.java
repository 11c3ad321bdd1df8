package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Keep;
import dev.calotte.geometry.Groups;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

class DomesTableTest {

    @Table("domes")
    void partsAreCounted(Row row) {
        Parts parts = row.parts();
        assertThat(parts.dome().hubs()).hasSize(row.count("V"));
        assertThat(parts.dome().struts()).hasSize(row.count("E"));
        assertThat(parts.dome().panels()).hasSize(row.count("F"));
        assertThat(parts.strutKinds()).hasSameSizeAs(row.value().required("struts"));
        for (JsonNode known : row.value().required("struts")) {
            StrutKind kind = parts.strutKinds().get(known.required("kind").asInt() - 1);
            assertThat(kind.chordFactor()).isCloseTo(known.required("chord").asDouble(), Row.LENGTH);
            assertThat(kind.count()).isEqualTo(known.required("count").asInt());
        }
    }

    @Table("domes")
    void panelsAreCountedByHand(Row row) {
        Parts parts = row.parts();
        for (JsonNode known : row.value().required("panels")) {
            List<Integer> sides = Row.integers(known.required("struts"));
            assertThat(count(parts, sides, Hand.LEFT))
                    .isEqualTo(known.required("ccw_rising").asInt());
            assertThat(count(parts, sides, Hand.RIGHT))
                    .isEqualTo(known.required("cw_rising").asInt());
            assertThat(count(parts, sides, Hand.LEFT)
                            + count(parts, sides, Hand.RIGHT)
                            + count(parts, sides, Hand.NONE))
                    .isEqualTo(known.required("count").asInt());
        }
        assertThat(parts.panelKinds().stream().map(PanelKind::number).distinct())
                .hasSameSizeAs(row.value().required("panels"));
    }

    private static int count(Parts parts, List<Integer> sides, Hand hand) {
        return parts.panelKinds().stream()
                .filter(kind -> kind.struts().equals(sides) && kind.hand() == hand)
                .mapToInt(PanelKind::count)
                .sum();
    }

    @Table("domes")
    void measuresAgree(Row row) {
        Dome dome = row.dome();
        double r = Row.RADIUS_MM;
        assertThat(dome.measures().radiusMm()).isEqualTo(r);
        assertThat(dome.measures().surfaceAreaMm2() / r / r).isCloseTo(row.number("panel_area_total"), Row.LENGTH);
        assertThat(dome.measures().heightMm() / r).isCloseTo(row.number("height_top_minus_lowest"), Row.LENGTH);
        double[] floor = dome.baseRing().stream()
                .map(i -> dome.hubs().get(i).position())
                .mapToDouble(p -> Math.sqrt(p.getX() * p.getX() + p.getY() * p.getY()) / r)
                .sorted()
                .toArray();
        JsonNode leastAndMost = row.value().required("floor_radius_min_max");
        assertThat(floor[0]).isCloseTo(leastAndMost.required(0).asDouble(), Row.LENGTH);
        assertThat(dome.measures().floorDiameterMm() / 2 / r)
                .isCloseTo(leastAndMost.required(1).asDouble(), Row.LENGTH);
    }

    @Table("domes")
    void baseRingStandsAtItsLevels(Row row) {
        Dome dome = row.dome();
        JsonNode ring = row.value().required("base_ring");
        assertThat(dome.baseRing()).hasSize(ring.required("hubs").asInt());
        assertThat(dome.measures().baseSpreadMm() / Row.RADIUS_MM)
                .isCloseTo(ring.required("spread_over_radius").asDouble(), Row.LENGTH);
        double[] heights = dome.baseRing().stream()
                .mapToDouble(i -> dome.hubs().get(i).position().getZ() / Row.RADIUS_MM)
                .toArray();
        Groups levels = Groups.of(heights, 1e-9);
        JsonNode known = ring.required("z_levels");
        assertThat(levels.count()).isEqualTo(known.size());
        for (int i = 0; i < known.size(); i++) {
            assertThat(levels.value(i)).isCloseTo(known.get(i).required("z").asDouble(), Row.LENGTH);
            assertThat(levels.size(i)).isEqualTo(known.get(i).required("count").asInt());
        }
    }

    @Table("domes")
    void baseRingIsOfItsStruts(Row row) {
        Parts parts = row.parts();
        Map<Integer, Integer> found = new TreeMap<>();
        parts.dome().struts().stream()
                .filter(strut -> strut.dihedralRad().isEmpty())
                .forEach(strut -> found.merge(parts.kindOf(strut).number(), 1, Integer::sum));
        Map<Integer, Integer> known = new TreeMap<>();
        row.value()
                .required("base_ring")
                .required("struts")
                .forEach(s -> known.put(
                        s.required("kind").asInt(), s.required("count").asInt()));
        assertThat(found).isEqualTo(known);
    }

    @Table("base-rows")
    void everyRowSpreadsAsKnown(Row row) {
        for (JsonNode known : row.value()) {
            int rows = known.required("row").asInt();
            int all = 3 * row.input("b").asInt();
            Dome dome = Dome.of(row.spec().withKeep(new Keep.Rows(rows, all)));
            assertThat(dome.baseRing()).hasSize(known.required("hubs").asInt());
            assertThat(dome.measures().baseSpreadMm() / Row.RADIUS_MM)
                    .isCloseTo(known.required("spread_over_radius").asDouble(), Row.LENGTH);
        }
    }
}
