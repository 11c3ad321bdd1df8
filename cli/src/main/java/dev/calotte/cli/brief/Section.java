package dev.calotte.cli.brief;

/** A family of files that a brief can ask for. */
public enum Section {
    /** Cut lists and schedules as comma-separated values. */
    TABLES,
    /** Drawings for machines and CAD. */
    DXF,
    /** Drawings for the eye and for cutters. */
    SVG,
    /** Solids for printing. */
    STL,
    /** The page by which it is built. */
    BOOK
}
