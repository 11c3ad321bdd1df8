package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.document.Jig.Arm;
import dev.calotte.document.StrutSection;
import dev.calotte.parts.Ends;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How large the jig of a kind of hubs is, and how it lies on the bed. */
final class CradlePlan {

    /** What is left beside a trough for letters. */
    private static final double LABEL_MM = 14;

    private static final double LEAST_HOLD_MM = 40;
    private static final double SHORTEST_HOLD_MM = 15;
    private static final double TAPER = 1.5;

    private final Parts parts;
    private final JigSpec spec;
    private final StrutSection strut;
    private final HubKind kind;
    private final List<Arm> arms;
    private final double endMm;

    CradlePlan(Parts parts, JigSpec spec, StrutSection strut, HubKind kind) {
        this.parts = parts;
        this.spec = spec;
        this.strut = strut;
        this.kind = kind;
        this.arms = HubArms.of(kind);
        this.endMm = parts.joinery().endMm(kind.open(), kind.struts().size());
    }

    Jig.Cradle cradle() {
        double foot = outerMm() + LABEL_MM;
        Jig.Cradle whole =
                new Jig.Cradle(kind.mark(), title(), strut, arms, endMm, flat(), reachMm(), foot, Optional.empty(), 0);
        return new CradleBed(spec.bed(), whole, outerMm(), seatMm()).laid();
    }

    private String title() {
        return "Jig for " + kind.count() + (kind.count() == 1 ? " hub " : " hubs ") + kind.mark()
                + ", outside up, from the arrow counter-clockwise " + String.join(" ", kind.strutMarks());
    }

    private double outerMm() {
        return innerMm() + spec.wallMm();
    }

    private double innerMm() {
        return strut.widthMm() / 2 + spec.clearanceMm();
    }

    private Optional<Jig.Flat> flat() {
        Joinery joinery = parts.joinery();
        if (!(joinery.ends() instanceof Ends.Flattened ends)) {
            return Optional.empty();
        }
        boolean together = joinery.hubGaps().isEmpty() && joinery.hubPlate().isEmpty();
        return Optional.of(new Jig.Flat(
                endMm + ends.flattenMm(),
                FlatTube.widthMm(strut, ends),
                FlatTube.thickMm(ends) / 2,
                ends.holeMm(),
                together ? 0 : endMm + ends.holeEdgeMm()));
    }

    /** Where the troughs that begin furthest out begin. */
    private double seatMm() {
        return arms.stream().mapToDouble(this::seatMm).max().orElseThrow();
    }

    private double seatMm(Arm arm) {
        return flat().map(flat -> flat.bendMm() + TAPER * strut.depthMm())
                .orElse(endMm * StrictMath.cos(arm.tiltRad()) - strut.depthMm() / 2 * StrictMath.sin(arm.tiltRad()));
    }

    /** How much further out troughs would have to begin; below 0 where nothing is missing. */
    double missingMm() {
        return clearMm() - nearestMm();
    }

    private double nearestMm() {
        return arms.stream().mapToDouble(this::seatMm).min().orElseThrow();
    }

    private double clearMm() {
        return HubArms.clearMm(arms, innerMm());
    }

    void checkApart() {
        if (missingMm() > 0) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "jigs.strut",
                    String.format(
                            Locale.ROOT,
                            "struts %s wide would run into each other at hub %s: their seats begin %.1f mm from its axis,"
                                    + " and are apart from %.1f mm on.",
                            JigSpec.text(strut.widthMm()),
                            kind.mark(),
                            Math.max(0, nearestMm()),
                            clearMm()),
                    mend(missingMm()));
        }
    }

    private String mend(double missing) {
        double up = Math.ceil(missing / StrictMath.cos(arms.get(0).tiltRad()) + 1);
        return parts.joinery().ends() instanceof Ends.Flattened flat
                ? "Write frame.ends.flatten: " + JigSpec.text(Math.ceil(flat.flattenMm() + up)) + " or more."
                : "Write frame.hub-gap: " + JigSpec.text(Math.ceil(endMm + up)) + " or more, or use thinner struts.";
    }

    /** Two and a half times the strut is held, less where two jigs would meet on the shortest one. */
    private double reachMm() {
        double wished = seatMm() + Math.max(LEAST_HOLD_MM, 2.5 * strut.widthMm());
        double half = kind.struts().stream()
                .map(parts::strutKind)
                .mapToDouble(s -> s.lengthMm() / 2 * StrictMath.cos(s.axialAngleRad()))
                .min()
                .orElseThrow();
        double reach = Math.min(wished, 0.9 * half);
        if (reach < seatMm() + SHORTEST_HOLD_MM) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "jigs",
                    "the struts at hub " + kind.mark() + " are too short to be held beyond their ends.",
                    "Leave the section out, or print hubs instead: sockets: { strut: round 6 mm }.");
        }
        return reach;
    }
}
