package dev.calotte.model;

/** A way to build the model. */
public enum ModelKind {
    /** Discs with slots for hubs, and flat struts with notches that hook into them. */
    SLOTTED,
    /** The panels unfolded into as few pieces as the card takes, with tabs. */
    NET,
    /** Every panel by itself, with tabs: for card too thick to fold far. */
    PANELS
}
