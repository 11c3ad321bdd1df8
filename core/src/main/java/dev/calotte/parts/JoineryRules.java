package dev.calotte.parts;

import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What of a joinery does not go together, whatever the dome. */
final class JoineryRules {

    private static final String GAP = "frame.hub-gap";
    private static final String ENDS = "frame.ends";
    private static final String PLATE = "frame.hub-plate";
    /** Lengths of the brief are texts, so only the rounding of sums may come between two that agree. */
    private static final double SAME_MM = 1e-6;

    private final Joinery joinery;
    private final List<Problem> problems = new ArrayList<>();

    JoineryRules(Joinery joinery) {
        this.joinery = joinery;
    }

    List<Problem> problems() {
        if (joinery.ends() instanceof Ends.Flattened flat) {
            checkFlat(flat);
        }
        if (joinery.ends() instanceof Ends.Mitred) {
            checkRails();
        } else {
            joinery.hubPlate().ifPresent(this::checkPlate);
        }
        return List.copyOf(problems);
    }

    private void checkFlat(Ends.Flattened flat) {
        if (flat.flattenMm() <= flat.holeEdgeMm()) {
            add(
                    Code.IMPOSSIBLE,
                    ENDS,
                    mm(
                            "the hole stands %s from the tube's end, and only %s are flat.",
                            flat.holeEdgeMm(), flat.flattenMm()),
                    mm("Flatten more than %s.", flat.holeEdgeMm()));
        }
        if (flat.holeEdgeMm() <= flat.holeMm() / 2) {
            add(
                    Code.IMPOSSIBLE,
                    ENDS,
                    mm("a hole of %s breaks out %s from the tube's end.", flat.holeMm(), flat.holeEdgeMm()),
                    mm("Set hole-edge to %s, twice the hole.", 2 * flat.holeMm()));
        }
    }

    private void checkRails() {
        if (joinery.hubGaps().isPresent()) {
            add(
                    Code.CONFLICT,
                    GAP,
                    "mitred rails meet on the hub's axis, so there is no gap.",
                    "Leave hub-gap out, or choose other ends.");
        }
        if (joinery.hubPlate().isPresent()) {
            add(
                    Code.CONFLICT,
                    PLATE,
                    "frames of mitred rails are bolted to each other, not to plates.",
                    "Leave hub-plate out, or choose other ends.");
        }
    }

    private void checkPlate(HubPlate plate) {
        double needed = plate.holeCircleMm() + 3 * plate.holeMm();
        if (plate.blanks().isEmpty() && plate.diameterMm() < needed - SAME_MM) {
            add(
                    Code.IMPOSSIBLE,
                    PLATE,
                    mm(
                            "holes of %s on a circle of %s stand nearer the rim of a disc of %s than their diameter.",
                            plate.holeMm(), plate.holeCircleMm(), plate.diameterMm()),
                    mm("Use a disc of %s or more, or a smaller hole-circle.", needed));
        }
        if (!(joinery.ends() instanceof Ends.Flattened)) {
            checkSlot(plate);
            joinery.gapsMm()
                    .filter(gap -> gap >= plate.holeCircleMm() / 2)
                    .findFirst()
                    .ifPresent(gap -> add(
                            Code.CONFLICT,
                            PLATE,
                            mm("struts end %s from the axis, the holes stand at %s.", gap, plate.holeCircleMm() / 2),
                            mm("Use a hole-circle of more than %s, or a smaller hub-gap.", 2 * gap)));
        }
    }

    private void checkSlot(HubPlate plate) {
        if (plate.slotMm() < plate.cutterMm() - SAME_MM) {
            add(
                    Code.IMPOSSIBLE,
                    PLATE,
                    mm("a cutter of %s does not get into slots of %s.", plate.cutterMm(), plate.slotMm()),
                    mm("Set slot to %s or more.", HubPlate.usualSlotMm(plate.cutterMm())));
        }
    }

    private void add(Code code, String where, String what, String mend) {
        problems.add(new Problem(code, where, what, mend));
    }

    private static String mm(String text, double... values) {
        String told = text;
        for (double value : values) {
            told = told.replaceFirst("%s", String.format(Locale.ROOT, "%.1f mm", value));
        }
        return told;
    }
}
