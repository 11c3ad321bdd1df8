package dev.calotte.check;

import dev.calotte.check.RecordedPatches.Join;
import dev.calotte.check.RecordedPatches.Patch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Seams between patches: those who share sides are joined, once for each chain of sides, later ones to earlier ones. */
final class PatchJoinCheck {

    private final RecordedPatches patches;
    private final PatchNet net;
    private final Findings findings;
    private final Map<String, Integer> numberOf = new TreeMap<>();

    PatchJoinCheck(RecordedPatches patches, PatchNet net, Findings findings) {
        this.patches = patches;
        this.net = net;
        this.findings = findings;
        for (Patch patch : patches.patches()) {
            numberOf.put(patch.mark(), numberOf.size());
        }
    }

    /** Connected sides. */
    private record Chain(double length, int sides) {}

    void check() {
        Map<Long, List<Chain>> chains = chains();
        int before = -1;
        for (int i = 0; i < patches.joins().size(); i++) {
            Join join = patches.joins().get(i);
            Integer patch = numberOf.get(join.patch());
            Integer to = numberOf.get(join.to());
            String place = "patches.joins " + (i + 1);
            if (patch == null || to == null || patch <= to) {
                findings.add(
                        Fault.FOREIGN,
                        place,
                        "it joins " + join.patch() + " to " + join.to()
                                + ", which are no patch and one that stands by then.");
            } else if (patch < before) {
                findings.add(Fault.DIFFERENT, place, "it joins " + join.patch() + ", which stands already.");
            } else {
                before = patch;
                take(place, join, chains.getOrDefault(Edges.key(patch, to), List.of()));
            }
        }
        chains.forEach(this::left);
        double last = patches.joins().isEmpty()
                ? 0
                : patches.joins().get(patches.joins().size() - 1).length();
        findings.same("patches.lastSeam", "the last seam", patches.lastSeam(), last, Printed.RECORD_MM);
    }

    private void take(String place, Join join, List<Chain> chains) {
        for (Chain chain : chains) {
            if (Math.abs(chain.length - join.length()) <= net.within(chain.sides)) {
                chains.remove(chain);
                return;
            }
        }
        if (chains.isEmpty()) {
            findings.add(Fault.DIFFERENT, place, join.patch() + " and " + join.to() + " share no more sides.");
        } else {
            Chain chain = chains.remove(0);
            findings.same(place, "the length", join.length(), chain.length, net.within(chain.sides));
        }
    }

    private void left(long pair, List<Chain> chains) {
        for (Chain chain : chains) {
            findings.add(
                    Fault.MISSING,
                    "patches.joins",
                    patches.patches().get(Edges.from(pair)).mark() + " and "
                            + patches.patches().get(Edges.to(pair)).mark() + " share sides of "
                            + Findings.text(chain.length) + " mm, and no seam joins them.");
        }
    }

    private Map<Long, List<Chain>> chains() {
        Map<Long, List<int[]>> shared = new TreeMap<>();
        for (int panel = 0; panel < net.patchOf.length; panel++) {
            for (int side = 0; side < 3; side++) {
                int there = net.across(panel, side);
                if (there != PatchCheck.NONE && net.patchOf[there] < net.patchOf[panel]) {
                    shared.computeIfAbsent(Edges.key(net.patchOf[there], net.patchOf[panel]), key -> new ArrayList<>())
                            .add(new int[] {panel, side});
                }
            }
        }
        Map<Long, List<Chain>> chains = new TreeMap<>();
        shared.forEach((pair, sides) -> chains.put(pair, chains(sides)));
        return chains;
    }

    /** Follows sides from end to end. */
    private List<Chain> chains(List<int[]> sides) {
        Map<Integer, List<Integer>> at = new TreeMap<>();
        for (int i = 0; i < sides.size(); i++) {
            at.computeIfAbsent(net.from(sides.get(i)[0], sides.get(i)[1]), v -> new ArrayList<>())
                    .add(i);
            at.computeIfAbsent(net.to(sides.get(i)[0], sides.get(i)[1]), v -> new ArrayList<>())
                    .add(i);
        }
        boolean[] seen = new boolean[sides.size()];
        List<Chain> chains = new ArrayList<>();
        for (int start = 0; start < seen.length; start++) {
            if (!seen[start]) {
                chains.add(chain(start, sides, at, seen));
            }
        }
        return chains;
    }

    private Chain chain(int start, List<int[]> sides, Map<Integer, List<Integer>> at, boolean[] seen) {
        List<Integer> chain = new ArrayList<>(List.of(start));
        seen[start] = true;
        double length = 0;
        for (int i = 0; i < chain.size(); i++) {
            int[] side = sides.get(chain.get(i));
            length += net.length(side[0], side[1]);
            for (int vertex : new int[] {net.from(side[0], side[1]), net.to(side[0], side[1])}) {
                for (int other : at.get(vertex)) {
                    if (!seen[other]) {
                        seen[other] = true;
                        chain.add(other);
                    }
                }
            }
        }
        return new Chain(length, chain.size());
    }
}
