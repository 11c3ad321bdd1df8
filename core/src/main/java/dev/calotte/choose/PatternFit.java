package dev.calotte.choose;

import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import java.util.List;

/**
 * How a pattern comes out of the stock of its cover.
 *
 * @param pattern the pattern
 * @param whole how it fits in one piece
 * @param pieces what is cut for it: the whole, or the parts between seams
 */
public record PatternFit(Pattern pattern, Fit whole, List<CutPiece> pieces) {

    /**
     * Copies the list.
     *
     * @param pattern the pattern
     * @param whole how it fits in one piece
     * @param pieces what is cut for it
     */
    public PatternFit {
        pieces = List.copyOf(pieces);
    }

    /**
     * Whether it can be cut, in one piece or in parts.
     *
     * @return whether all of its pieces fit
     */
    public boolean canBeCut() {
        return whole.fits() || pieces.size() > 1;
    }
}
