package dev.calotte.sphere;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Looks for the fewest kinds of panels. From some poses on, every two kinds of panels are made one, in each way in which
 * their sides may meet, as far as the struts can be made equal; of what comes out the most promising poses are kept, and
 * so on (beam search, common practice). What is found with the fewest kinds within the strut ratio is made as narrow as
 * can be. It is not proved that there is nothing with fewer.
 */
final class FewKinds {

    private static final List<List<Integer>> MATCHES = List.of(
            List.of(0, 1, 2), List.of(1, 2, 0), List.of(2, 0, 1), List.of(0, 2, 1), List.of(2, 1, 0), List.of(1, 0, 2));

    /** Of so many poses in each round the widths are made narrow. */
    private static final int JUDGED = 20;

    /** What the poses of a round may cost; the more panels there are, the fewer poses are kept. */
    private static final int WORK = 67_500;

    private static final int MOST_KEPT = 100;

    private final Aim aim;
    private final int kept;
    private final Set<String> found = new TreeSet<>();
    private EqualPose best;

    /** A search for an aim, which one pose has reached already. */
    FewKinds(Aim aim, Pose reached) {
        this.aim = aim;
        this.best = EqualPose.of(reached);
        int panels = reached.web().panels().size();
        int share = WORK / (Math.max(1, reached.dimension()) * panels * panels);
        this.kept = Math.max(2, Math.min(MOST_KEPT, share));
    }

    /** The best pose that is reached from some, and from the one that has reached the aim. */
    Pose from(List<Pose> starts) {
        List<EqualPose> beam = new ArrayList<>();
        note(best.pose(), beam);
        for (Pose start : starts) {
            note(start, beam);
        }
        while (!beam.isEmpty()) {
            judge(beam);
            List<EqualPose> next = new ArrayList<>();
            for (EqualPose state : promising(beam)) {
                expand(state, next);
            }
            beam = next;
        }
        return best.pose();
    }

    private void note(Pose pose, List<EqualPose> into) {
        EqualPose state = EqualPose.of(pose);
        if (found.add(state.kinds().pattern())) {
            into.add(state);
        }
    }

    private void expand(EqualPose state, List<EqualPose> next) {
        List<Web.Panel> panels = state.kinds().examples();
        for (int p = 0; p < panels.size(); p++) {
            for (int q = 0; q < p; q++) {
                for (List<Integer> match : MATCHES) {
                    state.merged(panels.get(p), panels.get(q), match.get(0), match.get(1), match.get(2))
                            .ifPresent(pose -> note(pose, next));
                }
            }
        }
    }

    private List<EqualPose> promising(List<EqualPose> states) {
        List<EqualPose> promising = new ArrayList<>();
        states.stream()
                .sorted(EqualPose.PROMISE)
                .limit(3L * kept)
                .filter(state -> promising.size() < kept)
                .forEach(state -> state.within(aim).ifPresent(promising::add));
        return promising;
    }

    /** Looks whether there is something better among the poses with the fewest kinds. */
    private void judge(List<EqualPose> states) {
        states.stream()
                .sorted(EqualPose.FEWEST)
                .limit(JUDGED)
                .filter(state -> state.kinds().panels() <= best.kinds().panels())
                .forEach(state -> state.narrowest(aim).filter(this::isBetter).ifPresent(narrow -> best = narrow));
    }

    private boolean isBetter(EqualPose other) {
        int fewer = best.kinds().panels() - other.kinds().panels();
        return fewer > 0 || (fewer == 0 && other.pose().widest() < best.pose().widest());
    }
}
