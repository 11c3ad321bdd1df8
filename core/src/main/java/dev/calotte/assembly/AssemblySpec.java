package dev.calotte.assembly;

import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Locale;
import java.util.Optional;

/**
 * How a dome is to be put together.
 *
 * <pre>{@code
 * AssemblySpec hoisted = new AssemblySpec(Optional.of(PatchWay.ROWS), Raise.CROWN);
 * List<Patch> rows = hoisted.patches(parts).patches();
 * }</pre>
 *
 * @param way how panels are grouped into patches; nothing if whole stars or the fewest kinds decide
 * @param raise from which end it is raised
 */
public record AssemblySpec(Optional<PatchWay> way, Raise raise) {

    /** Whole stars or else the way with the fewest kinds of patches, raised from the base. */
    public static final AssemblySpec USUAL = new AssemblySpec(Optional.empty(), Raise.BASE);

    /**
     * The patches of a dome.
     *
     * @param parts the parts of the dome
     * @return its panels in patches
     * @throws CalotteException at {@code assembly.patches} if stars are asked for and do not cover the dome
     */
    public Patches patches(Parts parts) {
        if (way.isEmpty()) {
            return Patches.of(parts);
        }
        Patches patches = Patches.of(parts, way.get());
        if (way.get() == PatchWay.STARS && !patches.areExactStars()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "assembly.patches",
                    "no choice of hubs lets every panel of this dome belong to the star round exactly one.",
                    "Write " + possible(parts, PatchWay.SECTORS) + ", " + possible(parts, PatchWay.ROWS)
                            + ", or fewest, the way with fewer kinds.");
        }
        return patches;
    }

    private static String possible(Parts parts, PatchWay way) {
        int kinds = Patches.of(parts, way).kinds().size();
        return way.name().toLowerCase(Locale.ROOT) + " (" + kinds + (kinds == 1 ? " kind" : " kinds") + " of patches)";
    }
}
