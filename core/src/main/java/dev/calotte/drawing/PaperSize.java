package dev.calotte.drawing;

import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * The size of a page: ISO 216 A4 to A0, in inches ASME Y14.1 A to E, and beyond the largest twice as long each.
 *
 * @param widthMm from left to right
 * @param heightMm upwards
 */
record PaperSize(double widthMm, double heightMm) {

    private static final double INCH = 25.4;
    private static final int HOW_MANY = 11;

    /** The sizes upright, the smallest first. */
    static List<PaperSize> of(UnitSystem units) {
        List<PaperSize> sizes = new ArrayList<>(
                units == UnitSystem.METRIC
                        ? List.of(of(210, 297), of(297, 420), of(420, 594), of(594, 841), of(841, 1189))
                        : List.of(inches(8.5, 11), inches(11, 17), inches(17, 22), inches(22, 34), inches(34, 44)));
        while (sizes.size() < HOW_MANY) {
            PaperSize last = sizes.get(sizes.size() - 1);
            sizes.add(of(last.heightMm, 2 * last.widthMm));
        }
        return List.copyOf(sizes);
    }

    private static PaperSize of(double across, double up) {
        return new PaperSize(across, up);
    }

    private static PaperSize inches(double width, double height) {
        return new PaperSize(width * INCH, height * INCH);
    }

    PaperSize onItsSide() {
        return of(heightMm, widthMm);
    }
}
