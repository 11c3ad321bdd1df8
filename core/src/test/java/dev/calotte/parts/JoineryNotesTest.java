package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JoineryNotesTest {

    private static Dome dome(int frequency, Keep keep, Size size) {
        return Dome.of(
                DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), size).withKeep(keep));
    }

    private static final Dome THREE = dome(3, new Keep.Rows(5, 9), Size.radius(3000));

    private static List<String> notes(Dome dome, Joinery joinery) {
        return JoineryNotes.of(Parts.of(dome, joinery), UnitSystem.METRIC);
    }

    private static Joinery flat(double edgeMm) {
        return Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 10, edgeMm, OptionalDouble.empty()));
    }

    @Test
    void thereIsNothingToSayOfASimpleFrame() {
        assertThat(notes(THREE, Joinery.gap(45))).isEmpty();
        assertThat(notes(THREE, flat(20))).isEmpty();
        assertThat(notes(THREE, Joinery.gap(30).withHubPlate(HubPlate.of(140, 10, 100))))
                .isEmpty();
    }

    @Test
    void holesOfStrutsAndPlatesThatDoNotMeetAreSaid() {
        HubPlate plate = HubPlate.of(140, 10, 100);
        assertThat(notes(THREE, flat(20).withHubPlate(plate).withHubGaps(HubGaps.all(45))))
                .contains("hub-gap and hole-edge set the holes of the struts on a circle of 130.0 mm, and"
                        + " hub-plate.hole-circle those of the plates on one of 100.0 mm: they do not meet. Change one"
                        + " of them, or leave hub-gap out.");
        HubGaps base = new HubGaps(OptionalDouble.of(31), Map.of(), OptionalDouble.of(30));
        assertThat(notes(THREE, flat(20).withHubPlate(plate).withHubGaps(base)))
                .anyMatch(note -> note.contains("a circle of 102.0 mm"));
        assertThat(notes(THREE, flat(20).withHubPlate(plate).withHubGaps(HubGaps.all(30))))
                .noneMatch(note -> note.contains("do not meet"));
        assertThat(notes(THREE, flat(20).withHubPlate(plate))).noneMatch(note -> note.contains("do not meet"));
    }

    @Test
    void nearKindsAreNamedInTheReadersUnits() {
        Dome four = dome(4, new Keep.Rows(1, 2), new Size(Size.Measure.LONGEST_STRUT, 5 * 304.8));
        assertThat(JoineryNotes.of(Parts.of(four, Joinery.nodeToNode().withCutTolerance(1.2)), UnitSystem.IMPERIAL))
                .containsExactly(
                        "S2 and S3 differ by 1/8\" only (4' 6 3/8\" and 4' 6 1/2\"): keep them apart by colour,"
                                + " or set merge-within.");
        assertThat(notes(THREE, Joinery.nodeToNode().withCutTolerance(10)))
                .containsExactly(
                        "S2 and S3 differ by 26.6 mm only (1210.6 mm and 1237.2 mm): keep them apart by colour,"
                                + " or set merge-within.");
    }

    @Test
    void manyNearKindsAreCounted() {
        List<String> notes = notes(
                dome(8, new Keep.Whole(), Size.radius(3000)),
                Joinery.nodeToNode().withCutTolerance(10));
        int pairs = Parts.of(
                        dome(8, new Keep.Whole(), Size.radius(3000)),
                        Joinery.nodeToNode().withCutTolerance(10))
                .closeKinds()
                .size();
        assertThat(notes).hasSize(4);
        assertThat(notes.get(3))
                .isEqualTo((pairs - 3) + " more pairs of kinds differ by less than three times the cut tolerance.");
    }

    @Test
    void whatMergingCostsIsSaid() {
        assertThat(notes(THREE, Joinery.nodeToNode().withMergeWithin(30)))
                .containsExactly(
                        "Struts that differ by no more than 30.0 mm are one kind: a strut is up to 13.3 mm off its"
                                + " own length.");
    }

    @Test
    void holesNearTheEndsAreSaid() {
        assertThat(notes(THREE, flat(14.9)))
                .containsExactly(
                        "The holes stand 14.9 mm from the ends of the struts, less than one and a half times their"
                                + " diameter (15.0 mm); twice the diameter is common practice.");
        assertThat(notes(THREE, flat(15))).isEmpty();
        assertThat(notes(THREE, Joinery.gap(36).withHubPlate(HubPlate.of(140, 10, 100))))
                .containsExactly(
                        "The holes of the hub plates stand 14.0 mm from the ends of the struts, less than one and a"
                                + " half times their diameter (15.0 mm); twice the diameter is common practice.");
    }

    @Test
    void platesForBentTubesAreSaidToStayFlat() {
        assertThat(notes(THREE, flat(20).withHubPlate(HubPlate.of(140, 10, 100))))
                .containsExactly("Hub plates stay flat: the struts are bent where their flattened ends begin.");
    }

    /** In a 3V the corners are 54.6 to 70.7 degrees wide, so the blade leans by about 54 to 62 degrees. */
    @Test
    void bladesBeyondUsualSawsAreSaid() {
        List<String> notes = notes(THREE, Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95)));
        assertThat(notes).hasSize(1);
        assertThat(notes.get(0))
                .matches(
                        "The saw's blade is tilted by up to 6[0-3]\\.\\d° for the ends of the rails; usual saws stop at 45"
                                + " to 50 degrees, so mind a jig\\.");
    }
}
