package dev.calotte.sphere;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Looks for the pose that comes nearest to an aim, from several starts and from many places around them. */
final class Fitter {

    /** By how much the logarithm of the strut ratio may be exceeded: rounding. */
    static final double KEPT = 1e-10;

    private static final long SEED = 20;
    private static final double AROUND = 0.25;
    private static final int MOST_TRIES = 60;
    private static final int FEWEST_TRIES = 4;

    private final List<Pose> starts;
    private final int dimension;

    /** A fitter that begins at some poses, and at the one with the least strut ratio that is reached from the last. */
    Fitter(List<Pose> poses) {
        Pose last = poses.get(poses.size() - 1);
        this.starts = Stream.concat(poses.stream(), Stream.of(Descent.from(last, Aim.ratio())))
                .toList();
        this.dimension = last.dimension();
    }

    /** The pose that comes nearest to an aim. */
    Pose best(Aim aim) {
        Pose best = starts.get(0);
        for (Pose start : starts) {
            best = nearer(Descent.from(start, aim), best, aim);
        }
        SplittableRandom random = new SplittableRandom(SEED);
        for (int n = 0; n < tries(); n++) {
            // every other time around what is best so far
            Pose start = n % 2 == 0 ? best : starts.get(n / 2 % starts.size());
            best = nearer(Descent.from(around(start, random), aim), best, aim);
        }
        return best;
    }

    /** The pose with the least strut ratio, looked for around one more pose too. */
    Pose least(Pose near) {
        Aim aim = Aim.ratio();
        return nearer(Descent.from(near, aim), best(aim), aim);
    }

    /** Fewer where each takes longer. */
    private int tries() {
        return dimension == 0 ? 0 : Math.max(FEWEST_TRIES, Math.min(MOST_TRIES, 20_000 / (dimension * dimension)));
    }

    private Pose around(Pose pose, SplittableRandom random) {
        double unit = AROUND * StrictMath.exp(pose.shortest());
        double[] step = new double[dimension];
        Arrays.setAll(step, k -> unit * (2 * random.nextDouble() - 1));
        Pose around = pose.moved(step);
        return around.wellFormed() ? around : pose;
    }

    /** One of two poses: the one that is clearly nearer to the aim, or that is as near with fewer kinds. */
    private static Pose nearer(Pose one, Pose other, Aim aim) {
        double gain = aim.of(other) - aim.of(one);
        return gain > 1e-9 || (gain > -1e-9 && Kinds.FEWEST.compare(new Kinds(one), new Kinds(other)) < 0)
                ? one
                : other;
    }

    /** The pose with the fewest kinds of panels, from one more start. */
    Pose fewest(Aim aim, Pose narrow) {
        return new FewKinds(aim, narrow).from(starts);
    }
}
