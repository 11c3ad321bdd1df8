package dev.calotte.nest;

import java.util.List;
import org.apache.commons.math3.util.FastMath;

/**
 * What must be spent because of the area alone. Parts grown by half the spacing do not lie on each other, and lie in the
 * field grown by half the spacing, with round corners.
 */
final class AreaBound {

    private static final double ROUNDING = 1e-9;

    private final Kinds kinds;
    private final Charges charges;
    private final double spacing;

    AreaBound(Kinds kinds, Charges charges, double spacing) {
        this.kinds = kinds;
        this.charges = charges;
        this.spacing = spacing;
    }

    /** No plan on these fields spends less. */
    double of(List<Field> fields) {
        double least = Double.POSITIVE_INFINITY;
        for (Field field : fields) {
            double rate = charges.rate(field.stock());
            double amount = field.isRoll() ? taken(field, fields.size() == 1) : covered(spacing) / area(field);
            least = Math.min(least, rate * amount);
        }
        return charges.measure() == Measure.PIECES ? Math.ceil(least - ROUNDING) : least;
    }

    /** What a square millimetre of parts with their half spacings costs at least on a field, ends of rolls left aside. */
    double unit(Field field) {
        double rate = charges.rate(field.stock());
        return field.isRoll() ? rate / (field.width() + spacing) : rate / area(field);
    }

    /** Whether what the ends of a roll gain is more than its margins take. */
    boolean gainsAtEnds(Field roll) {
        return roll.isRoll() && 2 * roll.margin() < ends(roll) / (roll.width() + spacing);
    }

    double covered(double gap) {
        double covered = 0;
        for (int kind = 0; kind < kinds.count(); kind++) {
            covered += kinds.piece(kind).count() * kinds.coveredMm2(kind, gap);
        }
        return covered;
    }

    private double ends(Field field) {
        return field.width() * spacing + FastMath.PI * spacing * spacing / 4;
    }

    private double area(Field sheet) {
        return sheet.length() * (sheet.width() + spacing) + ends(sheet);
    }

    /** The area that parts with their half spacings may cover on a sheet, even those that touch its edges. */
    double capacity(Field sheet) {
        return area(sheet) + 2 * Room.TOUCHING_MM * (sheet.length() + sheet.width() + spacing);
    }

    private double taken(Field roll, boolean alone) {
        double across = roll.width() + spacing;
        double lost = 2 * roll.margin() - ends(roll) / across;
        // where the ends of a roll gain more than their margins take, many short lengths could beat one
        return lost < 0 ? covered(0) / roll.width() : covered(spacing) / across + (alone ? lost : 0);
    }
}
