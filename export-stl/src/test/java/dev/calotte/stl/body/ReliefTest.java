package dev.calotte.stl.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Mesh;
import org.junit.jupiter.api.Test;

class ReliefTest {

    private static final Axis X = Axis.towards(0);

    @Test
    void aBoxWithAPocketAndAHoleHasTheirVolume() {
        Mesh mesh = Relief.empty()
                .cover(X.box(0, 40, 0, 30), Plane.level(10))
                .cover(X.box(5, 20, 5, 25), Plane.level(4))
                .open(X.box(10, 12, 10, 14))
                .mesh("box", "");
        Sound.check(mesh);
        assertThat(Sound.volume(mesh)).isCloseTo(40 * 30 * 10 - 15 * 20 * 6 - 2 * 4 * 4, within(1e-6));
    }

    @Test
    void aRoofHasTheVolumeOfItsPlanes() {
        Mesh mesh =
                Relief.empty().cover(X.box(0, 40, 0, 30), X.slope(5, 0.25, 0)).mesh("roof", "");
        Sound.check(mesh);
        assertThat(Sound.volume(mesh)).isCloseTo(40 * 30 * (5 + 0.25 * 20), within(1e-2));
    }

    @Test
    void topsThatCrossAlongASideMeetInAnUprightBowTie() {
        Mesh mesh = Relief.empty()
                .cover(X.box(0, 40, 0, 10), X.slope(5, 0.25, 0))
                .cover(X.box(0, 40, 10, 20), X.slope(15, -0.25, 0))
                .mesh("crossed", "");
        Sound.check(mesh);
        assertThat(Sound.volume(mesh)).isCloseTo(2 * 40 * 10 * 10, within(1e-2));
    }

    @Test
    void outlinesThatRunAlongEachOtherButForRoundingMakeNoFins() {
        Mesh mesh = Relief.empty()
                .cover(Axis.from(0.1, 0.2, 0.3).box(0, 50, 0, 10), Plane.level(10))
                .cover(Axis.from(0.1, 0.2, 0.3).box(0, 20.123, 0, 10), Plane.level(10))
                .cover(Axis.from(0.1, 0.2, 0.3).box(7.77, 31.3, -10, 1e-5), Plane.level(20))
                .mesh("near", "");
        Sound.check(mesh);
        assertThat(Sound.volume(mesh)).isCloseTo(50 * 10 * 10 + (31.3 - 7.77) * 10 * 20, within(0.5));
    }

    @Test
    void coordinatesAreThoseOfSinglePrecision() {
        Mesh mesh = Relief.empty()
                .cover(Axis.from(3, 4, 0.7).box(-10.1, 333.3, -7.7, 8.8), X.slope(20, 0.01, 0.02))
                .mesh("grid", "");
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            for (int axis = 0; axis < 3; axis++) {
                assertThat((double) (float) mesh.at(vertex, axis)).isEqualTo(mesh.at(vertex, axis));
            }
        }
    }

    @Test
    void whatIsNothingOrTouchesItselfInALineOnlyIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Relief.empty()
                        .cover(X.box(0, 1, 0, 1), Plane.level(1))
                        .only(X.box(5, 6, 0, 1))
                        .mesh("gone", ""))
                .withMessage("gone has no area");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Relief.empty()
                        .cover(X.box(0, 10, 0, 10), Plane.level(5))
                        .cover(X.box(10, 20, 10, 20), Plane.level(5))
                        .mesh("corner", ""));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Relief.empty()
                        .cover(X.box(0, 10, 0, 10), Plane.level(0))
                        .mesh("flat", ""))
                .withMessageContaining("nothing stands over the bed");
    }

    @Test
    void lettersAreRaisedAndUnknownOnesRefused() {
        Relief plate = Relief.empty().cover(X.box(0, 60, 0, 10), Plane.level(3));
        Letters letters = new Letters(7, Plane.level(3.8));
        Mesh mesh = letters.write(plate, "H12L", X.moved(1, 1)).mesh("letters", "");
        Sound.check(mesh);
        assertThat(Sound.volume(mesh)).isBetween(1800 + 40.0, 1800 + 100.0);
        assertThat(Sound.most(mesh, 2)).isCloseTo(3.8, within(1e-3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> letters.write(plate, "ü", X))
                .withMessageContaining("ü");
    }
}
