package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Bedded;
import dev.calotte.document.Document;
import dev.calotte.document.Mesh;
import dev.calotte.solid.PrintModels;
import dev.calotte.solid.PrintSpec;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PiecesTest {

    @ParameterizedTest
    @EnumSource(PrintSpec.Shape.class)
    void aModelIsOneClosedBodyOnAFlatBase(PrintSpec.Shape shape) {
        List<Mesh> meshes = Bodies.of(model(shape));
        assertThat(meshes).singleElement().satisfies(Sound::check);
        double base = Sound.facets(meshes.get(0)).stream()
                .filter(f -> f[0].getZ() == 0 && f[1].getZ() == 0 && f[2].getZ() == 0)
                .mapToDouble(f -> Sound.normal(f).getNorm() / 2)
                .sum();
        assertThat(base).isGreaterThan(shape == PrintSpec.Shape.FRAME ? 60 : 300);
    }

    @ParameterizedTest
    @EnumSource(PrintSpec.Shape.class)
    void piecesFitTheRoomAndMakeTheWhole(PrintSpec.Shape shape) {
        Document whole = model(shape);
        List<Mesh> pieces = Bodies.of(new Bedded(whole, 110, 90, 40));
        assertThat(pieces).hasSizeGreaterThan(8).allSatisfy(Sound::check);
        assertThat(pieces).allSatisfy(piece -> {
            assertThat(Sound.most(piece, 0)).isLessThanOrEqualTo(110);
            assertThat(Sound.most(piece, 1)).isLessThanOrEqualTo(90);
            assertThat(Sound.most(piece, 2)).isLessThanOrEqualTo(40);
        });
        double sum = pieces.stream().mapToDouble(Sound::volume).sum();
        double all = Sound.volume(Bodies.of(whole).get(0));
        assertThat(sum).isCloseTo(all, within(1e-5 * all));
    }

    private static Document model(PrintSpec.Shape shape) {
        return PrintModels.of("dome", Domes.halfDome(), new PrintSpec(30, shape, 1.6, 4, Optional.empty()));
    }
}
