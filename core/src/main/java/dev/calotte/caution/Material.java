package dev.calotte.caution;

/** What a cover is made of, as far as that decides what to mind. */
public enum Material {
    /** Glass, laminated or not. */
    GLASS,
    /** Solid or multiwall polycarbonate. */
    POLYCARBONATE,
    /** Acrylic sheet. */
    ACRYLIC,
    /** Plywood and other boards of wood. */
    PLYWOOD,
    /** Woven cloth without a coating of PVC. */
    CLOTH,
    /** Cloth coated with PVC, or vinyl. */
    PVC_CLOTH,
    /** Film, such as that of greenhouses. */
    FILM
}
