package dev.calotte.dxf;

import dev.calotte.document.Operation;

/**
 * A layer as the file declares it.
 *
 * @param name up to 31 of the characters A-Z 0-9 $ _ -
 * @param colour a number of the AutoCAD Color Index, from 1 to 255
 */
record Layer(String name, int colour) {

    /** The layer that every file has. */
    static final Layer ZERO = new Layer("0", 7);

    /** The pure hues of the colour index are 10, 20 ... 240. */
    private static final int HUES = 24;

    /** Prime to the number of hues, and far enough round the wheel to tell neighbours apart. */
    private static final int STRIDE = 7;

    /** The layer of an operation. */
    static Layer of(Operation operation) {
        return new Layer(operation.name(), colour(operation));
    }

    /** The layer at a place in a list, counted from 0. */
    static Layer numbered(String name, int place) {
        return new Layer(name, 10 + 10 * (place * STRIDE % HUES));
    }

    private static int colour(Operation operation) {
        return switch (operation) {
            case ENGRAVE -> 7;
            case SCORE -> 5;
            case DRILL -> 6;
            case CUT_INNER -> 30;
            case CUT_OUTER -> 1;
            case REF -> 3;
            case SHEET -> 4;
        };
    }
}
