package dev.calotte.sphere;

import java.util.Optional;

/**
 * Moves a pose towards an aim by linear programmes within a trust region, which grows where they foretell well and
 * shrinks where they do not (sequential linear programming; common practice, Griffith and Stewart, 1961, from memory).
 */
final class Descent {

    private static final double FIRST_RADIUS = 0.2;
    private static final double LAST_RADIUS = 1e-10;
    private static final double SOON = 1e-3;
    private static final double NO_FLAW = 1e-12;
    private static final double GROWTH = 1.5;
    private static final double SHRINKAGE = 3;
    private static final int MOST_STEPS = 300;

    private final Aim aim;
    private Pose pose;
    private double value;
    private double radius;

    private Descent(Aim aim, Pose start) {
        this.aim = aim;
        this.pose = start;
        this.value = aim.of(start);
        this.radius = FIRST_RADIUS * StrictMath.exp(start.shortest());
    }

    /** The pose that is reached from a start. */
    static Pose from(Pose start, Aim aim) {
        if (start.dimension() == 0) {
            return start;
        }
        Descent descent = new Descent(aim, start);
        descent.run(LAST_RADIUS);
        return descent.pose;
    }

    /** A pose near a start that has no flaw, whatever its width, if one is found soon. */
    static Optional<Pose> repaired(Pose start, Aim aim) {
        Descent descent = new Descent(new Aim(false, aim.span(), aim.equal()), start);
        if (start.dimension() > 0) {
            descent.run(descent.radius * SOON);
        }
        return Optional.of(descent.pose).filter(pose -> aim.flaw(pose) <= Fitter.KEPT);
    }

    private void run(double lastRadius) {
        double[][] slopes = pose.slopes();
        for (int n = 0; n < MOST_STEPS && radius > lastRadius && !isPerfect(); n++) {
            Pose next = new Programme(pose, slopes, aim, radius)
                    .step(bases())
                    .map(pose::moved)
                    .orElse(pose);
            double gain = value - aim.of(next);
            if (gain > 0) {
                pose = next;
                value = aim.of(next);
                slopes = pose.slopes();
                radius *= GROWTH;
            } else {
                radius /= SHRINKAGE;
            }
        }
    }

    private boolean isPerfect() {
        return !aim.width() && value <= NO_FLAW;
    }

    /** Upon which side each panel's altitude is smallest. */
    private int[] bases() {
        return pose.web().panels().stream()
                .mapToInt(panel -> pose.width(panel).base())
                .toArray();
    }
}
