package dev.calotte.compare;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What domes are ranked by. */
public enum Column {
    /** How little the dome differs from the own one. */
    NEAR(false, row -> some(row.candidate().steps())),
    /** What bars and stock cost, the least first. */
    PRICE(false, Compared::price),
    /** What the room inside costs, or takes of stock, the least first; see {@link Compared#perRoom()}. */
    PER_ROOM(false, Compared::perRoom),
    /** What it weighs, the lightest first. */
    MASS(false, Compared::massKg),
    /** The area of the stock that is used up, the least first. */
    STOCK(false, Compared::stockMm2),
    /** How much of the stock becomes parts, the most first. */
    USED(true, Compared::utilisation),
    /** The length of the bars, the least first. */
    BARS(false, row -> row.bars().map(bars -> some(bars.lengthMm())).orElse(OptionalDouble.empty())),
    /** The kinds of panels and struts, the fewest first. */
    KINDS(false, row -> some(row.counts().panelKinds() + row.counts().strutKinds())),
    /** The kinds of panels, the fewest first. */
    PANELS(false, row -> some(row.counts().panelKinds())),
    /** The kinds of struts, the fewest first. */
    STRUTS(false, row -> some(row.counts().strutKinds())),
    /** The hubs, the fewest first. */
    HUBS(false, row -> some(row.counts().hubs())),
    /** The length of joints and seams, the least first. */
    JOINTS(false, row -> some(row.work().jointMm() + row.work().seamMm())),
    /** The narrowest width of the widest panel, the least first. */
    WIDTH(false, row -> some(row.work().widthMm())),
    /** By how little kinds differ, the most first. */
    APART(true, row -> row.work().differenceMm()),
    /** By how much the base hubs differ in height, the least first. */
    BASE(false, row -> some(row.measures().baseSpreadMm())),
    /** The radius, the largest first. */
    RADIUS(true, row -> some(row.measures().radiusMm())),
    /** The diameter of the floor, the largest first. */
    FLOOR(true, row -> some(row.measures().floorDiameterMm())),
    /** The height, the largest first. */
    HEIGHT(true, row -> some(row.measures().heightMm())),
    /** The space inside over the mean height of the base hubs, the largest first. */
    ROOM(true, row -> some(row.roomMm3()));

    private final boolean largestFirst;

    @SuppressWarnings("ImmutableEnumChecker") // functions of their argument alone
    private final Function<Compared, OptionalDouble> value;

    Column(boolean largestFirst, Function<Compared, OptionalDouble> value) {
        this.largestFirst = largestFirst;
        this.value = value;
    }

    private static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    /**
     * The value of a dome.
     *
     * @param row the dome
     * @return the value, if it is known
     */
    public OptionalDouble of(Compared row) {
        return value.apply(row);
    }

    /** The value, turned so that less is better; infinite if it is not known. */
    double rank(Compared row) {
        OptionalDouble known = of(row);
        if (known.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return largestFirst ? 0.0 - known.getAsDouble() : known.getAsDouble();
    }

    /**
     * Its name.
     *
     * @return for example {@code price}
     */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
