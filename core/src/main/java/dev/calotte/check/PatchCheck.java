package dev.calotte.check;

import dev.calotte.check.RecordedDome.Panel;
import dev.calotte.check.RecordedPatches.Kind;
import dev.calotte.check.RecordedPatches.Patch;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Patches: that every panel belongs to one, that those of a kind are made of the same panels in the same order, and that seams
 * in them and between them are as long as the sides that panels share there.
 */
public final class PatchCheck {

    static final int NONE = -1;

    private static final Pattern KIND = Pattern.compile("A[1-9][0-9]{0,8}[LR]?");

    private final RecordedDome dome;
    private final RecordedPatches patches;
    private final Findings findings;
    private final Map<String, Kind> kinds = new TreeMap<>();
    private final int[] patchOf;

    private PatchCheck(RecordedDome dome, RecordedPatches patches, Findings findings) {
        this.dome = dome;
        this.patches = patches;
        this.findings = findings;
        this.patchOf = new int[dome.panels().size()];
    }

    /**
     * Looks patches through.
     *
     * @param dome a dome that refers to nothing that is not there
     * @param patches its patches
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedPatches patches, Findings findings) {
        new PatchCheck(dome, patches, findings).check();
    }

    private void check() {
        int before = findings.list().size();
        patches.kinds().forEach(this::kind);
        marks();
        members();
        if (findings.list().size() == before) {
            PatchNet net = new PatchNet(dome, patchOf);
            new PatchSeams(dome, patches, net, findings).check();
            new PatchJoinCheck(patches, net, findings).check();
            new PatchWays(dome, patches, findings).check();
        }
    }

    private void kind(Kind kind) {
        String place = "patches.kinds " + kind.mark();
        if (kinds.put(kind.mark(), kind) != null) {
            findings.add(Fault.DOUBLED, place, "another kind of patches has this mark.");
        }
        if (!KIND.matcher(kind.mark()).matches()) {
            findings.add(Fault.DIFFERENT, place, "this is no mark of a kind of patches.");
        }
        String hand = Hands.of(kind.mark());
        if (hand.equals("none")) {
            if (!kind.hand().matches("none|left|right")) {
                findings.same(place, "the hand", kind.hand(), "none, left or right");
            }
            findings.same(place, "the mark of its mirror image", named(kind.mirror()), "nothing");
        } else {
            findings.same(place, "the hand", kind.hand(), hand);
            findings.same(place, "the mark of its mirror image", named(kind.mirror()), Hands.twin(kind.mark()));
        }
    }

    private static String named(String mark) {
        return mark.isEmpty() ? "nothing" : mark;
    }

    /** Patches of a kind are counted in the order in which they are joined. */
    private void marks() {
        Map<String, Integer> counts = new TreeMap<>();
        for (Patch patch : patches.patches()) {
            if (kinds.containsKey(patch.kind())) {
                int place = counts.merge(patch.kind(), 1, Integer::sum);
                String mark = String.format(Locale.ROOT, "%s-%02d", patch.kind(), place);
                findings.same("patches.patches " + patch.mark(), "the mark", patch.mark(), mark);
            } else {
                findings.add(
                        Fault.FOREIGN,
                        "patches.patches " + patch.mark(),
                        "there is no kind of patches " + patch.kind() + ".");
            }
        }
        for (Kind kind : patches.kinds()) {
            findings.same(
                    "patches.kinds " + kind.mark(), "the count", kind.count(), counts.getOrDefault(kind.mark(), 0), 0);
            if (!kind.mirror().isEmpty() && !kinds.containsKey(kind.mirror())) {
                findings.add(Fault.MISSING, "patches.kinds " + kind.mirror(), "there is no such kind of patches.");
            }
        }
    }

    private void members() {
        Arrays.fill(patchOf, NONE);
        for (int i = 0; i < patches.patches().size(); i++) {
            members(i, patches.patches().get(i));
        }
        for (int panel = 0; panel < patchOf.length; panel++) {
            Panel each = dome.panels().get(panel);
            String given = panel < patches.patchOf().size() ? patches.patchOf().get(panel) : "";
            if (patchOf[panel] == NONE) {
                findings.add(Fault.MISSING, each.mark(), "it belongs to no patch.");
            } else {
                findings.same(
                        each.mark(),
                        "its patch",
                        named(given),
                        patches.patches().get(patchOf[panel]).mark());
            }
        }
    }

    private void members(int number, Patch patch) {
        String place = "patches.patches " + patch.mark();
        Set<Integer> doubled = new TreeSet<>();
        for (int panel : patch.panels()) {
            if (panel < 0 || panel >= patchOf.length) {
                findings.add(Fault.FOREIGN, place, "there is no panel number " + panel + ".");
            } else if (patchOf[panel] != NONE) {
                doubled.add(panel);
            } else {
                patchOf[panel] = number;
            }
        }
        doubled.forEach(panel ->
                findings.add(Fault.DOUBLED, place, dome.panels().get(panel).mark() + " belongs to a patch already."));
        List<String> made = patch.panels().stream()
                .map(panel -> panel >= 0 && panel < patchOf.length
                        ? dome.panels().get(panel).kind()
                        : "")
                .toList();
        Optional.ofNullable(kinds.get(patch.kind()))
                .filter(kind -> !kind.panels().equals(made))
                .ifPresent(kind -> findings.add(
                        Fault.DIFFERENT,
                        place,
                        "its panels are of the kinds " + String.join(" ", made) + ", those of " + kind.mark() + " are "
                                + String.join(" ", kind.panels()) + "."));
    }
}
