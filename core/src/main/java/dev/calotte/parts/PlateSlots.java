package dev.calotte.parts;

import dev.calotte.parts.PlateArms.Arm;
import dev.calotte.parts.PlateArms.Slot;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The slots between the arms of a hub plate, counter-clockwise. */
final class PlateSlots {

    /** So that equal gaps are treated alike where bend lines just meet on the rim. */
    private static final double ROUNDING_MM = 1e-6;

    private final HubKind kind;
    private final HubPlate plate;
    private final PlateRim rim;
    private final List<Slot> slots = new ArrayList<>();

    PlateSlots(HubKind kind, HubPlate plate, PlateRim rim) {
        this.kind = kind;
        this.plate = plate;
        this.rim = rim;
    }

    List<Slot> between(List<Arm> arms, double bendMm) {
        Arm first = arms.get(0);
        Arm last = arms.get(arms.size() - 1);
        boolean shared = first.rightRad() + last.leftRad() >= PlateArms.openRad(kind);
        if (kind.open() && !shared) {
            add(-first.rightRad(), first.rightRad(), bendMm);
        }
        for (Arm arm : arms) {
            add(arm.angleRad() + arm.leftRad(), arm.leftRad(), bendMm);
        }
        check();
        return slots;
    }

    /** Bend lines that do not meet on the plate leave nothing to be slotted. */
    private void add(double angle, double half, double bendMm) {
        double cosine = StrictMath.cos(half);
        if (cosine > 0 && bendMm / cosine < wallEndMm(angle, bendMm / cosine) - ROUNDING_MM) {
            slots.add(new Slot(angle, bendMm / cosine));
        }
    }

    private double wallEndMm(double angle, double fromMm) {
        OptionalDouble end = rim.wallEndMm(angle, fromMm);
        return end.orElseThrow(() -> slotted("leave the outline and come into it again."));
    }

    private void check() {
        double half = plate.slotMm() / 2;
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            Slot next = slots.get((i + 1) % slots.size());
            double apart = next.angleRad() - slot.angleRad() + (i + 1 < slots.size() ? 0 : 2 * Math.PI);
            double meet = half / StrictMath.tan(Math.min(apart, Math.PI) / 2);
            if (slots.size() > 1 && Math.min(slot.fromMm(), next.fromMm()) <= meet) {
                throw slotted("run into one another.");
            }
            if (plate.cutterMm() > 0
                    && slot.fromMm() + half > wallEndMm(slot.angleRad(), slot.fromMm()) - ROUNDING_MM) {
                throw slotted("are too short for round ends.");
            }
        }
    }

    private CalotteException slotted(String what) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "frame.hub-plate",
                String.format(Locale.ROOT, "slots of %.1f mm at hub %s %s", plate.slotMm(), kind.mark(), what),
                plate.blanks().isPresent()
                        ? "Use narrower slots, or draw the outline with nothing hollow between two arms or with all of it."
                        : "Use narrower slots, or a larger disc with a larger hub-gap.");
    }
}
