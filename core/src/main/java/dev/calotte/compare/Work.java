package dev.calotte.compare;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.PatternFit;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Parts;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a dome asks of whoever cuts and joins it.
 *
 * @param fits how its panels come out of the stock
 * @param widthMm the narrowest width of its widest panel as it is cut: the one with the least to spare, without stock
 *     the widest; of the triangles between hub centres where there are no covers
 * @param spareMm how much smaller the stock could be, below 0 how much larger it must be; absent without stock
 * @param differenceMm by how little two kinds of struts or panels differ; absent where there is one kind of each
 * @param toleranceMm how exactly the workshop cuts
 * @param jointMm the length of all joints between panels, from hub centre to hub centre
 * @param seamMm the length of all seams inside panels, of all covers
 */
public record Work(
        Fits fits,
        double widthMm,
        OptionalDouble spareMm,
        OptionalDouble differenceMm,
        double toleranceMm,
        double jointMm,
        double seamMm) {

    /** Kinds that differ by fewer tolerances are easily taken for each other (common practice, no source). */
    private static final double TOLERANCES = 3;

    /** How panels come out of their stock. */
    public enum Fits {
        /** Every panel in one piece. */
        WHOLE,
        /** With seams. */
        SEAMS,
        /** It is not known what panels are cut from. */
        UNKNOWN,
        /** Not at all. */
        NO
    }

    /**
     * Whether two kinds differ by so little that a workshop may take them for each other.
     *
     * @return whether the difference is below three times the tolerance
     */
    public boolean isClose() {
        return differenceMm.isPresent() && differenceMm.getAsDouble() < TOLERANCES * toleranceMm;
    }

    static Work of(Parts parts, List<CoverFit> covers) {
        List<PatternFit> all =
                covers.stream().flatMap(cover -> cover.fits().stream()).toList();
        List<PatternFit> onStock = covers.stream()
                .filter(cover -> !cover.stocks().isEmpty())
                .flatMap(cover -> cover.fits().stream())
                .toList();
        return new Work(
                fits(onStock),
                onStock.stream()
                        .max(Comparator.comparingDouble(fit -> fit.whole().overByMm()))
                        .map(Work::widthMm)
                        .orElseGet(() -> widestMm(parts, all)),
                onStock.stream()
                        .mapToDouble(fit -> 0.0 - fit.whole().overByMm())
                        .min(),
                LeastDifference.ofMm(parts),
                parts.joinery().cutToleranceMm(),
                jointMm(parts),
                all.stream().mapToDouble(Work::seamMm).sum());
    }

    private static Fits fits(List<PatternFit> onStock) {
        if (onStock.isEmpty()) {
            return Fits.UNKNOWN;
        }
        if (!onStock.stream().allMatch(PatternFit::canBeCut)) {
            return Fits.NO;
        }
        return onStock.stream().allMatch(fit -> fit.pieces().size() == 1) ? Fits.WHOLE : Fits.SEAMS;
    }

    private static double widthMm(PatternFit fit) {
        return fit.pattern().whole().blank().narrowestWidth();
    }

    private static double widestMm(Parts parts, List<PatternFit> all) {
        return all.stream()
                .mapToDouble(Work::widthMm)
                .max()
                .orElseGet(() -> parts.panelKinds().stream()
                        .mapToDouble(kind -> kind.triangle().narrowestWidth())
                        .max()
                        .orElseThrow());
    }

    private static double jointMm(Parts parts) {
        return parts.dome().struts().stream()
                .filter(strut -> strut.dihedralRad().isPresent())
                .mapToDouble(Strut::lengthMm)
                .sum();
    }

    /** Both parts at a seam know its length. */
    private static double seamMm(PatternFit fit) {
        double twice = fit.pieces().stream()
                .flatMap(piece -> piece.seams().stream())
                .mapToDouble(Double::doubleValue)
                .sum();
        return fit.pattern().count() * twice / 2;
    }
}
