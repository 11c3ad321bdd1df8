package dev.calotte.choose;

import dev.calotte.dome.Size;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import dev.calotte.stock.Bar;
import java.util.List;
import java.util.Optional;

/**
 * How much stock a dome takes when it is built a little smaller or larger: up to a tenth either way. Stock comes in steps,
 * so that a little less dome can save a sheet or several bars, and a little more may cost nothing.
 *
 * <p>Each step was tried: in that size a plan exists that spends what it says. Since the pieces of a smaller dome lie
 * inside those of a larger one, it holds for all smaller sizes as well; where panels are divided, with seams at the same
 * parts of their height. Other sizes of covers are judged by first plans with the fewest seams, so there may be nearer
 * steps that are not seen here. Bars are cut with the least, so that of them none is missed but where the number would
 * rise and fall again.
 *
 * <pre>{@code
 * Resizing resizing = new Resizing(size -> Parts.of(Dome.of(spec.withSize(size)), joinery), spec.size(), 10, true);
 * Optional<StockCurve> curve = StockCurve.ofCover(plan, resizing, Layout.quick(5));
 * }</pre>
 *
 * @param by the measure of the sizes
 * @param measure what is spent: pieces where there is one sort of sheets, or of bars by length; else length of roll, price
 *     or area
 * @param spent what the dome takes as it is
 * @param smaller smaller sizes that take less, the largest first; of rolls, whose length has no steps, 5 % less, and 10 %
 *     where there is time
 * @param larger the largest size that takes no more, if there is one; of rolls what 5 % more takes
 */
public record StockCurve(Size.Measure by, Measure measure, double spent, List<Step> smaller, Optional<Step> larger) {

    /**
     * Copies the list.
     *
     * @param by the measure of the sizes
     * @param measure what is spent
     * @param spent what the dome takes as it is
     * @param smaller smaller sizes that take less
     * @param larger the largest size that takes no more
     */
    public StockCurve {
        smaller = List.copyOf(smaller);
    }

    /**
     * A size and what it takes.
     *
     * @param size the size in the measure of the curve: millimetres, of a floor area square millimetres
     * @param spent what is spent, in the measure of the stock
     * @param yields struts of which more than in the asked size come out of one bar; none for covers
     */
    public record Step(double size, double spent, List<Yield> yields) {

        /**
         * Copies the list.
         *
         * @param size the size
         * @param spent what is spent
         * @param yields struts of which more come out of one bar
         */
        public Step {
            yields = List.copyOf(yields);
        }
    }

    /**
     * How many struts of a kind come out of one bar.
     *
     * @param mark the mark of the kind
     * @param each how many there are
     * @param barMm how long the bar is
     */
    public record Yield(String mark, int each, double barMm) {}

    /**
     * The steps of a cover.
     *
     * @param plan its plan in the asked size
     * @param resizing the dome in other sizes
     * @param layout how far pieces stay apart, and whether there is time: without steps only a few sizes are tried
     * @return its steps; nothing if there are too many pieces to try other sizes quickly
     */
    public static Optional<StockCurve> ofCover(CoverPlan plan, Resizing resizing, Layout layout) {
        return new CoverSteps(plan, resizing, layout).curve();
    }

    /**
     * The steps of a frame's bars.
     *
     * @param plan its plan in the asked size
     * @param bars the stock
     * @param resizing the dome in other sizes
     * @return its steps; nothing if there are too many kinds to try other sizes quickly, or if kinds change with the
     *     size
     */
    public static Optional<StockCurve> ofBars(BarPlan plan, List<Bar> bars, Resizing resizing) {
        return new BarSteps(plan, bars, resizing).curve();
    }
}
