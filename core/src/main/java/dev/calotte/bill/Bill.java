package dev.calotte.bill;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What is bought for a dome, and what is made of it. Spares are whole pieces, one at least of each sort; those of struts
 * come out of spare bars, those of panels out of spare sheets. Common practice, no source.
 *
 * <pre>{@code
 * Needs needs = new Needs(parts, Optional.empty(), Optional.empty(), List.of(fit), List.of(plan), 0.05);
 * for (BillLine line : Bill.of(needs).bought()) {
 *     double pieces = line.needed() + line.spare();
 * }
 * }</pre>
 *
 * @param lines what is bought first, then what is made, each in the order of marks
 */
public record Bill(List<BillLine> lines) {

    /**
     * Copies the list.
     *
     * @param lines what is bought and what is made
     */
    public Bill {
        lines = List.copyOf(lines);
    }

    /**
     * Counts what a dome takes.
     *
     * @param needs what is to be counted
     * @return the bill
     */
    public static Bill of(Needs needs) {
        return new BillMaking(needs).bill();
    }

    /**
     * What is bought.
     *
     * @return stock, then hardware; unmodifiable
     */
    public List<BillLine> bought() {
        return lines.stream().filter(line -> line.item().bought()).toList();
    }

    /**
     * What is made.
     *
     * @return in the order of marks; unmodifiable
     */
    public List<BillLine> made() {
        return lines.stream().filter(line -> !line.item().bought()).toList();
    }

    /**
     * What all that has a price costs, spares included.
     *
     * @return in the currency of the prices; absent if nothing has one
     */
    public OptionalDouble price() {
        return sum(BillLine::price);
    }

    /**
     * Whether something is bought whose price is not known.
     *
     * @return true if the price is that of a part only
     */
    public boolean lacksPrices() {
        return bought().stream().anyMatch(line -> line.price().isEmpty());
    }

    private OptionalDouble sum(Function<BillLine, OptionalDouble> value) {
        List<Double> known = bought().stream()
                .map(value)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
        return known.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(known.stream().mapToDouble(each -> each).sum());
    }
}
