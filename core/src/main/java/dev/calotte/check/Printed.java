package dev.calotte.check;

/** How exact what is read can be, from the decimals with which it was written. */
final class Printed {

    /** Lengths of the record have nine decimals; what is computed of a few of them is off by a few times half of the last. */
    static final double RECORD_MM = 1e-8;

    /**
     * Angles of the record, in degrees, have nine decimals, but those recomputed from places in space are off by the error
     * of the places over the shortest strut: 1e-8 mm over 10 mm.
     */
    static final double RECORD_DEG = 1e-6;

    /** Areas and factors have twelve decimals; those of areas are again from lengths: 1e-8 mm times 10 m, in m². */
    static final double RECORD_FINE = 1e-9;

    /** Drawings have six decimals at most, SVG three in places that are read by eye; half of 1e-6 in x and in y, twice. */
    static final double FILE_MM = 2e-6;

    private Printed() {}
}
