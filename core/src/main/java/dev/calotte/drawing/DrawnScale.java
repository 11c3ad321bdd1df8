package dev.calotte.drawing;

import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.List;

/**
 * How many times smaller a thing is drawn: the scales of ISO 5455 and the steps between them that rulers have, in feet
 * those of a tape.
 *
 * @param ratio how many millimetres one on paper stands for
 */
record DrawnScale(double ratio) {

    private static final List<Double> RULER = List.of(1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5);
    private static final List<Double> TAPE = List.of(1.0, 1.5);
    private static final double LARGEST = 1e15;
    private static final int LEAST_POWER = -3;

    /** The largest scale at which a length fits the room. */
    static DrawnScale fitting(double lengthMm, double roomMm, UnitSystem units) {
        if (!(lengthMm / roomMm < LARGEST)) {
            throw new IllegalArgumentException("nothing " + lengthMm + " mm long is drawn on " + roomMm + " mm");
        }
        boolean metric = units == UnitSystem.METRIC;
        double step = metric ? 10 : 2;
        double unit = 1;
        for (int power = metric ? LEAST_POWER : 4 * LEAST_POWER; power < 0; power++) {
            unit /= step;
        }
        for (; ; unit *= step) {
            for (double part : metric ? RULER : TAPE) {
                if (lengthMm / (unit * part) <= roomMm) {
                    return new DrawnScale(unit * part);
                }
            }
        }
    }

    double onPaper(double lengthMm) {
        return lengthMm / ratio;
    }

    String text() {
        return ratio < 1 ? NumberText.trimmed(1 / ratio, 2) + ":1" : "1:" + NumberText.trimmed(ratio, 2);
    }
}
