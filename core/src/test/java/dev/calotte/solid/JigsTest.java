package dev.calotte.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.document.StrutSection;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Sheeting;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JigsTest {

    private static final JigSpec TUBE = spec(StrutSection.round(23.4), 2.4, Bed.USUAL);
    private static final Joinery GAP = Joinery.gap(45);
    private static final Joinery FLAT =
            Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 8.5, 20, OptionalDouble.of(1.25)));

    private static JigSpec spec(StrutSection strut, double wall, Bed bed) {
        return new JigSpec(Optional.of(strut), 0.3, wall, bed, Optional.empty());
    }

    private static Parts parts(Joinery joinery) {
        return Parts.of(
                Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000))
                        .withKeep(new Keep.Rows(5, 9))),
                joinery);
    }

    private static List<String> marks(Joinery joinery, Cover... covers) {
        Parts parts = parts(joinery);
        List<Patterns> patterns =
                List.of(covers).stream().map(cover -> Patterns.of(parts, cover)).toList();
        return Jigs.of("dome", parts, patterns, TUBE).jigs().stream()
                .map(Jig::mark)
                .toList();
    }

    private static List<Problem> problems(Joinery joinery, JigSpec spec) {
        Parts parts = parts(joinery);
        try {
            Jigs.of("dome", parts, List.of(), spec);
        } catch (CalotteException e) {
            return e.problems();
        }
        return List.of();
    }

    @Test
    void everyKindOfHubHasAJigAndItsStrutsAnArmEach() {
        Parts parts = parts(GAP);
        PrintPlate plate = Jigs.of("dome", parts, List.of(), TUBE);
        for (HubKind kind : parts.hubKinds()) {
            Jig.Cradle jig = (Jig.Cradle) plate.jigs().get(parts.hubKinds().indexOf(kind));
            assertThat(jig.mark()).isEqualTo(kind.mark());
            assertThat(jig.arms()).extracting(Jig.Arm::mark).isEqualTo(kind.strutMarks());
            assertThat(jig.endMm()).isEqualTo(45);
        }
    }

    @Test
    void armsShareTheWholeRoundUnlessItIsOpen() {
        for (HubKind kind : parts(GAP).hubKinds()) {
            double own = HubArms.of(kind).stream()
                    .mapToDouble(arm -> arm.leftRad() + arm.rightRad())
                    .sum();
            assertThat(own).isCloseTo(kind.open() ? Math.min(own, 2 * Math.PI) : 2 * Math.PI, within(1e-9));
        }
    }

    /** Two square corners on a bisector, 30 degrees from either axis: 10 / tan 30, and half a wall of 0.8 / sin 30. */
    @Test
    void neighboursAreApartWhereAWallIsLeftBetweenThem() {
        double side = Math.PI / 6;
        List<Jig.Arm> arms = List.of(new Jig.Arm("S1", 0, side, side, 0.2));
        assertThat(HubArms.clearMm(arms, 10)).isCloseTo(10 * Math.sqrt(3) + 0.8, within(1e-9));
    }

    @Test
    void onlyWhatTheFrameNeedsIsMade() {
        assertThat(marks(GAP)).containsExactly("H1L", "H1R", "H2", "H3", "H4", "H5", "fit");
        assertThat(marks(GAP.withHubPlate(HubPlate.of(140, 10, 100))))
                .contains("bend-10.0")
                .doesNotContain("drill");
        assertThat(marks(FLAT)).contains("H1L", "bend-10.0", "bend-11.6", "bend-11.9", "drill", "fit");
        assertThat(marks(Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95))))
                .anyMatch(mark -> mark.startsWith("mitre-start"))
                .anyMatch(mark -> mark.startsWith("saddle-16"))
                .noneMatch(mark -> mark.startsWith("H") || mark.equals("fit"));
    }

    /** The dihedrals of a 3V are 165.54, 165.57, 166.42, 168.64 and so on; see the table of angles. */
    @Test
    void bevelledCoversGetGaugesOnePerTenthOfADegree() {
        Cover bevelled = Cover.of("boards").with(new Sheeting(0, 12, true));
        assertThat(marks(GAP, bevelled)).contains("bevel-82.8", "saddle-165.5", "saddle-165.6");
        assertThat(marks(GAP, Cover.of("cloth"))).noneMatch(mark -> mark.startsWith("bevel"));
        assertThat(marks(GAP, bevelled)).doesNotHaveDuplicates();
    }

    @Test
    void strutsThatRunIntoEachOtherAreRefusedWithAGapThatMendsIt() {
        List<Problem> problems = problems(Joinery.gap(15), TUBE);
        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.where()).isEqualTo("jigs.strut");
            assertThat(problem.what()).contains("run into each other at hub");
            assertThat(problem.mend()).startsWith("Write frame.hub-gap: ");
        });
        double mend = Double.parseDouble(problems.get(0).mend().replaceAll("^[^0-9]*([0-9.]+) mm.*", "$1"));
        assertThat(problems(Joinery.gap(mend), TUBE)).isEmpty();
        assertThat(problems(Joinery.gap(mend - 4), TUBE)).isNotEmpty();
    }

    @Test
    void whatCannotBePrintedIsRefusedAllAtOnce() {
        JigSpec thin = spec(StrutSection.round(1.5), 0.5, new Bed(60, 200, 200));
        assertThat(problems(GAP, thin))
                .extracting(Problem::where)
                .containsExactly("jigs.wall", "jigs.strut", "jigs.bed");
        assertThat(problems(GAP, new JigSpec(TUBE.strut(), 3, 2.4, Bed.USUAL, Optional.empty())))
                .extracting(Problem::where)
                .containsExactly("jigs.clearance");
    }

    @Test
    void aFrameThatNeedsTheSectionOfItsStrutsAsksForIt() {
        JigSpec without = new JigSpec(Optional.empty(), 0.3, 2.4, Bed.USUAL, Optional.empty());
        assertThat(problems(GAP, without)).extracting(Problem::where).containsExactly("jigs.strut");
        assertThat(problems(Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95)), without))
                .isEmpty();
    }

    @Test
    void aBedThatTakesNoPieceIsNamed() {
        assertThat(problems(Joinery.gap(200), spec(StrutSection.round(23.4), 2.4, new Bed(150, 150, 200))))
                .extracting(Problem::where)
                .containsExactly("jigs.bed");
        assertThat(problems(Joinery.gap(100), spec(StrutSection.rectangle(45, 95), 2.4, new Bed(300, 300, 100))))
                .extracting(Problem::what)
                .singleElement()
                .asString()
                .contains("mm high");
    }

    @Test
    void strutsTooShortToHoldAreRefused() {
        Parts tiny =
                Parts.of(Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(300))), Joinery.gap(40));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> Jigs.of("dome", tiny, List.of(), TUBE))
                .withMessageContaining("too short to be held");
    }

    @Test
    void socketsAreCountedAndTheirDowelsTold() {
        JigSpec spec = new JigSpec(
                TUBE.strut(), 0.3, 1.6, Bed.USUAL, Optional.of(new JigSpec.Sockets(StrutSection.round(6), 12, 10)));
        Parts parts = parts(GAP);
        List<Jig.Socket> sockets = Jigs.of("dome", parts, List.of(), spec).jigs().stream()
                .filter(Jig.Socket.class::isInstance)
                .map(Jig.Socket.class::cast)
                .toList();
        assertThat(sockets.stream().mapToInt(Jig.Socket::count).sum())
                .isEqualTo(parts.dome().hubs().size());
        double end = sockets.get(0).endMm();
        double longest = parts.strutKind(3).lengthMm() / 10 - 2 * end;
        assertThat(sockets).allSatisfy(socket -> assertThat(socket.endMm()).isEqualTo(end));
        assertThat(Jigs.notes(parts, spec))
                .singleElement()
                .asString()
                .contains("not structural")
                .contains("S3 " + JigSpec.text(longest));
        assertThat(Jigs.notes(parts, TUBE)).isEmpty();
    }

    @Test
    void socketsThatWouldTouchAreRefused() {
        JigSpec spec = new JigSpec(
                TUBE.strut(), 0.3, 1.6, Bed.USUAL, Optional.of(new JigSpec.Sockets(StrutSection.round(6), 12, 40)));
        assertThat(problems(GAP, spec)).extracting(Problem::where).containsExactly("jigs.sockets");
    }

    @Test
    void theTestOfTheFitStandsRoundTheClearance() {
        PrintPlate plate = Jigs.of("dome", parts(GAP), List.of(), TUBE);
        Jig.Fit fit = (Jig.Fit) plate.jigs().get(plate.jigs().size() - 1);
        assertThat(fit.clearancesMm()).containsExactly(0.1, 0.2, 0.3, 0.4, 0.5);
    }
}
