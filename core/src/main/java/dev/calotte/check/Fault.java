package dev.calotte.check;

/** What can be wrong with what was written. */
public enum Fault {
    /** The bytes of a file are not those that were written. */
    CHANGED,
    /** A file or a piece that belongs here is not there. */
    MISSING,
    /** A file or a piece that does not belong here. */
    FOREIGN,
    /** A piece that is there more often than it should be. */
    DOUBLED,
    /** A file that cannot be read as what it should be. */
    UNREADABLE,
    /** Two places that should say the same do not. */
    DIFFERENT,
    /** All of a file is larger or smaller than it should be. */
    SCALED,
    /** A piece that is the mirror image of what it should be, or turned inside out. */
    MIRRORED,
    /** A piece that lies elsewhere. */
    MOVED,
    /** Pieces that do not meet where they should. */
    GAPING,
    /** Pieces of which one lies on the other. */
    OVERLAPPING,
    /** A piece that does not lie wholly on its stock. */
    OUTSIDE,
    /** Lines that would be cut twice. */
    DOUBLE_CUT
}
