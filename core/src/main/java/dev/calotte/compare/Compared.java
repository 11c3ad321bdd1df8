package dev.calotte.compare;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Measures;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.util.FastMath;

/**
 * A dome of a comparison in figures.
 *
 * @param candidate the candidate
 * @param spec the same in its size
 * @param measures its measures
 * @param roomMm3 the space inside over the mean height of its base hubs
 * @param counts how many pieces and kinds it has
 * @param work what it asks of whoever cuts and joins it
 * @param bars what its frame takes of bars, if the request names some
 * @param stocks what its covers take, those that have a stock; empty if it does not fit
 * @param planned whether the pieces were laid; if not, what covers take is estimated
 * @param massKg what struts and panels weigh, of bars and covers whose mass is known
 * @param best whether no other is as good in all criteria and better in one
 */
public record Compared(
        Candidate candidate,
        DomeSpec spec,
        Measures measures,
        double roomMm3,
        Counts counts,
        Work work,
        Optional<BarUse> bars,
        List<StockUse> stocks,
        boolean planned,
        OptionalDouble massKg,
        boolean best) {

    /**
     * Copies the list.
     *
     * @param candidate the candidate
     * @param spec the same in its size
     * @param measures its measures
     * @param roomMm3 the space inside
     * @param counts how many pieces and kinds it has
     * @param work what it asks of whoever cuts and joins it
     * @param bars what its frame takes of bars
     * @param stocks what its covers take
     * @param planned whether the pieces were laid
     * @param massKg what it weighs
     * @param best whether no other is better all round
     */
    public Compared {
        stocks = List.copyOf(stocks);
    }

    static Compared of(Request request, Draft draft, List<StockUse> stocks, boolean planned) {
        return new Compared(
                draft.candidate(),
                draft.spec(),
                draft.parts().dome().measures(),
                roomMm3(draft.parts().dome()),
                Counts.of(draft.parts()),
                Work.of(draft.parts(), draft.fits()),
                draft.bars(),
                stocks,
                planned,
                draft.massKg(request),
                false);
    }

    /** A wall below base hubs that stand high is no gain: what it would enclose, on average, is taken off. */
    private static double roomMm3(Dome dome) {
        Measures measures = dome.measures();
        double[] base = dome.baseRing().stream()
                .mapToDouble(hub -> dome.hubs().get(hub).position().getZ())
                .toArray();
        if (base.length == 0) {
            return measures.volumeMm3();
        }
        double gap = Arrays.stream(base).sum() / base.length
                - Arrays.stream(base).min().orElseThrow();
        return measures.volumeMm3() - measures.floorAreaMm2() * gap;
    }

    Compared withBest(boolean other) {
        return new Compared(candidate, spec, measures, roomMm3, counts, work, bars, stocks, planned, massKg, other);
    }

    /**
     * Whether it can be built of the stock.
     *
     * @return false if a panel fits no stock, in one piece or with the seams that its cover allows
     */
    public boolean fits() {
        return work.fits() != Work.Fits.NO;
    }

    /**
     * What bars and stock cost, of those that have prices.
     *
     * @return the sum; absent if nothing has a price, or a panel does not fit
     */
    public OptionalDouble price() {
        if (!fits()) {
            return OptionalDouble.empty();
        }
        return Draft.sum(
                Stream.concat(bars.stream().map(BarUse::price), stocks.stream().map(StockUse::price))
                        .filter(OptionalDouble::isPresent)
                        .toList());
    }

    /**
     * The area of the stock that covers take.
     *
     * @return in square millimetres; absent without stock, or if a panel does not fit
     */
    public OptionalDouble stockMm2() {
        return stocks.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        stocks.stream().mapToDouble(StockUse::areaMm2).sum());
    }

    /**
     * What the room inside costs, large and small domes on a par: the price, or in square metres the stock where there
     * are no prices, over that power of the room in cubic metres, 2/3, which grows with the size as a skin does.
     *
     * @return the quotient; absent where neither is known
     */
    public OptionalDouble perRoom() {
        double metres = FastMath.cbrt(roomMm3) / 1000;
        OptionalDouble spent = price();
        if (spent.isPresent()) {
            return OptionalDouble.of(spent.getAsDouble() / (metres * metres));
        }
        return stockMm2().isPresent()
                ? OptionalDouble.of(stockMm2().getAsDouble() / 1e6 / (metres * metres))
                : OptionalDouble.empty();
    }

    /**
     * How much of the stock becomes parts.
     *
     * @return from 0 to 1; absent without stock, or if a panel does not fit
     */
    public OptionalDouble utilisation() {
        double parts = stocks.stream().mapToDouble(StockUse::partsMm2).sum();
        return stockMm2().isPresent() ? OptionalDouble.of(parts / stockMm2().getAsDouble()) : OptionalDouble.empty();
    }
}
