package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Spoke;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Locale;
import java.util.OptionalDouble;

class IdentitiesTableTest {

    private static Dome dome(Solid solid, Breakdown breakdown, Keep keep) {
        return Dome.of(DomeSpec.of(solid, breakdown, Size.radius(1)).withKeep(keep));
    }

    @Table("identities")
    void countsFollowTheTriangulationNumber(Row row) {
        for (Solid solid : Solid.values()) {
            Breakdown breakdown = new Breakdown(3, 2);
            Dome dome = dome(solid, breakdown, new Keep.Whole());
            long t = breakdown.triangulationNumber();
            String formula =
                    row.value().required(solid.name().toLowerCase(Locale.ROOT)).asText();
            assertThat(formula)
                    .isEqualTo("V=%dT+2 E=%dT F=%dT"
                            .formatted(
                                    (dome.hubs().size() - 2) / t,
                                    dome.struts().size() / t,
                                    dome.panels().size() / t));
            assertThat(euler(dome)).isEqualTo(row.count("V-E+F"));
        }
    }

    @Table("identities")
    void aDomeIsADisc(Row row) {
        Dome dome = dome(Solid.ICOSAHEDRON, new Breakdown(3, 2), new Keep.AboveHeight(0));
        assertThat("V-E+F=" + euler(dome))
                .isEqualTo(row.value().required("dome (a disc)").asText());
    }

    private static int euler(Dome dome) {
        return dome.hubs().size() - dome.struts().size() + dome.panels().size();
    }

    @Table("identities")
    void hubGapsAddUpToAFullTurn(Row row) {
        Dome dome = dome(Solid.OCTAHEDRON, new Breakdown(3, 2), new Keep.Whole());
        double full = row.number("sum of in-plane gaps at every hub deg");
        for (int hub = 0; hub < dome.hubs().size(); hub++) {
            double sum = dome.around(hub).stream()
                    .map(Spoke::gapRad)
                    .mapToDouble(OptionalDouble::orElseThrow)
                    .sum();
            assertThat(Math.toDegrees(sum)).isCloseTo(full, Row.DEGREES);
        }
    }
}
