package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AssemblySpecTest {

    private static Parts parts(int frequency, Keep keep) {
        return Parts.of(
                Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000))
                        .withKeep(keep)),
                Joinery.nodeToNode());
    }

    @ParameterizedTest
    @EnumSource(PatchWay.class)
    void whoAsksForAWayGetsIt(PatchWay way) {
        Parts parts = parts(3, new Keep.Rows(5, 9));
        Patches patches = new AssemblySpec(Optional.of(way), Raise.BASE).patches(parts);
        assertThat(patches.way()).isEqualTo(way);
        assertThat(patches.kinds()).isEqualTo(Patches.of(parts, way).kinds());
    }

    @Test
    void whoAsksForNoneGetsTheBest() {
        Parts parts = parts(4, new Keep.Rows(1, 2));
        assertThat(AssemblySpec.USUAL.patches(parts).kinds())
                .isEqualTo(Patches.of(parts).kinds());
        assertThat(AssemblySpec.USUAL.raise()).isEqualTo(Raise.BASE);
    }

    /** Whole stars cover a class I icosahedron exactly where its frequency is a multiple of three. */
    @Test
    void starsThatDoNotCoverTheDomeAreRefusedWithWhatDoes() {
        Parts parts = parts(4, new Keep.Rows(1, 2));
        int sectors = Patches.of(parts, PatchWay.SECTORS).kinds().size();
        assertThatThrownBy(() -> new AssemblySpec(Optional.of(PatchWay.STARS), Raise.BASE).patches(parts))
                .isInstanceOfSatisfying(
                        CalotteException.class,
                        e -> assertThat(e.problems()).singleElement().satisfies(problem -> {
                            assertThat(problem.code()).isEqualTo(Code.IMPOSSIBLE);
                            assertThat(problem.where()).isEqualTo("assembly.patches");
                            assertThat(problem.mend())
                                    .startsWith("Write sectors (" + sectors + " kind")
                                    .contains("rows (6 kinds of patches)");
                        }));
    }
}
