package dev.calotte.assembly;

import dev.calotte.dome.Panel;
import dev.calotte.parts.Parts;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The panels of a dome grouped into patches that are made first and joined later. Every panel belongs to exactly one.
 * Where whole stars cover the dome exactly they are the patches; else the way with the fewest kinds is chosen, and of
 * several the one whose last seam is the shortest.
 *
 * <pre>{@code
 * Patches patches = Patches.of(parts);
 * }</pre>
 */
public final class Patches {

    private final PatchWay way;
    private final boolean exact;
    private final List<Patch> patches;
    private final List<PatchKind> kinds;
    private final List<Join> joins;
    private final int[] patchOf;

    Patches(PatchWay way, boolean exact, List<Patch> patches, List<Join> joins, int panels) {
        this.way = way;
        this.exact = exact;
        this.patches = List.copyOf(patches);
        this.kinds = patches.stream()
                .map(Patch::kind)
                .distinct()
                .sorted(Comparator.comparingInt(PatchKind::number).thenComparing(PatchKind::hand))
                .toList();
        this.joins = List.copyOf(joins);
        this.patchOf = new int[panels];
        for (int i = 0; i < patches.size(); i++) {
            for (Panel panel : patches.get(i).panels()) {
                patchOf[panel.index()] = i;
            }
        }
    }

    /**
     * A seam between two patches.
     *
     * @param patch the mark of what is joined
     * @param to the mark of a patch that stands already
     * @param lengthMm how long the seam is, from node to node
     */
    public record Join(String patch, String to, double lengthMm) {}

    /**
     * Groups the panels of a dome in the way that suits it best.
     *
     * @param parts the parts of the dome
     * @return the patches
     */
    public static Patches of(Parts parts) {
        PatchSorting sorting = new PatchSorting(parts);
        return sorting.exactStars()
                .orElseGet(() -> Arrays.stream(PatchWay.values())
                        .map(sorting::by)
                        .min(Comparator.comparingInt(Patches::shapes).thenComparingDouble(Patches::lastSeamMm))
                        .orElseThrow());
    }

    /**
     * Groups the panels of a dome in a given way.
     *
     * @param parts the parts of the dome
     * @param way how
     * @return the patches; stars leave other patches between them where they cannot cover the dome
     */
    public static Patches of(Parts parts, PatchWay way) {
        return new PatchSorting(parts).by(way);
    }

    /**
     * How panels were grouped.
     *
     * @return the way
     */
    public PatchWay way() {
        return way;
    }

    /**
     * Whether every patch is a star, or the part of one that the base or an opening leaves.
     *
     * @return true if stars cover the dome exactly
     */
    public boolean areExactStars() {
        return exact;
    }

    /**
     * All patches in the order in which they are joined.
     *
     * @return the patches; unmodifiable
     */
    public List<Patch> patches() {
        return patches;
    }

    /**
     * The kinds of patches.
     *
     * @return by number, left before right; unmodifiable
     */
    public List<PatchKind> kinds() {
        return kinds;
    }

    /**
     * The patch that a panel belongs to.
     *
     * @param panel a panel of the dome
     * @return its patch
     */
    public Patch of(Panel panel) {
        return patches.get(patchOf[panel.index()]);
    }

    /**
     * How patches are joined: each to those that stand already, from the crown outwards; the last is the seam that
     * closes the whole.
     *
     * @return the seams between patches in order; unmodifiable
     */
    public List<Join> joins() {
        return joins;
    }

    /**
     * The seam that closes the whole.
     *
     * @return its length in millimetres, 0 if there is one patch only
     */
    public double lastSeamMm() {
        return joins.isEmpty() ? 0 : joins.get(joins.size() - 1).lengthMm();
    }

    /** How many kinds there are, mirror twins counted once. */
    private int shapes() {
        return kinds.get(kinds.size() - 1).number();
    }
}
