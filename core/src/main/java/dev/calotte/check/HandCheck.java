package dev.calotte.check;

import dev.calotte.check.RecordedDome.HubKind;
import dev.calotte.export.Facets;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells the hand of what is printed for a hub by the rims of its troughs: each is a plane that falls outwards as its strut
 * does, so that it looks along the strut, further from upright the steeper the strut is. Seen from outside, the rims stand
 * round the hub as the record says, or the other way round if the solid was mirrored. How it is turned is not asked, and of a
 * kind that is its own mirror image both ways are right.
 */
public final class HandCheck {

    private static final double LEAST_MM2 = 0.5;

    private final HubKind kind;
    private final boolean outerHalf;
    private final List<Slants> rims = new ArrayList<>();

    private HandCheck(HubKind kind, boolean outerHalf, Facets facets) {
        this.kind = kind;
        this.outerHalf = outerHalf;
        for (double axial : kind.axialAngles()) {
            rims.add(Slants.of(facets, StrictMath.toRadians(axial)));
        }
    }

    /**
     * Looks at a solid.
     *
     * @param kind what the record says of the hubs that it is for
     * @param outerHalf whether it stands on its outside, so that its troughs rise outwards
     * @param facets its facets
     * @param findings takes what is wrong
     */
    public static void of(HubKind kind, boolean outerHalf, Facets facets, Findings findings) {
        boolean asked = !kind.struts().isEmpty()
                && kind.axialAngles().size() == kind.struts().size()
                && kind.gaps().size() + 1 >= kind.struts().size()
                && kind.axialAngles().stream().allMatch(axial -> axial > 0.1 && axial < 90);
        if (!asked) {
            return;
        }
        HandCheck check = new HandCheck(kind, outerHalf, facets);
        if (!check.stands(false) && check.stands(true)) {
            findings.add(
                    Fault.MIRRORED,
                    kind.mark(),
                    "its seats for " + String.join(" ", kind.struts())
                            + " stand clockwise round the hub, as in a mirror, not counter-clockwise seen from outside.");
        }
    }

    /** Whether, turned somehow, there is a rim where each strut should be. */
    private boolean stands(boolean mirrored) {
        // who looks at a half that stands on its outside looks from inside
        boolean clockwise = mirrored != outerHalf;
        return rims.get(0).bearings().stream().anyMatch(first -> stands(first, clockwise ? -1 : 1));
    }

    private boolean stands(double first, int way) {
        double bearing = first;
        for (int strut = 0; strut < rims.size(); strut++) {
            if (rims.get(strut).areaMm2(bearing) < LEAST_MM2) {
                return false;
            }
            bearing += strut < kind.gaps().size()
                    ? way * StrictMath.toRadians(kind.gaps().get(strut))
                    : 0;
        }
        return true;
    }
}
