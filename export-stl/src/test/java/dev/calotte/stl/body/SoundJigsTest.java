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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SoundJigsTest {

    private static final JigSpec SMALL_BED =
            new JigSpec(Domes.TUBE.strut(), 0.3, 2.4, new Bed(160, 150, 150), Optional.empty());

    private static final JigSpec SOCKETS = new JigSpec(
            Domes.TUBE.strut(), 0.2, 1.6, Bed.USUAL, Optional.of(new JigSpec.Sockets(StrutSection.round(5), 10, 15)));

    static Stream<Arguments> plates() {
        return Stream.of(
                Arguments.of("2V tube", Domes.gapped(2, 45), Domes.TUBE),
                Arguments.of("3V tube, small bed", Domes.gapped(3, 45), SMALL_BED),
                Arguments.of("2V timber", Domes.gapped(2, 70), Domes.TIMBER),
                Arguments.of("1V tube", Domes.gapped(1, 45), Domes.TUBE),
                Arguments.of("3V flattened", Domes.flattened(3), Domes.TUBE),
                Arguments.of("2V mitred", Domes.mitred(2), Domes.TUBE),
                Arguments.of("3V sockets", Domes.gapped(3, 45), SOCKETS));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plates")
    void everyPieceIsOneClosedBodyThatDoesNotCrossItself(String name, Parts parts, JigSpec spec) {
        PrintPlate plate = Domes.plate(parts, spec);
        assertThat(plate.jigs()).as(name).isNotEmpty();
        for (Jig jig : plate.jigs()) {
            Bodies.of(jig, plate).forEach(Sound::check);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plates")
    void everyPieceLeavesTheMarginOfTheBedFree(String name, Parts parts, JigSpec spec) {
        PrintPlate plate = Domes.plate(parts, spec);
        for (Jig jig : plate.jigs()) {
            for (Mesh piece : Bodies.of(jig, plate)) {
                assertThat(spec.bed().takes(Sound.most(piece, 0), Sound.most(piece, 1)))
                        .as(name + ": " + piece.name())
                        .isTrue();
                assertThat(Sound.most(piece, 2))
                        .as(piece.name())
                        .isLessThan(spec.bed().heightMm());
            }
        }
    }

    /** Without overhangs nothing but the bed lies below a facet that looks down. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("plates")
    void nothingHangsOver(String name, Parts parts, JigSpec spec) {
        PrintPlate plate = Domes.plate(parts, spec);
        for (Jig jig : plate.jigs()) {
            for (Mesh piece : Bodies.of(jig, plate)) {
                assertThat(Sound.facets(piece))
                        .as(name + ": " + piece.name())
                        .allMatch(facet -> Sound.normal(facet).getZ() >= -1e-9 || facet[0].getZ() == 0);
            }
        }
    }

    @Test
    void piecesOfAJigAreCountedInItsNames() {
        PrintPlate plate = Domes.plate(Domes.gapped(3, 45), SMALL_BED);
        List<String> names =
                Bodies.of(plate.jigs().get(0), plate).stream().map(Mesh::name).toList();
        assertThat(names)
                .startsWith("jigs/H1", "jigs/H1-2")
                .endsWith("jigs/H1-6")
                .hasSize(6);
    }

    @Test
    void aCutJigLosesNothingButTheJointsPlay() {
        PrintPlate whole = Domes.plate(Domes.gapped(3, 45), Domes.TUBE);
        PrintPlate cut = Domes.plate(Domes.gapped(3, 45), SMALL_BED);
        double one = volume(whole, "H2");
        assertThat(volume(cut, "H2")).isBetween(0.985 * one, 0.9995 * one);
    }

    private static double volume(PrintPlate plate, String mark) {
        Jig jig = plate.jigs().stream()
                .filter(j -> j.mark().equals(mark))
                .findFirst()
                .orElseThrow();
        // pieces bear more letters than the whole, on feet of 3 mm
        return Bodies.of(jig, plate).stream()
                .mapToDouble(mesh -> Sound.volume(mesh) - 0.8 * Sound.levelMm2(mesh, 3.8))
                .sum();
    }
}
