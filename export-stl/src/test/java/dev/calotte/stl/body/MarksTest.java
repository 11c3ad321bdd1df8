package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.parts.Parts;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Letters stand out 0.8 mm over the foot that they stand on. */
class MarksTest {

    private static final JigSpec SMALL_BED =
            new JigSpec(Domes.TUBE.strut(), 0.3, 2.4, new Bed(180, 180, 180), Optional.empty());

    @Test
    void theMiddleOfAJigThatIsCutBearsMarksToo() {
        for (Parts parts : new Parts[] {Domes.gapped(3, 45), Domes.flattened(4)}) {
            PrintPlate plate = Domes.plate(parts, parts.joinery().hubGaps().isEmpty() ? Domes.TUBE : SMALL_BED);
            assertThat(Domes.jigs(plate, Jig.Cradle.class))
                    .filteredOn(jig -> jig.cut().isPresent())
                    .isNotEmpty()
                    .allSatisfy(jig -> assertThat(raised(Bodies.of(jig, plate).get(0), 3.8))
                            .as(jig.mark())
                            .isGreaterThan(20));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void theInnerHalfOfEverySocketHubBearsItsMark(int frequency) {
        JigSpec sockets = new JigSpec(
                Domes.TUBE.strut(),
                0.2,
                1.6,
                Bed.USUAL,
                Optional.of(new JigSpec.Sockets(StrutSection.round(6), 12, 10)));
        PrintPlate plate = Domes.plate(Domes.gapped(frequency, 45), sockets);
        assertThat(Domes.jigs(plate, Jig.Socket.class)).allSatisfy(jig -> {
            Mesh inner = Bodies.of(jig, plate).get(0);
            Sound.check(inner);
            assertThat(raised(inner, 2.4)).as(jig.mark()).isGreaterThan(10);
        });
    }

    private static double raised(Mesh mesh, double height) {
        return Sound.facets(mesh).stream()
                .filter(facet -> Stream.of(facet).allMatch(v -> Math.abs(v.getZ() - height) < 1e-3))
                .mapToDouble(facet -> Sound.normal(facet).getZ() / 2)
                .sum();
    }
}
