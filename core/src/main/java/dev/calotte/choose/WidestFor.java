package dev.calotte.choose;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The largest dome whose every panel comes out of the stock of a cover in one piece, allowances included. A pattern of a
 * larger dome contains that of a smaller one, so what fits fits in every smaller dome, and the largest is where the worst
 * pattern just touches.
 *
 * <pre>{@code
 * Size largest = WidestFor.of(spec, joinery, cover, stocks).size();
 * }</pre>
 *
 * @param size the radius of that dome, to a millionth of a millimetre on the safe side
 * @param limiting the mark of the pattern that touches
 */
public record WidestFor(Size size, String limiting) {

    private static final double ACCURACY_MM = 1e-6;
    private static final int MOST_STEPS = 100;
    private static final double SOME_MM = 1000;

    /** How much a radius is enlarged or reduced to find one on either side. */
    private static final double STEP = 1.25;

    /**
     * Finds the largest dome.
     *
     * @param spec the dome; its size does not matter
     * @param joinery how its struts meet its hubs
     * @param cover the cover, whatever it says about splitting
     * @param stocks what it is cut from, at least one sheet or roll; irregular outlines, of which there are only so many,
     *     do not count
     * @return the largest radius and what limits it
     * @throws CalotteException if no dome fits, or what stays of the sphere depends on its size
     */
    public static WidestFor of(DomeSpec spec, Joinery joinery, Cover cover, List<Stock> stocks) {
        if (spec.keep() instanceof Keep.AboveHeight above && above.heightMm() != 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size.widest-for",
                    "which panels lie above that height depends on the size, which is asked for here.",
                    "Keep a fraction of the rows, or { above: 0 mm }, or give the radius.");
        }
        return of(radiusMm -> spec.withSize(Size.radius(radiusMm)), joinery, cover, stocks);
    }

    /**
     * Finds the largest dome where what is kept may grow with it.
     *
     * @param atMm the dome of each radius, the same part of the sphere for all
     * @param joinery how its struts meet its hubs
     * @param cover the cover, whatever it says about splitting
     * @param stocks what it is cut from, at least one sheet or roll; irregular outlines, of which there are only so many,
     *     do not count
     * @return the largest radius and what limits it
     * @throws CalotteException if no dome fits, or there are only irregular outlines
     */
    public static WidestFor of(DoubleFunction<DomeSpec> atMm, Joinery joinery, Cover cover, List<Stock> stocks) {
        Treatment t = cover.treatment();
        // dividing takes long, may be refused, and makes no difference to whole pieces
        Cover whole = cover.with(new Treatment(t.reversible(), t.grain(), Splitting.NEVER, t.coded()));
        List<Stock> lasting = Fit.lasting(stocks);
        if (lasting.isEmpty()) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size.widest-for",
                    "the cover has irregular outlines only, which do not say how large a panel may be.",
                    "List a sheet or a roll as well, or give the radius.");
        }
        return new Search(atMm, joinery, whole, lasting).largest();
    }

    private record Search(DoubleFunction<DomeSpec> atMm, Joinery joinery, Cover cover, List<Stock> stocks) {

        WidestFor largest() {
            double low = some();
            double high = low;
            while (over(high) <= 0) {
                low = high;
                high *= STEP;
            }
            while (over(low) > 0) {
                high = low;
                low = smaller(low);
            }
            double radius = new BracketingNthOrderBrentSolver(0, ACCURACY_MM, 0, 5)
                    .solve(MOST_STEPS, this::over, low, high, (low + high) / 2, AllowedSolution.BELOW_SIDE);
            return new WidestFor(Size.radius(radius), worst(radius).pattern().mark());
        }

        /** A radius at which the widest panel, without allowances, is about as wide as the stock. */
        private double some() {
            Parts bare = Parts.of(Dome.of(atMm.apply(SOME_MM)), Joinery.nodeToNode());
            double widest = bare.panelKinds().stream()
                    .mapToDouble(kind -> kind.triangle().narrowestWidth())
                    .max()
                    .orElseThrow();
            double width = stocks.stream().mapToDouble(Search::width).max().orElseThrow();
            return SOME_MM * width / widest;
        }

        private static double width(Stock stock) {
            return stock instanceof Roll roll ? roll.usableWidthMm() : ((Sheet) stock).usableWidthMm();
        }

        /** The next smaller radius to try, if a dome can be built with it at all. */
        private double smaller(double radiusMm) {
            double smaller = radiusMm / STEP;
            try {
                patterns(smaller);
                return smaller;
            } catch (CalotteException nothingLeft) {
                PatternFit worst = worst(radiusMm);
                String what = String.format(
                        Locale.ROOT,
                        "even at a radius of %.0f mm the panel %s is %.1f mm too wide, and in a smaller dome the joints"
                                + " use up the parts.",
                        radiusMm,
                        worst.pattern().mark(),
                        worst.whole().overByMm());
                throw new CalotteException(
                        Code.IMPOSSIBLE, "size.widest-for", what, "Take wider stock, or a higher breakdown.");
            }
        }

        private Patterns patterns(double radiusMm) {
            Parts parts = Parts.of(Dome.of(atMm.apply(radiusMm)), joinery);
            return Patterns.of(parts, cover);
        }

        private double over(double radiusMm) {
            return worst(radiusMm).whole().overByMm();
        }

        private PatternFit worst(double radiusMm) {
            return CoverFit.of(patterns(radiusMm), stocks).fits().stream()
                    .max(Comparator.comparingDouble(fit -> fit.whole().overByMm()))
                    .orElseThrow();
        }
    }
}
