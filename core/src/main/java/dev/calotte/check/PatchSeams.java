package dev.calotte.check;

import dev.calotte.check.RecordedPatches.Kind;
import dev.calotte.check.RecordedPatches.Patch;
import dev.calotte.check.RecordedPatches.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Seams in patches: each joins pieces that share sides, every side between two panels of a patch is in one seam, and in the end
 * the patch hangs together. All patches of a kind must be put together alike.
 */
final class PatchSeams {

    private final RecordedDome dome;
    private final RecordedPatches patches;
    private final PatchNet net;
    private final Findings findings;

    PatchSeams(RecordedDome dome, RecordedPatches patches, PatchNet net, Findings findings) {
        this.dome = dome;
        this.patches = patches;
        this.net = net;
        this.findings = findings;
    }

    void check() {
        Map<String, Patch> first = new TreeMap<>();
        for (Patch patch : patches.patches()) {
            Patch example = first.putIfAbsent(patch.kind(), patch);
            if (example != null && !alike(example, patch)) {
                findings.add(
                        Fault.DIFFERENT,
                        "patches.patches " + patch.mark(),
                        "its panels do not lie to each other as those of " + example.mark() + " do.");
            }
        }
        for (Kind kind : patches.kinds()) {
            if (first.containsKey(kind.mark())) {
                new Making(kind, first.get(kind.mark())).check();
            }
        }
    }

    /** Whether panels at the same places have the same neighbours across sides of the same length, in the same order round them. */
    private boolean alike(Patch one, Patch other) {
        Map<Integer, Integer> placesOfOne = places(one);
        Map<Integer, Integer> placesOfOther = places(other);
        for (int i = 0; i < one.panels().size(); i++) {
            boolean alike = false;
            for (int turn = 0; !alike && turn < 3; turn++) {
                alike = true;
                for (int side = 0; alike && side < 3; side++) {
                    int panel = one.panels().get(i);
                    int there = other.panels().get(i);
                    int turned = (side + turn) % 3;
                    alike = place(panel, side, placesOfOne) == place(there, turned, placesOfOther)
                            && Math.abs(net.length(panel, side) - net.length(there, turned)) <= net.within(2);
                }
            }
            if (!alike) {
                return false;
            }
        }
        return true;
    }

    private static Map<Integer, Integer> places(Patch patch) {
        Map<Integer, Integer> places = new TreeMap<>();
        patch.panels().forEach(panel -> places.put(panel, places.size() + 1));
        return places;
    }

    private int place(int panel, int side, Map<Integer, Integer> places) {
        return places.getOrDefault(net.across(panel, side), PatchCheck.NONE);
    }

    /** How a patch is put together, seam after seam. */
    private final class Making {

        private final Kind kind;
        private final Patch patch;
        private final Map<Integer, Integer> places;
        private final List<Set<Integer>> pieceOf = new ArrayList<>();
        private final Set<Long> joined = new TreeSet<>();

        Making(Kind kind, Patch patch) {
            this.kind = kind;
            this.patch = patch;
            this.places = places(patch);
            pieceOf.add(Set.of());
            for (int place = 1; place <= patch.panels().size(); place++) {
                pieceOf.add(new TreeSet<>(Set.of(place)));
            }
        }

        private String at(int seam) {
            return "patches.kinds " + kind.mark() + ", seam " + (seam + 1);
        }

        void check() {
            for (int i = 0; i < kind.seams().size(); i++) {
                Seam seam = kind.seams().get(i);
                if (isThere(seam)) {
                    seam(i, seam);
                } else {
                    findings.add(
                            Fault.DIFFERENT,
                            at(i),
                            "it joins " + seam.these() + " to " + seam.to() + ", which are no two pieces then.");
                    return;
                }
            }
            whole();
        }

        /** One panel, or all of what hangs together by then. */
        private boolean isThere(Seam seam) {
            return isPiece(seam.these())
                    && isPiece(seam.to())
                    && seam.these().stream().noneMatch(new TreeSet<>(seam.to())::contains);
        }

        private boolean isPiece(List<Integer> list) {
            boolean there = list.stream().allMatch(place -> place >= 1 && place < pieceOf.size());
            return there
                    && !list.isEmpty()
                    && (list.size() == 1
                            || (pieceOf.get(list.get(0)).size() == list.size()
                                    && pieceOf.get(list.get(0)).containsAll(list)
                                    && new TreeSet<>(list).size() == list.size()));
        }

        private void seam(int number, Seam seam) {
            Set<Integer> to = new TreeSet<>(seam.to());
            double length = 0;
            int sides = 0;
            for (int place : seam.these()) {
                int panel = patch.panels().get(place - 1);
                for (int side = 0; side < 3; side++) {
                    int other = place(panel, side, places);
                    if (to.contains(other)) {
                        length += net.length(panel, side);
                        sides++;
                        note(number, place, other);
                    }
                }
            }
            findings.same(at(number), "the length", seam.length(), length, net.within(sides));
            unite(seam.these().get(0), seam.to().get(0));
        }

        private void note(int number, int place, int other) {
            if (!joined.add(Edges.key(place, other))) {
                findings.add(Fault.DOUBLED, at(number), place + " and " + other + " are joined already.");
            }
        }

        private void unite(int one, int other) {
            Set<Integer> small = pieceOf.get(one);
            Set<Integer> large = pieceOf.get(other);
            if (small.size() > large.size()) {
                Set<Integer> swap = small;
                small = large;
                large = swap;
            }
            if (small != large) {
                large.addAll(small);
                for (int place : small) {
                    pieceOf.set(place, large);
                }
            }
        }

        private void whole() {
            for (int place = 1; place < pieceOf.size(); place++) {
                for (int side = 0; side < 3; side++) {
                    int other = place(patch.panels().get(place - 1), side, places);
                    if (other > place && !joined.contains(Edges.key(place, other))) {
                        findings.add(
                                Fault.MISSING,
                                "patches.kinds " + kind.mark(),
                                "no seam joins " + place + " and " + other + ", which share a side.");
                    }
                }
            }
            if (pieceOf.get(pieceOf.size() - 1).size() != pieceOf.size() - 1) {
                findings.add(Fault.GAPING, "patches.kinds " + kind.mark(), "its panels do not all hang together.");
            }
            hand();
        }

        private void hand() {
            boolean alone = kind.mirror().isEmpty();
            if (alone && kind.panels().size() <= PatchMirror.MOST_PANELS) {
                boolean own = PatchMirror.isItsOwn(patch, net, dome.figures().radius());
                if (own != kind.hand().equals("none")) {
                    findings.add(
                            Fault.DIFFERENT,
                            "patches.kinds " + kind.mark(),
                            "the hand is " + kind.hand() + ", and it is " + (own ? "" : "not ")
                                    + "its own mirror image.");
                }
            }
        }
    }
}
