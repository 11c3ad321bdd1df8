package dev.calotte.sphere;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A pose of which some struts are to stay equal.
 *
 * @param pose the pose
 * @param kinds its kinds
 * @param equal the pairs of struts that are equal
 */
record EqualPose(Pose pose, Kinds kinds, List<Web.Strut> equal) {

    /** Fewest kinds first. */
    static final Comparator<EqualPose> FEWEST =
            Comparator.comparing(EqualPose::kinds, Kinds.FEWEST).thenComparing(e -> e.pose.span());

    /** Kinds less what freedom is left first, as each freedom may yet save a kind. */
    static final Comparator<EqualPose> PROMISE =
            Comparator.comparingInt(EqualPose::promise).thenComparing(FEWEST);

    /** Sides whose logarithms differ by more, a third or so, are not made equal. */
    private static final double FAR = 0.35;

    static EqualPose of(Pose pose) {
        Kinds kinds = new Kinds(pose);
        return new EqualPose(pose, kinds, kinds.equal());
    }

    private int freedom() {
        return Math.max(0, pose.dimension() - equal.size());
    }

    private int promise() {
        return kinds.panels() - freedom();
    }

    /** A pose in which two panels are congruent too, side k of the one as long as side match[k] of the other. */
    Optional<Pose> merged(Web.Panel panel, Web.Panel other, int... match) {
        List<Web.Strut> pairs = new ArrayList<>(equal);
        for (int k = 0; k < 3; k++) {
            int one = panel.struts().get(k);
            int two = other.struts().get(match[k]);
            if (Math.abs(pose.log(one) - pose.log(two)) > FAR) {
                return Optional.empty();
            }
            if (one != two) {
                pairs.add(new Web.Strut(one, two));
            }
        }
        return new Equalizer(pairs).from(pose);
    }

    /** The same struts equal, within the aim's strut ratio, if that is found. */
    Optional<EqualPose> within(Aim aim) {
        return Descent.repaired(pose, aim.with(equal))
                .flatMap(new Equalizer(equal)::from)
                .map(moved -> new EqualPose(moved, kinds, equal));
    }

    /** The same struts equal, within the aim's strut ratio and as narrow as can be, if that is found. */
    Optional<EqualPose> narrowest(Aim aim) {
        if (freedom() == 0 && aim.flaw(pose) > Fitter.KEPT) {
            return Optional.empty();
        }
        return new Equalizer(equal)
                .from(Descent.from(pose, aim.with(equal)))
                .filter(moved -> aim.flaw(moved) <= Fitter.KEPT)
                .map(EqualPose::of);
    }
}
