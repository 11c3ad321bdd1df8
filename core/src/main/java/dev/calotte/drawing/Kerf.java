package dev.calotte.drawing;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.units.NumberText;
import java.util.Optional;

/**
 * What a beam or a cutter takes away. Cut lines are moved to the waste side by half of it, so that a tool led along them
 * leaves the sizes that were drawn: outlines grow, openings and drilled holes shrink. What is engraved, scored or only
 * shown stays where it is.
 *
 * @param kerfMm how wide a cut is, above 0
 */
public record Kerf(double kerfMm) {

    private static final int DECIMALS = 3;

    /**
     * Checks the width.
     *
     * @param kerfMm how wide a cut is
     * @throws IllegalArgumentException if it is not finite and above 0
     */
    public Kerf {
        if (!(kerfMm > 0) || kerfMm == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("no cut is " + kerfMm + " mm wide");
        }
    }

    /**
     * Moves the cut lines of a drawing; to be done once.
     *
     * @param net a drawing of finished sizes
     * @return the same with its lines moved; its name ends with the kerf, and its title says it
     * @throws CalotteException if a line would vanish or cross itself
     */
    public Drawing of(Drawing net) {
        return new Drawing(
                net.name() + "-kerf" + width(),
                net.title() + ", cut lines moved by half of " + width() + " mm kerf",
                net.widthMm(),
                net.heightMm(),
                net.parts().stream().map(this::of).toList());
    }

    private String width() {
        return NumberText.trimmed(kerfMm, DECIMALS);
    }

    private Part of(Part part) {
        return new Part(
                part.mark(),
                part.description(),
                part.shapes().stream().map(shape -> of(part, shape)).toList());
    }

    private Shape of(Part part, Shape shape) {
        return switch (shape.operation()) {
            case ENGRAVE, SCORE, REF, SHEET -> shape;
            case DRILL, CUT_INNER, CUT_OUTER -> moved(shape).orElseThrow(() -> vanished(part));
        };
    }

    private Optional<? extends Shape> moved(Shape shape) {
        if (shape instanceof Circle circle) {
            double by = circle.operation() == Operation.CUT_OUTER ? kerfMm / 2 : -kerfMm / 2;
            return Optional.of(new Circle(circle.operation(), circle.xMm(), circle.yMm(), circle.radiusMm() + by))
                    .filter(moved -> moved.radiusMm() > 0);
        }
        Polyline path = (Polyline) shape;
        if (!path.isClosed()) {
            throw new IllegalArgumentException("a cut line that is not closed has no waste side");
        }
        return new ShiftedPath(path, kerfMm / 2).moved();
    }

    private CalotteException vanished(Part part) {
        return new CalotteException(
                Code.IMPOSSIBLE,
                "output.kerf",
                "a cut line of " + part.mark() + " vanishes or crosses itself when it is moved by half of " + width()
                        + " mm.",
                "Use a smaller kerf, or wider slots, notches and holes.");
    }
}
