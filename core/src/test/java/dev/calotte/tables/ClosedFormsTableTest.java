package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Measures;
import dev.calotte.dome.Size;
import dev.calotte.parts.StrutKind;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.stream.IntStream;

class ClosedFormsTableTest {

    @Table("closed-forms")
    void formulaGivesThePrintedValue(Row row) {
        double computed = ClosedForms.formula(row.input("formula").asText());
        assertThat(computed).isCloseTo(row.value().asDouble(), withinPercentage(1e-9));
    }

    @Table("closed-forms")
    void domeObeysTheFormula(Row row) {
        double expected = ClosedForms.formula(row.input("formula").asText());
        assertThat(ClosedForms.measured(row.input("what").asText())).isCloseTo(expected, within(1e-12 * expected));
    }

    @Table("chord-tables")
    void textbookChordsAgreeInEveryDigit(Row row) {
        List<StrutKind> kinds = row.parts().strutKinds();
        assertThat(kinds).hasSameSizeAs(row.value());
        IntStream.range(0, kinds.size())
                .forEach(i -> assertThat(kinds.get(i).chordFactor())
                        .isCloseTo(row.value().get(i).asDouble(), within(5.1e-6)));
    }

    /** The printed dihedrals are those of real struts, give or take one in the last digit. */
    @Table("edge-bevels")
    void bevelIsHalfOfWhatADihedralLacksToFlat(Row row) {
        String printed = row.input("dihedral_deg").asText();
        double dihedral = Double.parseDouble(printed);
        double digit = Math.pow(10, printed.indexOf('.') + 1 - printed.length());
        assertThat((180 - dihedral) / 2).isCloseTo(row.value().asDouble(), within(1e-9));
        assertThat(ClosedForms.someDihedralsDeg())
                .anySatisfy(real -> assertThat(real).isCloseTo(dihedral, within(digit)));
    }

    /** The border is ragged by a row of panels, so whatever hangs on it comes nearer as the row's height does. */
    @Table("spherical-caps")
    void domesTendToTheCap(Row row) {
        double radius = row.input("sphere_radius").asDouble();
        double height = row.input("height").asDouble();
        int frequency = 60;
        double ragged = 2.5 * radius / frequency;
        Keep keep = height < 2 * radius ? new Keep.AboveHeight(radius - height) : new Keep.Whole();
        Measures dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(radius))
                        .withKeep(keep))
                .measures();
        double floor = row.number("base_area");
        assertThat(dome.heightMm()).isBetween(height - ragged, height);
        assertThat(dome.floorDiameterMm() / 2).isCloseTo(row.number("base_radius"), within(ragged));
        assertThat(dome.floorAreaMm2()).isCloseTo(floor, within(2 * Math.PI * radius * ragged));
        assertThat(dome.surfaceAreaMm2()).isCloseTo(row.number("curved_area"), within(2 * Math.PI * radius * ragged));
        assertThat(dome.volumeMm3()).isCloseTo(row.number("volume"), within(Math.PI * radius * radius * ragged));
    }
}
