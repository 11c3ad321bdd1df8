package dev.calotte.pattern;

/**
 * What matters when the pieces of a cover are laid on stock and joined.
 *
 * @param reversible whether a piece may be turned over, both faces being alike
 * @param grain whether every piece keeps its marked direction along the stock. It is square to the side of the panel
 *     that lies most nearly level, so that flutes and folds run down the slope
 * @param split whether panels may be divided
 * @param coded whether notches tell right neighbours from wrong ones
 */
public record Treatment(boolean reversible, boolean grain, Splitting split, boolean coded) {

    /** One good face, no grain, whole panels, no notches. */
    public static final Treatment PLAIN = new Treatment(false, false, Splitting.NEVER, false);
}
