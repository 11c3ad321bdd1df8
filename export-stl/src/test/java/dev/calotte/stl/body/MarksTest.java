package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Jig;
import dev.calotte.document.Mesh;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.parts.Parts;
import dev.calotte.solid.Bed;
import dev.calotte.solid.JigSpec;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
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
                    .allSatisfy(jig -> assertThat(
                                    Sound.levelMm2(Bodies.of(jig, plate).get(0), 3.8))
                            .as(jig.mark())
                            .isGreaterThan(20));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void theInnerHalfOfEverySocketHubBearsItsMark(int frequency) {
        PrintPlate plate = Domes.plate(Domes.gapped(frequency, 45), Domes.SMALL_SOCKETS);
        assertThat(Domes.jigs(plate, Jig.Socket.class)).allSatisfy(jig -> {
            Mesh inner = Bodies.of(jig, plate).get(0);
            Sound.check(inner);
            assertThat(Sound.levelMm2(inner, 2.4)).as(jig.mark()).isGreaterThan(10);
        });
    }

    /** Cradles of two hubs look alike but stand at different heights: each bears its strut's mark and its hub's. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4})
    void everyCradleThatIsCutOffBearsTheMarkOfItsHub(int frequency) {
        PrintPlate plate = Domes.plate(Domes.flattened(frequency), Domes.TUBE);
        List<Jig.Cradle> cut = Domes.jigs(plate, Jig.Cradle.class).stream()
                .filter(jig -> jig.cut().isPresent())
                .toList();
        assertThat(cut).isNotEmpty();
        for (Jig.Cradle jig : cut) {
            List<Mesh> pieces = Bodies.of(jig, plate);
            for (int i = 0; i < jig.arms().size(); i++) {
                Mesh piece = pieces.get(i + 1);
                assertThat(lettersOn(piece, false))
                        .as(jig.mark() + " strut " + i)
                        .isGreaterThan(8);
                assertThat(lettersOn(piece, true)).as(jig.mark() + " hub " + i).isGreaterThan(8);
            }
        }
    }

    /** On so small a bed arms are cut off where nothing fits beside them; the letters are 7 mm high, the arrow 24.5 mm2. */
    @Test
    void theWellBearsTheMarksThatFindNoRoomBesideTheArms() {
        JigSpec wide = new JigSpec(
                Optional.of(StrutSection.rectangle(45, 95)), 0.3, 2.4, new Bed(170, 170, 250), Optional.empty());
        PrintPlate plate = Domes.plate(Domes.gapped(2, 60), wide);
        assertThat(Domes.jigs(plate, Jig.Cradle.class)).isNotEmpty().allSatisfy(jig -> {
            Mesh middle = Bodies.of(jig, plate).get(0);
            Sound.check(middle);
            double letters = jig.arms().size() * MarksTest.letters("S1") + MarksTest.letters(jig.mark()) + 24.5;
            assertThat(Sound.levelMm2(middle, 3.8)).as(jig.mark()).isGreaterThan(0.8 * letters);
        });
    }

    /** Each letter's strokes are 1 mm wide, at least as long together as it is high. */
    private static double letters(String text) {
        return 7 * text.length();
    }

    /** Without it nobody knows which socket is the first. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theInnerHalfOfEverySocketHubHasOneArrow(int frequency) {
        PrintPlate plate = Domes.plate(Domes.gapped(frequency, 45), Domes.SMALL_SOCKETS);
        assertThat(Domes.jigs(plate, Jig.Socket.class))
                .isNotEmpty()
                .allSatisfy(jig -> assertThat(arrows(Bodies.of(jig, plate).get(0)))
                        .as(jig.mark())
                        .isEqualTo(1));
    }

    /** Single facets at the height of letters that are as large as an arrow with letters of 5 or 7 mm. */
    private static long arrows(Mesh mesh) {
        return Sound.facets(mesh).stream()
                .filter(facet -> Stream.of(facet).allMatch(v -> Math.abs(v.getZ() - 2.4) < 1e-3))
                .mapToDouble(facet -> Sound.normal(facet).getZ() / 2)
                .filter(area -> area > 11)
                .count();
    }

    /** To the right of the trough's axis, or to its left: pieces lie along x, as far to the one side as to the other. */
    private static double lettersOn(Mesh mesh, boolean right) {
        double axis = Sound.facets(mesh).stream()
                        .flatMap(Stream::of)
                        .mapToDouble(Vector3D::getY)
                        .max()
                        .orElseThrow()
                / 2;
        return area(mesh, facet -> Stream.of(facet).allMatch(v -> v.getY() < axis == right));
    }

    private static double area(Mesh mesh, Predicate<Vector3D[]> where) {
        return Sound.facets(mesh).stream()
                .filter(facet -> Stream.of(facet).allMatch(v -> Math.abs(v.getZ() - 3.8) < 1e-3))
                .filter(where)
                .mapToDouble(facet -> Sound.normal(facet).getZ() / 2)
                .sum();
    }
}
