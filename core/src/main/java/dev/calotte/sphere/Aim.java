package dev.calotte.sphere;

import java.util.List;

/**
 * What a pose is moved towards: panels as narrow as can be, within a strut ratio, and struts that are to be equal. What
 * is not kept to is a flaw, whose largest size counts {@link #FLAW} times as much as the width, so that it vanishes
 * where it can.
 *
 * @param width whether width counts; if not, only flaws do
 * @param span the logarithm of the strut ratio
 * @param equal pairs of strut orbits that are to be of one length
 */
record Aim(boolean width, double span, List<Web.Strut> equal) {

    /** Beyond any rate at which width can be bought with flaws. */
    static final double FLAW = 20;

    static Aim width(double ratio) {
        return new Aim(true, StrictMath.log(ratio), List.of());
    }

    /** The least strut ratio, whatever the width. */
    static Aim ratio() {
        return new Aim(false, 0, List.of());
    }

    /** The same, with pairs of struts that are to be equal. */
    Aim with(List<Web.Strut> pairs) {
        return new Aim(width, span, pairs);
    }

    /** How far a pose is from the aim; what is smaller is better. */
    double of(Pose pose) {
        return pose.wellFormed() ? (width ? pose.widest() : 0) + FLAW * flaw(pose) : Double.POSITIVE_INFINITY;
    }

    /** The largest logarithm by which lengths are not as they are to be, or a panel is too thin. */
    double flaw(Pose pose) {
        double flaw = Math.max(0, Math.max(pose.span() - span, Pose.THIN - pose.thinnest()));
        for (Web.Strut pair : equal) {
            flaw = Math.max(flaw, Math.abs(pose.log(pair.from()) - pose.log(pair.to())));
        }
        return flaw;
    }
}
