package dev.calotte.nest;

import dev.calotte.geometry.Polygon;
import dev.calotte.stock.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/**
 * What must be spent because of the area alone where there are irregular outlines: they are taken to be covered to the
 * last, the cheapest first, as far as they cost less than the other stock, and that covers the rest ({@link AreaBound}).
 * This is the linear programme over areas, of which outlines are the limited part.
 */
final class OutlineBound {

    private static final double ROUNDING = 1e-9;

    private final List<Field> outlines;
    private final List<Field> others;
    private final Charges charges;
    private final double gap;
    private final AreaBound area;

    OutlineBound(Kinds kinds, Charges charges, double spacing, List<Field> fields) {
        this.charges = charges;
        this.outlines = new ArrayList<>();
        this.others = new ArrayList<>();
        for (Field field : fields) {
            (charges.stock(field) instanceof Outline ? outlines : others).add(field);
        }
        AreaBound spaced = new AreaBound(kinds, charges, spacing);
        // where the ends of rolls gain by the spacing, the parts alone are what is certain
        this.gap = others.stream().anyMatch(spaced::gainsAtEnds) ? 0 : spacing;
        this.area = new AreaBound(kinds, charges, gap);
        outlines.sort(Comparator.comparingDouble(this::unit));
    }

    /** No plan on the fields spends less. */
    double least() {
        double other = others.stream().mapToDouble(area::unit).min().orElse(Double.POSITIVE_INFINITY);
        double rest = area.covered(gap);
        double least = 0;
        for (Field field : outlines) {
            int have = charges.stock(field).terms().have().orElseThrow();
            double taken = unit(field) < other ? Math.min(rest, have * capacity(field)) : 0;
            least += taken * unit(field);
            rest -= taken;
        }
        least += others.isEmpty() ? 0 : rest * other;
        return charges.measure() == Measure.PIECES ? Math.ceil(least - ROUNDING) : least;
    }

    private double unit(Field field) {
        return charges.rate(field.stock()) / capacity(field);
    }

    /**
     * The area that parts with their half spacings may cover at most: they lie in the outline where the margin is no less
     * than that, else in what is parallel to it, whose area is by Steiner's formula no more than that of the convex case.
     */
    private double capacity(Field field) {
        Outline outline = (Outline) charges.stock(field);
        Polygon border = outline.border();
        double beyond = Math.max(0, gap / 2 - outline.marginMm()) + 2 * Room.TOUCHING_MM;
        double round = 0;
        for (int c = 0; c < border.size(); c++) {
            round += border.corner(c).distance(border.corner(c + 1));
        }
        double parallel = border.area() + round * beyond + FastMath.PI * beyond * beyond;
        return Math.min(parallel, area.capacity(field));
    }
}
