package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.parts.StrutKind;
import dev.calotte.sphere.Spacing;
import java.util.List;

class StrutKindsTableTest {

    @Table("strut-kinds")
    void chordsAndCountsAgree(Row row) {
        List<StrutKind> kinds = row.parts().strutKinds();
        assertThat(kinds).hasSameSizeAs(row.value());
        for (JsonNode known : row.value()) {
            StrutKind kind = kinds.get(known.required("kind").asInt() - 1);
            assertThat(kind.number()).isEqualTo(known.required("kind").asInt());
            assertThat(kind.chordFactor()).isCloseTo(known.required("chord").asDouble(), Row.LENGTH);
            assertThat(kind.lengthMm() / Row.RADIUS_MM)
                    .isCloseTo(known.required("chord").asDouble(), Row.LENGTH);
            assertThat(kind.count()).isEqualTo(known.required("count").asInt());
        }
    }

    @Table("strut-kinds")
    void axialAnglesAreHalfTheCentralOnes(Row row) {
        List<StrutKind> kinds = row.parts().strutKinds();
        for (JsonNode known : row.value()) {
            double degrees =
                    Math.toDegrees(kinds.get(known.required("kind").asInt() - 1).axialAngleRad());
            assertThat(degrees).isCloseTo(known.required("axial_deg").asDouble(), Row.DEGREES);
            assertThat(2 * degrees).isCloseTo(known.required("central_deg").asDouble(), Row.DEGREES);
        }
    }

    @Table("strut-kinds")
    void dihedralsAgree(Row row) {
        List<StrutKind> kinds = row.parts().strutKinds();
        for (JsonNode known : row.value()) {
            List<StrutKind.Dihedral> dihedrals =
                    kinds.get(known.required("kind").asInt() - 1).dihedrals();
            List<JsonNode> angles = Row.list(known.required("dihedrals_deg"));
            assertThat(dihedrals).hasSameSizeAs(angles);
            for (int i = 0; i < angles.size(); i++) {
                assertThat(Math.toDegrees(dihedrals.get(i).angleRad()))
                        .isCloseTo(angles.get(i).required("deg").asDouble(), Row.DEGREES);
                assertThat(dihedrals.get(i).count())
                        .isEqualTo(angles.get(i).required("count").asInt());
            }
        }
    }

    /** A point moves by up to 8e-5 of the radius, so a chord by up to twice that. */
    @Table("flat-window")
    void arcSpacingIsNearTheFlatWindowVariantAndNotTheSame(Row row) {
        List<StrutKind> kinds = row.parts(Spacing.ARC).strutKinds();
        assertThat(kinds).hasSameSizeAs(row.value());
        double furthest = 0;
        for (StrutKind kind : kinds) {
            JsonNode known = row.value().get(kind.number() - 1);
            assertThat(kind.count()).isEqualTo(known.required("count").asInt());
            furthest = Math.max(
                    furthest,
                    Math.abs(kind.chordFactor() - known.required("chord").asDouble()));
        }
        assertThat(furthest).isBetween(1e-9, 2 * 8e-5);
    }
}
