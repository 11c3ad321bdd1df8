package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.PatchWay;
import dev.calotte.assembly.Patches;
import dev.calotte.check.RecordedPatches.Join;
import dev.calotte.check.RecordedPatches.Kind;
import dev.calotte.check.RecordedPatches.Patch;
import dev.calotte.check.RecordedPatches.Seam;
import dev.calotte.parts.Parts;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes, base, wall and patches of right records are found right, and of wrong ones wrong. */
class WholeChecksTest {

    private static final Parts PARTS = CheckedDomes.ICOSAHEDRON;
    private static final RecordedDome DOME = Records.dome(PARTS);
    private static final RecordedPatches PATCHES = Numbers.patches(PARTS, Patches.of(PARTS));

    @ParameterizedTest
    @MethodSource("dev.calotte.check.CheckedDomes#all")
    void nothingIsFoundInARightRecord(Parts parts) {
        RecordedDome dome = Records.dome(parts);
        RecordedSize size = Numbers.size(parts.dome());
        assertThat(Found.list(findings -> {
                    SizeCheck.of(dome, size, findings);
                    AccuracyCheck.of(
                            dome, Numbers.accuracy(parts), size.baseRing().size(), findings);
                    BaseCheck.of(dome, size.baseRing(), Numbers.base(parts), findings);
                    for (PatchWay way : PatchWay.values()) {
                        PatchCheck.of(dome, Numbers.patches(parts, way), findings);
                    }
                    if (!size.baseRing().isEmpty()) {
                        RiserCheck.of(dome, Numbers.riser(parts.dome()), size.baseRing(), findings);
                    }
                }))
                .isEmpty();
    }

    @Test
    void aVolumeWithoutWhatWallsCloseIsFound() {
        RecordedSize s = Numbers.size(PARTS.dome());
        RecordedSize other = new RecordedSize(
                s.floorDiameter(),
                s.floorArea(),
                s.volume() - 1e-6,
                s.baseSpread(),
                s.baseRing(),
                s.breakdown(),
                s.frequency(),
                s.triangulation(),
                s.levelHeight());
        assertThat(Found.by(findings -> SizeCheck.of(DOME, other, findings))).containsExactly("DIFFERENT dome.volume");
    }

    @Test
    void aHubThatIsMissingInTheRingIsFound() {
        RecordedSize s = Numbers.size(PARTS.dome());
        RecordedSize other = new RecordedSize(
                s.floorDiameter(),
                s.floorArea(),
                s.volume(),
                s.baseSpread(),
                Found.without(s.baseRing(), 4),
                s.breakdown(),
                s.frequency(),
                s.triangulation(),
                s.levelHeight());
        assertThat(Found.by(findings -> SizeCheck.of(DOME, other, findings)))
                .containsExactly("DIFFERENT dome.baseRing");
    }

    private static RecordedPatches with(List<Kind> kinds, List<Patch> patches, List<Join> joins) {
        return new RecordedPatches(
                PATCHES.way(), PATCHES.exactStars(), kinds, patches, joins, PATCHES.lastSeam(), PATCHES.patchOf());
    }

    private static List<String> found(RecordedPatches patches) {
        return Found.by(findings -> PatchCheck.of(DOME, patches, findings));
    }

    private static RecordedPatches firstKind(UnaryOperator<Kind> change) {
        return with(Found.changed(PATCHES.kinds(), 0, change), PATCHES.patches(), PATCHES.joins());
    }

    private static RecordedPatches firstSeam(UnaryOperator<Seam> change) {
        return firstKind(k ->
                new Kind(k.mark(), k.hand(), k.mirror(), k.count(), k.panels(), Found.changed(k.seams(), 1, change)));
    }

    @Test
    void twoPanelsOfOnePatchInTheOtherOrderAreFound() {
        int last = PATCHES.patches().size() - 1;
        String mark = PATCHES.patches().get(last).mark();
        RecordedPatches swapped = with(
                PATCHES.kinds(),
                Found.changed(PATCHES.patches(), last, p -> {
                    List<Integer> panels =
                            Found.changed(p.panels(), 0, x -> p.panels().get(2));
                    return new Patch(
                            p.mark(),
                            p.kind(),
                            Found.changed(panels, 2, x -> p.panels().get(0)));
                }),
                PATCHES.joins());
        assertThat(found(swapped)).containsExactly("DIFFERENT patches.patches " + mark);
    }

    @Test
    void aSeamThatJoinsOthersIsFound() {
        String place = "patches.kinds " + PATCHES.kinds().get(0).mark();
        assertThat(found(firstSeam(s -> new Seam(s.these(), List.of(99), s.length()))))
                .contains("DIFFERENT " + place + ", seam 2");
        assertThat(found(firstSeam(s -> new Seam(s.these(), List.of(1), s.length()))))
                .contains("MISSING " + place);
        assertThat(found(firstSeam(s -> new Seam(s.these(), s.to(), s.length() + 0.001))))
                .containsExactly("DIFFERENT " + place + ", seam 2");
    }

    @Test
    void aHandOfAPatchThatIsItsOwnMirrorImageIsFound() {
        Kind first = PATCHES.kinds().get(0);
        assertThat(first.hand()).isEqualTo("none");
        assertThat(found(firstKind(k -> new Kind(k.mark(), "left", k.mirror(), k.count(), k.panels(), k.seams()))))
                .containsExactly("DIFFERENT patches.kinds " + first.mark());
    }

    @Test
    void aSeamBetweenPatchesThatIsGoneIsFound() {
        assertThat(found(with(PATCHES.kinds(), PATCHES.patches(), Found.without(PATCHES.joins(), 0))))
                .containsExactly("MISSING patches.joins");
    }
}
