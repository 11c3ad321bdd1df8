package dev.calotte.stock;

import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.SelfCrossing;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * An irregular piece of sheet material that is at hand, such as an offcut. A grain runs along x. There is always a limited
 * number of it, and it costs nothing unless it has a price.
 *
 * @param name what it is called, for example after its file
 * @param border its outline, which may be hollow; the lower left corner of its bounding rectangle is the origin
 * @param marginMm what is left unused along all of the outline
 * @param terms price of a piece, mass of a square metre, how many; both price and number are present
 */
public record Outline(String name, Polygon border, double marginMm, Terms terms) implements Stock {

    private static final Vector2D RIGHT = new Vector2D(1, 0);
    private static final Vector2D UP = new Vector2D(0, 1);

    /**
     * Checks the outline, moves it to the origin and fills in that there is one for nothing.
     *
     * @param name what it is called
     * @param border its outline, anywhere
     * @param marginMm 0 or more
     * @param terms price, mass, how many: 0 and 1 where nothing is said
     * @throws IllegalArgumentException if the outline crosses itself, the margins use up its bounding rectangle, or a size
     *     is not finite
     */
    public Outline {
        border = atOrigin(border);
        terms = new Terms(
                OptionalDouble.of(terms.price().orElse(0)),
                terms.massKg(),
                OptionalInt.of(terms.have().orElse(1)));
        double length = border.extent(RIGHT);
        double width = border.extent(UP);
        if (!(marginMm >= 0 && Math.min(length, width) > 2 * marginMm && Double.isFinite(length + width))) {
            throw new IllegalArgumentException(
                    "no outline is " + length + " by " + width + " mm with a margin of " + marginMm);
        }
        if (SelfCrossing.of(border).isPresent()) {
            throw new IllegalArgumentException("the outline " + name + " crosses itself");
        }
    }

    private static Polygon atOrigin(Polygon border) {
        double x = border.reach(RIGHT.negate());
        double y = border.reach(UP.negate());
        double[] xy = new double[2 * border.size()];
        for (int c = 0; c < border.size(); c++) {
            xy[2 * c] = border.x(c) + x;
            xy[2 * c + 1] = border.y(c) + y;
        }
        return Polygon.of(xy);
    }

    /**
     * How far it reaches along the grain.
     *
     * @return the length of its bounding rectangle
     */
    public double lengthMm() {
        return border.extent(RIGHT);
    }

    /**
     * How far it reaches across the grain.
     *
     * @return the width of its bounding rectangle
     */
    public double widthMm() {
        return border.extent(UP);
    }
}
