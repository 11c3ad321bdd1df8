package dev.calotte.caution;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Measures;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import java.util.ArrayList;
import java.util.List;

/** Chooses the cautions that concern a dome. */
public final class Cautions {

    /** Beyond this radius wind and snow are named outright: the size of a garden dome that people stand in. */
    private static final double LARGE_RADIUS_MM = 2500;

    /** From this height on, falls are named: 29 CFR 1926.501 begins at 6 ft. */
    private static final double FALL_HEIGHT_MM = 1800;

    private static final Caution GEOMETRY = new Caution(
            "Geometry only",
            "Loads, members, joints and foundations are not checked.",
            "licensed structural engineer; local building authority");
    private static final Caution LOADS = new Caution(
            "Wind and snow",
            "Have wind, snow and anchors designed for this site. Wind lifts a light dome; snow lies unevenly on it.",
            "ASCE 7; EN 1991-1-3 and -1-4 with national annex; Japan: Building Standard Law; engineer");
    private static final Caution BASE = new Caution(
            "Base",
            "The frame is floppy until the base ring is fixed. The base must also resist outward thrust; never leave a"
                    + " light dome unanchored.",
            "engineer; erection plan");
    private static final Caution RAISING = new Caution(
            "Raising",
            "Half-built rows can collapse or snap through: prop and brace. Keep people out from under, and stop in"
                    + " wind.",
            "competent person; lifting rules");
    private static final Caution HEIGHTS = new Caution(
            "Heights",
            "Work from a scaffold or platform, never from the frame. No climbing on struts or panels.",
            "OSHA 29 CFR 1926.501 and .451; UK Work at Height Regulations 2005; local law");
    private static final Caution PERMIT = new Caution(
            "Permit",
            "\"No permit\" does not mean \"no code\". Limits differ by place and use.",
            "local building and planning office");
    private static final Caution TOLERANCE = new Caution(
            "Tolerance",
            "Errors show as dimples several times their size. About 1 / sin(axial angle) times; fix base holes last.",
            "your own trial fit");
    private static final Caution FILES = new Caution(
            "Files",
            "Check the 100 mm reference and cut one full triangle first. Patterns hold no kerf unless their names say so;"
                    + " without covers they are net.",
            "shop operator");
    private static final Caution TOOLS = new Caution(
            "Tools",
            "Guards, eye and ear protection, a jig for short parts. Know what a laser may not cut: never PVC, vinyl or"
                    + " coated cloth.",
            "tool manual; material safety data sheet");

    private static final Caution OPENING = new Caution(
            "Opening", "You removed struts or hubs. Reframe and brace the opening; have it checked.", "engineer");
    private static final Caution PANELS_OUT = new Caution(
            "Opening", "You left panels out and kept their struts. Frame the opening; have it checked.", "engineer");
    private static final Caution DOOR = new Caution(
            "Door",
            "Check exit width and height and escape window size. Fit smoke and CO alarms.",
            "local code (US: IRC R310, R311)");

    private static final Caution FLATTENED = new Caution(
            "Flattened ends",
            "Flattening weakens a tube's end. Scrap a piece that cracks at the fold; test-load a sample.",
            "CIDECT Design Guides 1 and 7; engineer");
    private static final Caution GLAZING = new Caution(
            "Panels",
            "Almost every panel counts as overhead glazing. Plain glass must not be used; leave room for heat and damp"
                    + " to move what you use; not to be walked on.",
            "glazing chapters of IBC/IRC; DIN 18008; CPSC 16 CFR 1201, ANSI Z97.1; sheet maker");
    private static final Caution CLOTH = new Caution(
            "Cloth",
            "Flame claims belong to the certified cloth. Sewing, washing and coating can void them; wind lifts a cloth"
                    + " cover, so never leave it unanchored.",
            "NFPA 701, CPAI-84, EN 15619, EN 13501-1; cloth maker");

    private Cautions() {}

    /**
     * The cautions that concern a dome as it is built and covered.
     *
     * @param parts the parts of the dome
     * @param covers its covers
     * @return those of the dome, the most general first, then those of its ends and covers
     */
    public static List<Caution> of(Parts parts, List<Cover> covers) {
        List<Caution> cautions = new ArrayList<>(of(parts.dome()));
        if (parts.joinery().ends() instanceof Ends.Flattened) {
            cautions.add(FLATTENED);
        }
        if (covers.stream().anyMatch(cover -> cover.sheeting().thicknessMm() > 0)) {
            cautions.add(GLAZING);
        }
        if (covers.stream().anyMatch(cover -> cover.allowances().wideMm() > 0)) {
            cautions.add(CLOTH);
        }
        return List.copyOf(cautions);
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
        cautions.add(GEOMETRY);
        if (m.radiusMm() > LARGE_RADIUS_MM) {
            cautions.add(LOADS);
        }
        if (!dome.baseRing().isEmpty()) {
            cautions.add(BASE);
        }
        cautions.add(RAISING);
        if (m.heightMm() > FALL_HEIGHT_MM) {
            cautions.add(HEIGHTS);
        }
        if (!dome.openings().isEmpty()) {
            boolean frameIsWhole = dome.struts().size() == dome.whole().struts().size();
            cautions.addAll(List.of(frameIsWhole ? PANELS_OUT : OPENING, DOOR));
        }
        cautions.addAll(List.of(PERMIT, TOLERANCE, FILES, TOOLS));
        return List.copyOf(cautions);
    }
}
