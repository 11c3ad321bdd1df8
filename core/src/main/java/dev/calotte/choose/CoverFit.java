package dev.calotte.choose;

import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Seams;
import dev.calotte.pattern.Splitting;
import dev.calotte.stock.Stock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How the patterns of a cover come out of its stock.
 *
 * <pre>{@code
 * CoverFit fit = CoverFit.of(Patterns.of(parts, cover), List.of(new Sheet(2440, 1220, 10, Terms.OPEN)));
 * boolean everyPanelFits = fit.misfits().isEmpty();
 * }</pre>
 *
 * @param patterns the patterns
 * @param stocks the sheets and rolls that they may be cut from
 * @param fits one for each pattern, in their order
 */
public record CoverFit(Patterns patterns, List<Stock> stocks, List<PatternFit> fits) {

    /**
     * Copies the lists.
     *
     * @param patterns the patterns
     * @param stocks the stock
     * @param fits one for each pattern
     */
    public CoverFit {
        stocks = List.copyOf(stocks);
        fits = List.copyOf(fits);
    }

    /**
     * Lays each pattern on the stock, and divides those that do not fit where the cover allows it. Seams that only save
     * stock are found by {@link SeamSaving}.
     *
     * @param patterns the patterns of a cover
     * @param stocks sheets, rolls and irregular outlines; none if it is not known what the cover is cut from: then everything fits
     * @return how they fit
     */
    public static CoverFit of(Patterns patterns, List<Stock> stocks) {
        return new CoverFit(
                patterns,
                stocks,
                patterns.list().stream()
                        .map(pattern -> fit(patterns, pattern, stocks))
                        .toList());
    }

    private static PatternFit fit(Patterns patterns, Pattern pattern, List<Stock> stocks) {
        Fit whole = stocks.isEmpty() ? new Fit(0) : Fit.of(pattern.whole(), stocks);
        Optional<List<CutPiece>> parts = Optional.empty();
        if (!whole.fits() && patterns.cover().treatment().split() != Splitting.NEVER) {
            parts = new SeamSearch(new Seams(patterns.cover(), pattern), stocks).parts();
        }
        return new PatternFit(pattern, whole, parts.orElse(List.of(pattern.whole())));
    }

    /**
     * The patterns that cannot be cut, in one piece or in parts.
     *
     * @return the worst first
     */
    public List<PatternFit> misfits() {
        return fits.stream()
                .filter(fit -> !fit.canBeCut())
                .sorted(Comparator.comparingDouble(fit -> -fit.whole().overByMm()))
                .toList();
    }

    /**
     * The seams inside panels.
     *
     * @return how long all of them are together, in millimetres
     */
    public double seamMm() {
        double total = 0;
        for (PatternFit fit : fits) {
            // each seam is told by the parts on both its sides
            total += fit.pattern().count()
                    / 2.0
                    * fit.pieces().stream()
                            .flatMap(piece -> piece.seams().stream())
                            .mapToDouble(mm -> mm)
                            .sum();
        }
        return total;
    }
}
