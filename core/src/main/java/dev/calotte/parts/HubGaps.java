package dev.calotte.parts;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How far from the centre of a hub its struts are cut off, by what the hub is.
 *
 * @param baseMm at hubs of the base ring; if it is absent, as at other hubs
 * @param innerMm at inner hubs, by their number of struts
 * @param otherMm at hubs that the two above do not name
 */
public record HubGaps(OptionalDouble baseMm, Map<Integer, Double> innerMm, OptionalDouble otherMm) {

    /**
     * Checks the gaps and copies the map.
     *
     * @param baseMm at hubs of the base ring
     * @param innerMm at inner hubs, by their number of struts
     * @param otherMm at all others
     * @throws IllegalArgumentException if a gap is negative or not finite
     */
    public HubGaps {
        innerMm = Collections.unmodifiableMap(new TreeMap<>(innerMm));
        baseMm.ifPresent(HubGaps::check);
        innerMm.values().forEach(HubGaps::check);
        otherMm.ifPresent(HubGaps::check);
    }

    private static void check(double mm) {
        if (!(mm >= 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException("no hub gap is " + mm + " mm");
        }
    }

    /**
     * The same gap everywhere.
     *
     * @param mm from the hub's centre to the cut end of a strut, 0 or more
     * @return the gaps
     * @throws IllegalArgumentException if the gap is negative or not finite
     */
    public static HubGaps all(double mm) {
        return new HubGaps(OptionalDouble.empty(), Map.of(), OptionalDouble.of(mm));
    }

    /**
     * Gaps by what a hub is.
     *
     * @param mm each 0 or more
     * @return the gaps
     * @throws IllegalArgumentException if a gap is negative or not finite
     */
    public static HubGaps of(ByHub<Double> mm) {
        return new HubGaps(measure(mm.base()), mm.inner(), measure(mm.other()));
    }

    private static OptionalDouble measure(Optional<Double> mm) {
        return mm.stream().mapToDouble(Double::doubleValue).findFirst();
    }

    /**
     * The gap that all hubs have, if they are not told apart.
     *
     * @return the gap in millimetres, or nothing
     */
    public OptionalDouble everywhereMm() {
        return baseMm.isEmpty() && innerMm.isEmpty() ? otherMm : OptionalDouble.empty();
    }

    /**
     * The gap of a hub.
     *
     * @param base whether it is a hub of the base ring
     * @param struts how many struts it has
     * @return the gap in millimetres
     * @throws CalotteException if no gap is given for such a hub
     */
    public double ofMm(boolean base, int struts) {
        return byHub().of(base, struts).orElseThrow(() -> missing(base, struts));
    }

    private static CalotteException missing(boolean base, int struts) {
        return new CalotteException(
                Code.MISSING,
                "frame.hub-gap",
                "no gap is given for " + ByHub.which(base, struts) + ".",
                "Add " + ByHub.key(base, struts)
                        + ": or other: with the gap from the hub's centre to the strut's end.");
    }

    /** All gaps that are given. */
    Stream<Double> allMm() {
        return byHub().given();
    }

    private ByHub<Double> byHub() {
        return new ByHub<>(boxed(baseMm), innerMm, boxed(otherMm));
    }

    private static Optional<Double> boxed(OptionalDouble mm) {
        return mm.stream().boxed().findFirst();
    }
}
