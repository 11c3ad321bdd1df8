package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.CompoundCut;

class CompoundCutTableTest {

    @Table("compound-cuts")
    void sawSettingsAgree(Row row) {
        CompoundCut cut =
                CompoundCut.of(rad(row, "corner_angle_deg"), rad(row, "rail1_tilt_deg"), rad(row, "rail2_tilt_deg"));
        assertThat(Math.toDegrees(cut.bladeTiltRad())).isCloseTo(row.number("blade_tilt_deg"), Row.DEGREES);
        assertThat(Math.toDegrees(cut.gauge1Rad())).isCloseTo(row.number("mitre_gauge_rail1_deg"), Row.DEGREES);
        assertThat(Math.toDegrees(cut.gauge2Rad())).isCloseTo(row.number("mitre_gauge_rail2_deg"), Row.DEGREES);
    }

    private static double rad(Row row, String input) {
        return Math.toRadians(row.input(input).asDouble());
    }
}
