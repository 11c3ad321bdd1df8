package dev.calotte.assembly;

/** From which end a dome is put together. */
public enum Raise {
    /** Row by row from the base up. */
    BASE,
    /** The crown on the ground first; it is lifted row by row, and each lower row is added below what hangs. */
    CROWN
}
