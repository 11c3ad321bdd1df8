package dev.calotte.parts;

import dev.calotte.parts.PlateArms.Arm;
import dev.calotte.parts.PlateArms.Slot;
import dev.calotte.parts.PlateBlank.Line;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.Angle;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Whether the holes and slots of a kind of hub have room in a plate of someone's own shape. The edge of a hole keeps the
 * hole's diameter from the outline and from the plate's other holes, as it does from the rim of a disc, and so do slots from
 * those holes; common practice, no source.
 *
 * @param kind the kind of hub
 * @param blank the plate of someone's own shape
 * @param made its arms and slots
 */
record BlankFit(HubKind kind, PlateBlank blank, PlateArms made) {

    /** From the middle of a hole to any line, in diameters. */
    private static final double LEAST_EDGE = 1.5;

    /** What straight sides for arcs may cost, and rounding. */
    private static final double SAME_MM = 0.02;

    /** Refuses the kind with the first thing that has no room. */
    void check() {
        Stream<String> arms =
                IntStream.range(0, made.arms().size()).mapToObj(this::flaw).flatMap(Optional::stream);
        Stream<String> slots = made.slots().stream().map(this::flaw).flatMap(Optional::stream);
        Stream.concat(arms, slots).findFirst().ifPresent(flaw -> {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.hub-plate",
                    flaw,
                    "Draw the plate wider there, change hole-circle or hole, or give such hubs a file of their own, as in"
                            + " outline: { base: half.dxf, 5: five.dxf, other: six.dxf }.");
        });
    }

    private Optional<String> flaw(int number) {
        Arm arm = made.arms().get(number);
        Vector2D hole = at(arm.angleRad(), made.plate().holeCircleMm() / 2);
        String which = " of hub " + kind.mark() + " for its strut " + (number + 1) + ", at "
                + Angle.text(arm.angleRad(), 1) + ", ";
        if (!blank.rim().boundary().holds(hole)) {
            return Optional.of("the hole" + which + "lies outside the outline of " + blank.name() + ".");
        }
        if (made.bendMm().stream().anyMatch(bend -> !blank.rim().boundary().holds(at(arm.angleRad(), bend)))) {
            return Optional.of("the bend line" + which + "lies outside the outline of " + blank.name() + ".");
        }
        double least = LEAST_EDGE * made.plate().holeMm();
        double off = offMm(hole);
        return off >= least - SAME_MM
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "the hole%sis %.1f mm from its middle to a line of %s, and needs %.1f mm.",
                        which,
                        off,
                        blank.name(),
                        least));
    }

    /** How far a place keeps off all lines, 0 in a hole. */
    private double offMm(Vector2D place) {
        double least = blank.rim().boundary().distance(place, place);
        for (Line hole : blank.holes()) {
            least = Math.min(
                    least, hole.boundary().holds(place) ? 0 : hole.boundary().distance(place, place));
        }
        return least;
    }

    private Optional<String> flaw(Slot slot) {
        double least = made.plate().slotMm() / 2 + made.plate().holeMm();
        Vector2D along = at(slot.angleRad(), 1);
        Vector2D from = at(slot.angleRad(), slot.fromMm());
        double length = blank.rim().boundary().crossings(from, along).get(0);
        return blank.holes().stream()
                .filter(hole -> hole.boundary().holds(from)
                        || hole.boundary().distance(from, from.add(length, along)) < least - SAME_MM)
                .findFirst()
                .map(hole -> String.format(
                        Locale.ROOT,
                        "the slot of hub %s at %s comes nearer to a hole of %s than %.1f mm.",
                        kind.mark(),
                        Angle.text(slot.angleRad(), 1),
                        blank.name(),
                        made.plate().holeMm()));
    }

    private static Vector2D at(double angleRad, double out) {
        return new Vector2D(out * StrictMath.cos(angleRad), out * StrictMath.sin(angleRad));
    }
}
