package dev.calotte.dxf;

import dev.calotte.dxf.TagReader.Tag;

/** What the header says of units; codes of {@code $INSUNITS} by the AutoCAD 2000 DXF Reference, header section. */
final class Units {

    private static final double INCH = 25.4;

    private int insunits;
    private int measurement = 1;

    void learn(String variable, Tag tag) throws DxfFormatException {
        if (variable.equals("$INSUNITS")) {
            insunits = tag.whole();
            if (insunits != 0 && millimetres(insunits) == 0) {
                throw tag.wrong("the file is in a unit that nobody draws outlines in, $INSUNITS " + insunits);
            }
        } else if (variable.equals("$MEASUREMENT")) {
            measurement = tag.whole();
        }
    }

    /** How long the unit is. */
    double millimetres() {
        if (insunits != 0) {
            return millimetres(insunits);
        }
        return measurement == 0 ? INCH : 1;
    }

    private static double millimetres(int unit) {
        return switch (unit) {
            case 1 -> INCH;
            case 2 -> 12 * INCH;
            case 4 -> 1;
            case 5 -> 10;
            case 6 -> 1000;
            case 9 -> INCH / 1000;
            case 10 -> 36 * INCH;
            case 13 -> 0.001;
            case 14 -> 100;
            default -> 0;
        };
    }
}
