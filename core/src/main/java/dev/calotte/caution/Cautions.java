package dev.calotte.caution;

import dev.calotte.assembly.Raise;
import dev.calotte.caution.Circumstances.Clad;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Measures;
import dev.calotte.parts.Ends;
import dev.calotte.pattern.Cover;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses the cautions that concern a dome.
 *
 * <pre>{@code
 * List<Caution> cautions = Cautions.of(dome);
 * }</pre>
 */
public final class Cautions {

    /** Beyond this radius wind and snow are named outright: the size of a garden dome that people stand in. */
    private static final double LARGE_RADIUS_MM = 2500;

    /** From this height on, falls are named: 29 CFR 1926.501 begins at 6 ft. */
    private static final double FALL_HEIGHT_MM = 1800;

    private Cautions() {}

    /**
     * The cautions that concern a dome as it is built and covered.
     *
     * @param circumstances how it is built and covered
     * @return those of the dome, the most general first, then those of its ends, covers and tools
     */
    public static List<Caution> of(Circumstances circumstances) {
        List<Caution> cautions = new ArrayList<>(of(circumstances.parts().dome()));
        if (circumstances.raise() == Raise.CROWN) {
            cautions.add(cautions.indexOf(KnownCautions.RAISING) + 1, KnownCautions.LIFTING);
        }
        if (circumstances.parts().joinery().ends() instanceof Ends.Flattened) {
            cautions.add(KnownCautions.FLATTENED);
        }
        circumstances.covers().forEach(clad -> cautions.addAll(of(clad)));
        if (circumstances.lasered()) {
            cautions.add(KnownCautions.LASER);
        }
        if (circumstances.printed()) {
            cautions.add(KnownCautions.PRINTED);
        }
        return cautions.stream().distinct().toList();
    }

    private static List<Caution> of(Clad clad) {
        return clad.material().map(Cautions::of).orElseGet(() -> byShape(clad.cover()));
    }

    private static List<Caution> of(Material material) {
        return switch (material) {
            case GLASS -> List.of(KnownCautions.GLASS);
            case POLYCARBONATE -> List.of(KnownCautions.PLASTIC, KnownCautions.NO_LASER);
            case ACRYLIC -> List.of(KnownCautions.PLASTIC, KnownCautions.LASER);
            case PLYWOOD -> List.of(KnownCautions.PLYWOOD, KnownCautions.DUST);
            case CLOTH -> List.of(KnownCautions.CLOTH);
            case PVC_CLOTH -> List.of(KnownCautions.CLOTH, KnownCautions.PVC);
            case FILM -> List.of(KnownCautions.FILM);
        };
    }

    /** Where the material is not told, thickness means a sheet and a seam means cloth. */
    private static List<Caution> byShape(Cover cover) {
        List<Caution> cautions = new ArrayList<>();
        if (cover.sheeting().thicknessMm() > 0) {
            cautions.add(KnownCautions.PANELS);
        }
        if (cover.allowances().wideMm() > 0) {
            cautions.add(KnownCautions.CLOTH);
        }
        return cautions;
    }

    /**
     * The cautions of the trade that may concern a dome, which nothing in its description tells.
     *
     * @return each with a topic that says when it does
     */
    public static List<Caution> depending() {
        return List.of(
                KnownCautions.TENT,
                KnownCautions.STOVE,
                KnownCautions.AIR,
                KnownCautions.ZINC,
                KnownCautions.PIPE,
                KnownCautions.STORM);
    }

    /**
     * The cautions that concern a dome.
     *
     * @param dome the dome
     * @return the most general first
     */
    public static List<Caution> of(Dome dome) {
        Measures m = dome.measures();
        List<Caution> cautions = new ArrayList<>();
        cautions.add(KnownCautions.GEOMETRY);
        if (m.radiusMm() > LARGE_RADIUS_MM) {
            cautions.add(KnownCautions.LOADS);
        }
        if (!dome.baseRing().isEmpty()) {
            cautions.add(KnownCautions.BASE);
        }
        cautions.add(KnownCautions.RAISING);
        if (m.heightMm() > FALL_HEIGHT_MM) {
            cautions.add(KnownCautions.HEIGHTS);
        }
        if (!dome.openings().isEmpty()) {
            boolean frameIsWhole = dome.struts().size() == dome.whole().struts().size();
            cautions.addAll(
                    List.of(frameIsWhole ? KnownCautions.PANELS_OUT : KnownCautions.OPENING, KnownCautions.DOOR));
        }
        cautions.addAll(
                List.of(KnownCautions.PERMIT, KnownCautions.TOLERANCE, KnownCautions.FILES, KnownCautions.TOOLS));
        return List.copyOf(cautions);
    }
}
