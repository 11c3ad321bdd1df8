package dev.calotte.caution;

/** The texts of all cautions: common practice, with the standards and authorities that they defer to by number. */
final class KnownCautions {

    static final Caution GEOMETRY = new Caution(
            "Geometry only",
            "Loads, members, joints and foundations are not checked.",
            "licensed structural engineer; local building authority");
    static final Caution LOADS = new Caution(
            "Wind and snow",
            "Have wind, snow and anchors designed for this site. Wind lifts a light dome; snow lies unevenly on it.",
            "ASCE 7; EN 1991-1-3 and -1-4 with national annex; Japan: Building Standard Law; engineer");
    static final Caution BASE = new Caution(
            "Base",
            "The frame is floppy until the base ring is fixed. The base must also resist outward thrust; never leave a"
                    + " light dome unanchored.",
            "engineer; erection plan");
    static final Caution RAISING = new Caution(
            "Raising",
            "Half-built rows can collapse or snap through: prop and brace. Keep people out from under, and stop in"
                    + " wind.",
            "competent person; lifting rules");
    static final Caution LIFTING = new Caution(
            "Lifting",
            "A lift by mast or gin pole needs a lifting plan. Nobody stands under what hangs; prop it before a row is"
                    + " added below.",
            "competent person; lifting rules");
    static final Caution HEIGHTS = new Caution(
            "Heights",
            "Work from a scaffold or platform, never from the frame. No climbing on struts or panels.",
            "OSHA 29 CFR 1926.501 and .451; UK Work at Height Regulations 2005; local law");
    static final Caution PERMIT = new Caution(
            "Permit",
            "\"No permit\" does not mean \"no code\". Limits differ by place and use.",
            "local building and planning office");
    static final Caution TOLERANCE = new Caution(
            "Tolerance",
            "Errors show as dimples several times their size. About 1 / sin(axial angle) times; fix base holes last.",
            "your own trial fit");
    static final Caution FILES = new Caution(
            "Files",
            "Check the 100 mm reference and cut one full triangle first. Patterns hold no kerf unless their names say so;"
                    + " without covers they are net.",
            "shop operator");
    static final Caution TOOLS = new Caution(
            "Tools",
            "Guards, eye and ear protection, a jig for short parts. Know what a laser may not cut: never PVC, vinyl or"
                    + " coated cloth.",
            "tool manual; material safety data sheet");

    static final Caution OPENING = new Caution(
            "Opening", "You removed struts or hubs. Reframe and brace the opening; have it checked.", "engineer");
    static final Caution PANELS_OUT = new Caution(
            "Opening", "You left panels out and kept their struts. Frame the opening; have it checked.", "engineer");
    static final Caution DOOR = new Caution(
            "Door",
            "Check exit width and height and escape window size. Fit smoke and CO alarms.",
            "local code (US: IRC R310, R311)");

    static final Caution FLATTENED = new Caution(
            "Flattened ends",
            "Flattening weakens a tube's end. Scrap a piece that cracks at the fold; test-load a sample.",
            "CIDECT Design Guides 1 and 7; engineer");
    static final Caution PANELS = new Caution(
            "Panels",
            "Almost every panel counts as overhead glazing. Plain glass must not be used; leave room for heat and damp"
                    + " to move what you use; not to be walked on.",
            "glazing chapters of IBC/IRC; DIN 18008; CPSC 16 CFR 1201, ANSI Z97.1; sheet maker");
    static final Caution CLOTH = new Caution(
            "Cloth",
            "Flame claims belong to the certified cloth. Sewing, washing and coating can void them; wind lifts a cloth"
                    + " cover, so never leave it unanchored.",
            "NFPA 701, CPAI-84, EN 15619, EN 13501-1; cloth maker");

    static final Caution GLASS = new Caution(
            "Glass",
            "Almost every panel counts as overhead glazing. Plain glass must not be used; take laminated glass or an"
                    + " approved plastic.",
            "glazing chapters of IBC/IRC; DIN 18008; CPSC 16 CFR 1201, ANSI Z97.1");
    static final Caution PLASTIC = new Caution(
            "Plastic sheets",
            "Leave room for heat to move them, and oversize the holes. UV side out, flutes down the slope; not to be"
                    + " walked on. Almost every panel counts as overhead glazing.",
            "sheet maker's manual; glazing chapters of IBC/IRC");
    static final Caution NO_LASER = new Caution(
            "Polycarbonate",
            "Do not laser it: it burns, chars and gives off toxic fumes. Rout or saw it.",
            "material safety data sheet; laser maker");
    static final Caution PVC = new Caution(
            "PVC and vinyl",
            "NEVER laser them: they release hydrogen chloride. It harms lungs and machine; use a knife or saw.",
            "material safety data sheet; laser maker");
    static final Caution LASER = new Caution(
            "Laser",
            "Extract fumes outdoors and never leave it unattended. Keep an extinguisher at hand.",
            "laser maker; local fire rules");
    static final Caution PLYWOOD = new Caution(
            "Plywood",
            "Leave gaps of 3 mm; let sheets take on the air of the place first. Nails do not seal gaps; protect edges.",
            "APA guides; sheet maker");
    static final Caution DUST = new Caution(
            "Wood dust",
            "Extract it at its source and wear a fitted respirator. Limits are 5 mg/m³ for softwood, 3 or 2 for"
                    + " hardwood.",
            "HSE EH40; Directive (EU) 2017/2398; OSHA");
    static final Caution FILM = new Caution(
            "Light cover",
            "Wind lifts it with far more than its weight, so anchor it always. Not even for a break may it stand"
                    + " unanchored.",
            "engineer; guides to staking and ballast of the tent trade; anchor pull test on site");
    static final Caution PRINTED = new Caution(
            "Printed parts",
            "Jigs and models only, never structural. They are weak between layers, creep, and soften (PLA at about"
                    + " 60 °C).",
            "engineer if loaded");

    static final Caution TENT = new Caution(
            "If it is a tent for an event",
            "A permit and a flame certificate may be needed. Fix a wind limit; act at 60 % and 80 % of it.",
            "fire code official (IFC chapter 31); EN 13782; IStructE, Temporary demountable structures");
    static final Caution STOVE = new Caution(
            "If it has a stove or heater",
            "Clearances, flue, air supply and alarms come before the cover is cut.",
            "fire code; listing of the appliance");
    static final Caution AIR = new Caution(
            "If it is closed",
            "Closed covers overheat and drip. Give low inlets and high outlets (greenhouses: each 15 to 20 % of the"
                    + " floor).",
            "ASABE, local practice; code if lived in");
    static final Caution STORM = new Caution(
            "After storm or snow",
            "Inspect, tighten again, clear snow evenly from the ground. Do not go under a loaded frame.",
            "engineer if anything moved");
    static final Caution ZINC = new Caution(
            "If tubes are galvanised",
            "Do not weld or torch zinc without extraction. Deburr the ends and seal bare steel.",
            "welding guidance of HSE and OSHA");
    static final Caution PIPE = new Caution(
            "If struts are PVC pipe",
            "Plumbing pipe is not rated for structures. It is brittle in cold and sun; joints slip without pins.",
            "engineer; pipe maker");

    private KnownCautions() {}
}
