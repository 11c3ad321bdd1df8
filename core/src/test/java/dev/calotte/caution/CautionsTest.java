package dev.calotte.caution;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.Raise;
import dev.calotte.caution.Circumstances.Clad;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Sheeting;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsTest {

    @Test
    void loadsAreNeverVouchedFor() {
        assertThat(topics(300, new Keep.Whole())).startsWith("Geometry only");
        assertThat(cautions(300, new Keep.Whole()).get(0).line())
                .isEqualTo("Geometry only: Loads, members, joints and foundations are not checked.");
    }

    @Test
    void windSnowAndFallsAreNamedForLargeDomes() {
        assertThat(topics(2600, new Keep.Rows(1, 2))).contains("Wind and snow", "Heights", "Base");
        assertThat(topics(800, new Keep.Rows(1, 2)))
                .doesNotContain("Wind and snow", "Heights")
                .contains("Base");
    }

    @Test
    void aWholeSphereHasNoBase() {
        assertThat(topics(2600, new Keep.Whole())).doesNotContain("Base");
    }

    @Test
    void everyCautionFitsALineAndNamesWhomToAsk() {
        assertThat(cautions(3000, new Keep.Rows(1, 2))).allSatisfy(caution -> {
            assertThat(caution.line().length()).isLessThanOrEqualTo(78);
            assertThat(caution.line()).endsWith(".");
            assertThat(caution.deferTo()).isNotBlank();
        });
    }

    @Test
    void endsAndCoversHaveCautionsOfTheirOwn() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000)));
        Parts plain = Parts.of(dome, Joinery.gap(45));
        Parts flat =
                Parts.of(dome, Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 10, 20, OptionalDouble.empty())));
        Cover sheet = Cover.of("sheet").with(new Sheeting(0, 4, false)).with(Allowances.of(-2, 5));
        Cover cloth = Cover.of("cloth").with(Allowances.of(10, 0));
        assertThat(Cautions.of(clad(plain, Cover.of("film")))).isEqualTo(Cautions.of(dome));
        assertThat(added(dome, Cautions.of(clad(flat)))).containsExactly("Flattened ends");
        assertThat(added(dome, Cautions.of(clad(plain, sheet)))).containsExactly("Panels");
        assertThat(added(dome, Cautions.of(clad(plain, sheet, cloth)))).containsExactly("Panels", "Cloth");
    }

    private static Circumstances clad(Parts parts, Cover... covers) {
        List<Clad> clads = Arrays.stream(covers)
                .map(cover -> new Clad(cover, Optional.empty()))
                .toList();
        return new Circumstances(parts, clads, Raise.BASE, false, false);
    }

    @ParameterizedTest
    @CsvSource({
        "GLASS, Glass",
        "POLYCARBONATE, Plastic sheets; Polycarbonate",
        "ACRYLIC, Plastic sheets; Laser",
        "PLYWOOD, Plywood; Wood dust",
        "CLOTH, Cloth",
        "PVC_CLOTH, Cloth; PVC and vinyl",
        "FILM, Light cover"
    })
    void materialsHaveTheirOwn(Material material, String topics) {
        Parts parts =
                Parts.of(Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))), Joinery.gap(45));
        Clad clad = new Clad(Cover.of("cover"), Optional.of(material));
        List<Caution> cautions = Cautions.of(new Circumstances(parts, List.of(clad, clad), Raise.BASE, false, false));
        assertThat(added(parts.dome(), cautions)).containsExactly(topics.split("; ", -1));
    }

    @Test
    void printedPartsAndLasersHaveTheirOwn() {
        Parts parts =
                Parts.of(Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))), Joinery.gap(45));
        assertThat(added(parts.dome(), Cautions.of(Circumstances.of(parts)))).isEmpty();
        assertThat(added(parts.dome(), Cautions.of(new Circumstances(parts, List.of(), Raise.BASE, true, true))))
                .containsExactly("Laser", "Printed parts");
    }

    @Test
    void everyTextFitsALineAndNamesWhomToAsk() throws IllegalAccessException {
        int count = 0;
        for (Field field : KnownCautions.class.getDeclaredFields()) {
            if (field.getType() == Caution.class) {
                Caution caution = (Caution) field.get(null);
                if (!Cautions.depending().contains(caution)) {
                    assertThat(caution.line().length()).as(caution.line()).isLessThanOrEqualTo(78);
                }
                assertThat(caution.line()).endsWith(".");
                assertThat(caution.deferTo()).isNotBlank();
                count++;
            }
        }
        assertThat(count).isGreaterThan(25);
    }

    @Test
    void whatMayConcernItSaysWhen() {
        assertThat(Cautions.depending())
                .extracting(Caution::topic)
                .contains("If it has a stove or heater", "After storm or snow")
                .allSatisfy(topic -> assertThat(topic).matches("(If|After) .*"));
    }

    private static List<String> added(Dome dome, List<Caution> cautions) {
        return cautions.stream()
                .filter(caution -> !Cautions.of(dome).contains(caution))
                .map(Caution::topic)
                .toList();
    }

    @Test
    void openingsAreToBeFramedAndDoorsChecked() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))
                .withKeep(new Keep.Rows(1, 2)));
        List<Integer> crown = List.of(0, 1, 2, 3, 4);
        List<Caution> gone = Cautions.of(dome.withOpenings(List.of(new Opening("vent", crown, true))));
        List<Caution> kept = Cautions.of(dome.withOpenings(List.of(new Opening("vent", crown, false))));
        assertThat(gone)
                .extracting(Caution::line)
                .contains(
                        "Opening: You removed struts or hubs.",
                        "Door: Check exit width and height and escape window size.");
        assertThat(kept).extracting(Caution::line).contains("Opening: You left panels out and kept their struts.");
        assertThat(gone).hasSameSizeAs(kept).hasSize(Cautions.of(dome).size() + 2);
        assertThat(gone)
                .filteredOn(c -> c.topic().equals("Door"))
                .singleElement()
                .satisfies(door -> assertThat(door.deferTo()).isEqualTo("local code (US: IRC R310, R311)"));
        assertThat(gone).allSatisfy(c -> assertThat(c.line().length()).isLessThanOrEqualTo(78));
    }

    private static List<String> topics(double radiusMm, Keep keep) {
        return cautions(radiusMm, keep).stream().map(Caution::topic).toList();
    }

    private static List<Caution> cautions(double radiusMm, Keep keep) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(radiusMm));
        return Cautions.of(Dome.of(spec.withKeep(keep)));
    }

    @Test
    void aCrownThatIsLiftedNeedsALiftingPlan() {
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000))
                .withKeep(new Keep.Rows(5, 9)));
        Parts parts = Parts.of(dome, Joinery.nodeToNode());
        assertThat(Cautions.of(new Circumstances(parts, List.of(), Raise.BASE, false, false)))
                .isEqualTo(Cautions.of(Circumstances.of(parts)));
        assertThat(Cautions.of(new Circumstances(parts, List.of(), Raise.CROWN, false, false)))
                .extracting(Caution::topic)
                .containsSubsequence("Raising", "Lifting", "Heights");
    }
}
