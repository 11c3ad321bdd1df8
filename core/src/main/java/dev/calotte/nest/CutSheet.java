package dev.calotte.nest;

import dev.calotte.stock.Outline;
import dev.calotte.stock.Stock;
import java.util.List;

/**
 * One sheet, or what is taken from a roll, with all that lies on it.
 *
 * @param stock the sheet or roll
 * @param lengthMm how long it is: of a roll, what is taken from it, margins included
 * @param widthMm how wide it is
 * @param parts what lies on it
 * @param offcuts what is left and worth keeping, largest first
 */
public record CutSheet(Stock stock, double lengthMm, double widthMm, List<Placed> parts, List<Offcut> offcuts) {

    /**
     * Copies the lists.
     *
     * @param stock the sheet or roll
     * @param lengthMm how long it is
     * @param widthMm how wide it is
     * @param parts what lies on it
     * @param offcuts what is left
     */
    public CutSheet {
        parts = List.copyOf(parts);
        offcuts = List.copyOf(offcuts);
    }

    /**
     * Its own area.
     *
     * @return in square millimetres; of an irregular outline what is inside it
     */
    public double areaMm2() {
        return stock instanceof Outline outline ? outline.border().area() : lengthMm * widthMm;
    }

    /**
     * The area of what lies on it.
     *
     * @return in square millimetres
     */
    public double partsMm2() {
        return parts.stream().mapToDouble(part -> part.outline().area()).sum();
    }

    /** The same on the same stock by another name. */
    CutSheet of(Stock same) {
        return new CutSheet(same, lengthMm, widthMm, parts, offcuts);
    }
}
