package dev.calotte.bill;

import java.util.Locale;

/** What a line of a bill is about. */
public enum Item {
    /** Lengths that struts or rails are cut from. */
    BAR(true),
    /** Sheets that panels are cut from. */
    SHEET(true),
    /** Irregular pieces that are at hand. */
    OFFCUT(true),
    /** Cloth or film by the metre. */
    ROLL(true),
    /** What holds the struts at a hub together. */
    BOLT(true),
    /** What holds a panel. */
    FASTENER(true),
    /** A strut, cut to length. */
    STRUT(false),
    /** A mitred rail. */
    RAIL(false),
    /** A panel, as a net triangle. */
    PANEL(false),
    /** A hub or what stands in its place. */
    HUB(false),
    /** An upright of the wall under the base ring. */
    RISER_UPRIGHT(false),
    /** A plate under that wall. */
    RISER_BOTTOM_PLATE(false),
    /** A bay of that wall. */
    RISER_BAY(false);

    private final boolean bought;

    Item(boolean bought) {
        this.bought = bought;
    }

    /**
     * Whether it is bought as it is; all else is made.
     *
     * @return true for stock and hardware
     */
    public boolean bought() {
        return bought;
    }

    /**
     * What people call it.
     *
     * @return for example {@code riser bay}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
