package dev.calotte.model;

import dev.calotte.parts.HubKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import java.util.List;
import java.util.stream.Stream;

/**
 * How struts and discs hook into each other, the same at every hub. A disc is square to its hub's axis, its middle plane
 * goes through the hub's point, and every strut stands in a plane through the axis. Along the line where the two planes
 * meet, both are slotted halfway: the disc from its rim to the floor of its slot, the strut from its end to the floor of
 * its notch. The floors lie at one distance from the axis and stop each other there; this puts the hub's point where the
 * dome has it.
 *
 * @param endMm from the axis to the end of a strut, so that neighbours do not touch
 * @param floorMm from the axis to the floors of slots and notches
 * @param rimMm from the axis to the rim of the disc
 * @param slotMm how wide slots and notches are
 * @param stripMm how wide struts are
 */
record Joint(double endMm, double floorMm, double rimMm, double slotMm, double stripMm) {

    /** Between the ends of two struts at a hub. */
    private static final double PLAY = 0.25;

    /** What stays of a strut on either side of a notch, and of a disc between two slots, at least. */
    private static final double LEAST_PRONG = 2;

    private static final double LEAST_NECK = 2.5;
    private static final double LEAST_LAP = 3;

    /** Leaves room for legible marks inside the slots. */
    private static final double LEAST_FLOOR = 5.6;

    private static final double NARROWEST_NECK = 0.8;
    private static final double PRONG = 0.7;

    static Joint of(Parts parts, ModelSpec spec) {
        Slots slots = new Slots(spec.board(), narrowestGapRad(parts) / 2);
        double lap = slots.lapMm();
        double floor = slots.floorMm();
        slots.check(floor, floor - lap);
        double steepest = parts.strutKinds().stream()
                .mapToDouble(StrutKind::axialAngleRad)
                .max()
                .orElseThrow();
        double prong = Math.max(PRONG * spec.board().thicknessMm(), LEAST_PRONG);
        double slot = spec.board().slotMm();
        double strip = slot + 2 * prong + lap * StrictMath.sin(steepest);
        Joint joint = new Joint(floor - lap, floor, floor + lap, slot, strip);
        joint.checkRoom(parts, spec);
        return joint;
    }

    /**
     * The slots of a disc.
     *
     * @param board what it is cut from
     * @param halfRad half the angle between the two slots that are nearest to each other
     */
    private record Slots(Board board, double halfRad) {

        /** Half of what disc and strut have in common; at a given disc as much as it leaves. */
        double lapMm() {
            double usual = Math.max(board.thicknessMm(), LEAST_LAP);
            return board.discMm().isPresent()
                    ? Math.min(usual, (board.discMm().getAsDouble() / 2 - endMm()) / 2)
                    : usual;
        }

        double floorMm() {
            return board.discMm().isPresent()
                    ? board.discMm().getAsDouble() / 2 - lapMm()
                    : Math.max(
                            Math.max(floorMm(Math.max(board.thicknessMm(), LEAST_NECK)), LEAST_FLOOR),
                            endMm() + lapMm());
        }

        /** How near the axis struts may end. */
        private double endMm() {
            return halfRad < StrictMath.PI / 2 ? board.thicknessMm() / 2 / StrictMath.tan(halfRad) + PLAY : PLAY;
        }

        /** How far from the axis floors must be for necks so wide between them. */
        private double floorMm(double neckMm) {
            return halfRad < StrictMath.PI / 2
                    ? (neckMm + board.slotMm() * StrictMath.cos(halfRad)) / 2 / StrictMath.sin(halfRad)
                    : 0;
        }

        void check(double floor, double end) {
            double neck = floorMm(Math.max(NARROWEST_NECK, board.thicknessMm() / 2));
            double lap = Math.max(board.thicknessMm() / 2, 1);
            double least = Math.max(neck, endMm() + lap);
            if (floor < least || floor - end < lap) {
                throw new CalotteException(
                        Code.IMPOSSIBLE,
                        "model.disc",
                        "on a disc of " + NumberText.trimmed(board.discMm().orElse(0), 2) + " mm slots for a board of "
                                + NumberText.trimmed(board.thicknessMm(), 2) + " mm run into each other at the centre.",
                        "Use a disc of " + NumberText.trimmed(Math.ceil(leastDiscMm(neck)), 1)
                                + " mm or more, a thinner board, or leave the key out.");
            }
        }

        /** The lap grows with the disc until it is as usual. */
        private double leastDiscMm(double neck) {
            double usual = Math.max(board.thicknessMm(), LEAST_LAP);
            double byLap = 2 * endMm() + 4 * Math.max(board.thicknessMm() / 2, 1);
            double byNeck = Math.min(2 * (neck + usual), 4 * neck - 2 * endMm());
            return Math.max(byLap, byNeck);
        }
    }

    /** The smallest angle between two struts at a hub. */
    private static double narrowestGapRad(Parts parts) {
        return parts.hubKinds().stream()
                .flatMap(kind -> gapsRad(kind).stream())
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }

    /** The angle from each strut of a hub to the next, once round: of a base hub the open side, too. */
    static List<Double> gapsRad(HubKind kind) {
        double sum = kind.gapsRad().stream().mapToDouble(Double::doubleValue).sum();
        return kind.open()
                ? Stream.concat(kind.gapsRad().stream(), Stream.of(2 * StrictMath.PI - sum))
                        .toList()
                : kind.gapsRad();
    }

    /** Discs at both ends of a strut must not touch, nor its notches run into each other. */
    private void checkRoom(Parts parts, ModelSpec spec) {
        double needed = 2 * rimMm + spec.board().thicknessMm();
        List<Problem> problems = parts.strutKinds().stream()
                .filter(kind -> kind.lengthMm() / spec.scale() < needed)
                .map(kind -> tooShort(kind, spec, needed))
                .toList();
        if (!problems.isEmpty()) {
            throw new CalotteException(problems);
        }
    }

    private Problem tooShort(StrutKind kind, ModelSpec spec, double needed) {
        return new Problem(
                Code.IMPOSSIBLE,
                "model.scale",
                "strut " + kind.mark() + " is " + NumberText.trimmed(kind.lengthMm() / spec.scale(), 1)
                        + " mm long in the model, too short between two discs of " + NumberText.trimmed(2 * rimMm, 1)
                        + " mm.",
                "Use a scale of 1:" + NumberText.trimmed(Math.floor(10 * kind.lengthMm() / needed) / 10, 1)
                        + " or larger, or a thinner board.");
    }
}
