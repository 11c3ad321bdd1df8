package dev.calotte.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.PatchKind.Seam;
import dev.calotte.assembly.Patches.Join;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Hand;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PatchesTest {

    private static Parts parts(DomeSpec spec) {
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    private static DomeSpec spec(int b, int c) {
        return DomeSpec.of(Solid.ICOSAHEDRON, new Breakdown(b, c), Size.radius(3000));
    }

    /**
     * Where stars cover a whole sphere, every corner of the solid is a centre (five panels cannot alternate round it),
     * so there are twelve stars of five panels and (20 T − 60) / 6 of six. Own derivation.
     */
    @ParameterizedTest
    @CsvSource({"3, 0", "6, 0", "9, 0", "1, 1", "2, 2", "3, 3", "4, 1", "5, 2"})
    void starsCoverTheSphereExactlyWhereTheyCan(int b, int c) {
        Patches patches = Patches.of(parts(spec(b, c)));
        assertThat(patches.areExactStars()).isTrue();
        assertThat(patches.way()).isEqualTo(PatchWay.STARS);
        int t = b * b + b * c + c * c;
        assertThat(patches.patches()).filteredOn(p -> p.panels().size() == 5).hasSize(12);
        assertThat(patches.patches()).filteredOn(p -> p.panels().size() == 6).hasSize((20 * t - 60) / 6);
        assertThat(patches.patches()).allMatch(p -> p.panels().size() >= 5);
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0", "4, 0", "5, 0", "8, 0", "2, 1", "3, 1", "3, 2"})
    void starsDoNotCoverTheSphereWhereTheyCannot(int b, int c) {
        assertThat(Patches.of(parts(spec(b, c))).areExactStars()).isFalse();
    }

    /**
     * Five of nine rows of a 3V, counted by hand: stars of five round the crown and the five upper corners; stars of six
     * round the middles of the five faces at the crown and of the five below that point down; and of the stars round
     * the middles of the five faces that point up the upper three panels, the base ring running through their hubs.
     */
    @Test
    void fiveNinthsOfA3vAreStarsByHand() {
        Patches patches = Patches.of(parts(spec(3, 0).withKeep(new Keep.Rows(5, 9))));
        assertThat(patches.areExactStars()).isTrue();
        assertThat(patches.kinds())
                .extracting(PatchKind::mark, PatchKind::count, PatchKind::panels)
                .containsExactly(
                        tuple("A1", 6, Collections.nCopies(5, "P1")),
                        tuple("A2", 10, Collections.nCopies(6, "P2")),
                        tuple("A3", 5, Collections.nCopies(3, "P2")));
        assertThat(patches.kinds()).extracting(kind -> kind.seams().size()).containsExactly(5, 6, 2);
    }

    @ParameterizedTest
    @EnumSource(PatchWay.class)
    void everyPanelBelongsToOnePatchInEveryWay(PatchWay way) {
        for (Parts parts : someDomes()) {
            Patches patches = Patches.of(parts, way);
            List<Integer> panels = patches.patches().stream()
                    .flatMap(p -> p.panels().stream())
                    .map(Panel::index)
                    .sorted()
                    .toList();
            assertThat(panels).hasSize(parts.dome().panels().size()).isEqualTo(List.copyOf(new TreeSet<>(panels)));
            for (Panel panel : parts.dome().panels()) {
                assertThat(patches.of(panel).panels()).contains(panel);
            }
        }
    }

    /** What is joined inside patches and between them is every strut with two panels, once. */
    @ParameterizedTest
    @EnumSource(PatchWay.class)
    void seamsAddUpToAllInnerStruts(PatchWay way) {
        for (Parts parts : someDomes()) {
            Patches patches = Patches.of(parts, way);
            double inside = patches.kinds().stream()
                    .mapToDouble(k -> k.count() * k.seamsMm())
                    .sum();
            double between =
                    patches.joins().stream().mapToDouble(Join::lengthMm).sum();
            double all = parts.dome().struts().stream()
                    .filter(s -> s.dihedralRad().isPresent())
                    .mapToDouble(Strut::lengthMm)
                    .sum();
            assertThat(inside + between).isCloseTo(all, within(1e-9 * all));
        }
    }

    /** Places in the order of joining mean the same panel in every patch of a kind. */
    @ParameterizedTest
    @EnumSource(PatchWay.class)
    void patchesOfAKindAreJoinedAlike(PatchWay way) {
        for (Parts parts : someDomes()) {
            Patches patches = Patches.of(parts, way);
            PanelNet net = new PanelNet(parts.dome());
            for (Patch patch : patches.patches()) {
                assertThat(patch.panels())
                        .extracting(p -> parts.kindOf(p).mark())
                        .containsExactlyElementsOf(patch.kind().panels());
                for (Seam seam : patch.kind().seams()) {
                    assertThat(shared(net, parts, patch, seam)).isCloseTo(seam.lengthMm(), within(1e-6));
                }
            }
        }
    }

    private static double shared(PanelNet net, Parts parts, Patch patch, Seam seam) {
        double sum = 0;
        for (int these : seam.these()) {
            int panel = patch.panels().get(these - 1).index();
            for (int side = 3 * panel; side < 3 * panel + 3; side++) {
                int there = net.across(side);
                if (there != PanelNet.NONE
                        && seam.to().stream()
                                .anyMatch(to -> patch.panels().get(to - 1).index() == there / 3)) {
                    sum += parts.dome().struts().get(net.strut(side)).lengthMm();
                }
            }
        }
        return sum;
    }

    /** Each patch but the first is joined to one that stands, so that the work never falls into pieces. */
    @Test
    void everyPatchIsJoinedToWhatStands() {
        Patches patches = Patches.of(parts(spec(4, 0).withKeep(new Keep.Rows(1, 2))));
        List<String> standing = new ArrayList<>(List.of(patches.patches().get(0).mark()));
        for (Join join : patches.joins()) {
            assertThat(standing).contains(join.to());
            if (!standing.contains(join.patch())) {
                standing.add(join.patch());
            }
        }
        assertThat(standing).hasSize(patches.patches().size());
    }

    /** A 4V has no exact stars; its five sectors are one kind, and the last seam runs from the crown to the base. */
    @Test
    void halfA4vIsSewnFromFiveEqualSectors() {
        Parts parts = parts(spec(4, 0).withKeep(new Keep.Rows(1, 2)));
        Patches patches = Patches.of(parts);
        assertThat(patches.way()).isEqualTo(PatchWay.SECTORS);
        assertThat(patches.kinds()).hasSize(1);
        assertThat(patches.kinds().get(0).count()).isEqualTo(5);
        assertThat(patches.joins()).hasSize(5);
        assertThat(patches.joins())
                .extracting(Join::lengthMm)
                .allSatisfy(mm -> assertThat(mm).isCloseTo(patches.lastSeamMm(), within(1e-6)));
    }

    /** A class III sphere has no mirror images; a class I sphere holds the mirror image of every star off its mirror planes. */
    @Test
    void mirroredPatchesAreTwins() {
        Patches chiral = Patches.of(parts(spec(4, 1)));
        assertThat(chiral.kinds()).allMatch(k -> k.twin().isEmpty());
        Patches six = Patches.of(parts(spec(15, 0)));
        assertThat(six.kinds()).anyMatch(k -> k.hand() == Hand.LEFT);
        for (PatchKind kind : six.kinds()) {
            if (kind.hand() != Hand.NONE) {
                PatchKind twin = six.kinds().stream()
                        .filter(k -> kind.twin().filter(k.mark()::equals).isPresent())
                        .findFirst()
                        .orElseThrow();
                assertThat(twin.count()).isEqualTo(kind.count());
                assertThat(twin.panels().stream().map(PatchesTest::mirrored).toList())
                        .isEqualTo(kind.panels());
            }
        }
    }

    private static String mirrored(String mark) {
        return mark.endsWith("L") ? mark.replace('L', 'R') : mark.endsWith("R") ? mark.replace('R', 'L') : mark;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void rowsOfAWholeRingCloseWithASeam(int row) {
        Patches patches = Patches.of(parts(spec(3, 0).withKeep(new Keep.Rows(5, 9))), PatchWay.ROWS);
        Patch patch = patches.patches().get(row - 1);
        assertThat(patch.panels()).allMatch(p -> p.row() == row);
        assertThat(patch.panels()).hasSize(5 * (2 * row - 1));
        assertThat(patch.kind().seams()).hasSize(patch.panels().size());
    }

    private static List<Parts> someDomes() {
        List<Parts> domes = new ArrayList<>();
        domes.add(parts(spec(1, 0)));
        domes.add(parts(spec(3, 0).withKeep(new Keep.Rows(5, 9))));
        domes.add(parts(spec(5, 0).withKeep(new Keep.Rows(7, 15))));
        domes.add(parts(spec(3, 1)));
        domes.add(parts(spec(4, 0).withUp(Up.EDGE)));
        domes.add(parts(spec(4, 0).withUp(Up.FACE).withKeep(new Keep.AboveHeight(0))));
        domes.add(parts(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(4), Size.radius(2000))));
        domes.add(parts(DomeSpec.of(Solid.TETRAHEDRON, new Breakdown(3, 3), Size.radius(2000))));
        Dome holed = Dome.of(spec(3, 0).withKeep(new Keep.Rows(5, 9)));
        Random random = new Random(7);
        for (int i = 0; i < 5; i++) {
            List<Integer> gone = List.of(60 + random.nextInt(40), 20 + random.nextInt(20));
            domes.add(Parts.of(holed.withOpenings(List.of(new Opening("door", gone, true))), Joinery.nodeToNode()));
        }
        return domes;
    }
}
