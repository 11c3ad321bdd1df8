package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;

/** Reads {@code output.kerf}, and asks whether covers leave room for it. */
final class KerfReader {

    private static final double LEAST_MM = 0.001;
    private static final int DECIMALS = 4;

    private final double kerfMm;

    KerfReader(Fields output, UnitSystem units) {
        this.kerfMm = output.read("kerf", 0.0, node -> kerf(node, units));
    }

    double kerfMm() {
        return kerfMm;
    }

    private static double kerf(Node node, UnitSystem units) {
        double mm = Measured.notBelowZero(units).apply(node);
        if (mm > 0 && mm < LEAST_MM) {
            throw new Refusal(
                    Code.IMPOSSIBLE,
                    Values.text(node) + " is less than a thousandth of a millimetre.",
                    "Write what the cut takes away, as in kerf: 0.15 mm, or 0 mm.");
        }
        return mm;
    }

    /** Cut lines of neighbours must not cross, and none may leave the stock. */
    void check(Fields item, Covering covering) {
        if (covering.stocks().isEmpty() || kerfMm == 0) {
            return;
        }
        if (item.sound("spacing") && covering.spacingMm() < kerfMm) {
            item.refuse(
                    "spacing",
                    new Refusal(
                            Code.CONFLICT,
                            "pieces keep " + mm(covering.spacingMm()) + " apart, and the cut takes " + mm(kerfMm)
                                    + " away (output.kerf).",
                            "Set spacing to " + mm(kerfMm) + " or more."));
        }
        if (item.sound("stock") && covering.stocks().stream().anyMatch(stock -> stock.marginMm() < kerfMm / 2)) {
            item.refuse(
                    "stock",
                    new Refusal(
                            Code.CONFLICT,
                            "cut lines are moved by half of " + mm(kerfMm)
                                    + " (output.kerf), and would leave the stock.",
                            "Set margin to " + mm(kerfMm / 2) + " or more."));
        }
    }

    private static String mm(double length) {
        return NumberText.trimmed(length, DECIMALS) + " mm";
    }
}
