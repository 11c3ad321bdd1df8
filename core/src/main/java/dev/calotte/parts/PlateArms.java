package dev.calotte.parts;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The plate of one kind of hub, seen from outside: an arm to each strut, and between the arms slots that let each be
 * bent by itself. Angles are counter-clockwise from the first strut's arm. The bend line of an arm is square to it, and
 * on the bisector between two arms their bend lines meet; the slot runs from there to the rim, unless the rim of a plate of
 * someone's own shape is hollow there. Where the struts' own ends are flattened and bent, the plate stays flat and has no
 * slots.
 *
 * @param plate disc, holes and slot width
 * @param blank the plate of someone's own shape that takes the place of the disc
 * @param bendMm from the centre to the bend lines; absent where the plate stays flat
 * @param arms counter-clockwise from the first strut
 * @param slots counter-clockwise; they do not touch one another
 */
public record PlateArms(
        HubPlate plate, Optional<PlateBlank> blank, OptionalDouble bendMm, List<Arm> arms, List<Slot> slots) {

    /**
     * An arm.
     *
     * @param angleRad where it points
     * @param rightRad from its axis to its clockwise edge, half the gap there
     * @param leftRad the same counter-clockwise
     * @param bendRad how far it is bent towards the inside of the dome
     */
    public record Arm(double angleRad, double rightRad, double leftRad, double bendRad) {}

    /**
     * A slot.
     *
     * @param angleRad where it points
     * @param fromMm how far from the centre it begins; it ends at the rim
     */
    public record Slot(double angleRad, double fromMm) {}

    /**
     * Copies the lists.
     *
     * @param plate disc, holes and slot width
     * @param blank the plate that takes the place of the disc
     * @param bendMm from the centre to the bend lines
     * @param arms its arms
     * @param slots its slots
     */
    public PlateArms {
        arms = List.copyOf(arms);
        slots = List.copyOf(slots);
    }

    static PlateArms of(HubKind kind, Joinery joinery, HubPlate plate) {
        OptionalDouble bend = bendMm(kind, joinery, plate);
        Optional<PlateBlank> blank = plate.blanks().map(blanks -> blank(kind, blanks));
        List<Arm> arms = arms(kind, bend.isPresent());
        arms.forEach(arm -> checkWidth(kind, plate, arm, bend.isPresent() ? plate.slotMm() : 0));
        PlateSlots slots = new PlateSlots(kind, plate, PlateRim.of(plate, blank));
        PlateArms made = new PlateArms(
                plate, blank, bend, arms, bend.isPresent() ? slots.between(arms, bend.getAsDouble()) : List.of());
        blank.ifPresent(own -> new BlankFit(kind, own, made).check());
        return made;
    }

    private static OptionalDouble bendMm(HubKind kind, Joinery joinery, HubPlate plate) {
        if (joinery.ends() instanceof Ends.Flattened) {
            return OptionalDouble.empty();
        }
        double gap = joinery.endMm(kind.open(), kind.struts().size());
        return OptionalDouble.of(gap > 0 ? gap : plate.holeCircleMm() / 4);
    }

    private static List<Arm> arms(HubKind kind, boolean bent) {
        List<Double> gaps = kind.gapsRad();
        double beside = openRad(kind) / 2;
        int last = kind.struts().size() - 1;
        List<Arm> arms = new ArrayList<>();
        double angle = 0;
        for (int i = 0; i <= last; i++) {
            double right =
                    i > 0 ? gaps.get(i - 1) / 2 : kind.open() ? Math.min(gaps.get(0) / 2, beside) : gaps.get(last) / 2;
            double left = i < gaps.size() ? gaps.get(i) / 2 : Math.min(gaps.get(i - 1) / 2, beside);
            arms.add(new Arm(angle, right, left, bent ? kind.axialAnglesRad().get(i) : 0));
            angle += i < gaps.size() ? gaps.get(i) : 0;
        }
        return arms;
    }

    /** What is left of a full turn on the open side of a base hub. */
    static double openRad(HubKind kind) {
        return 2 * Math.PI
                - kind.gapsRad().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static void checkWidth(HubKind kind, HubPlate plate, Arm arm, double slotMm) {
        double half = Math.min(Math.min(arm.rightRad, arm.leftRad), Math.PI / 2);
        double width = plate.holeCircleMm() * StrictMath.sin(half) - slotMm;
        if (width < 2 * plate.holeMm()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.hub-plate",
                    String.format(
                            Locale.ROOT,
                            "an arm of hub %s is %.1f mm wide at its hole, less than two holes of %.1f mm.",
                            kind.mark(),
                            width,
                            plate.holeMm()),
                    "Use a larger hole-circle and a larger disc, or smaller holes.");
        }
    }

    private static PlateBlank blank(HubKind kind, ByHub<PlateBlank> blanks) {
        int struts = kind.struts().size();
        return blanks.of(kind.open(), struts)
                .orElseThrow(() -> new CalotteException(
                        Code.MISSING,
                        "frame.hub-plate",
                        "no outline is given for " + ByHub.which(kind.open(), struts) + ".",
                        "Add " + ByHub.key(kind.open(), struts) + ": or other: with a file to outline."));
    }
}
