package dev.calotte.parts;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How struts meet hubs, and what the workshop tells apart.
 *
 * <pre>{@code
 * Joinery joinery = Joinery.gap(45).withCutTolerance(0.5);
 * double cut = Parts.of(dome, joinery).strutKinds().get(0).cutLengthMm();
 * }</pre>
 *
 * @param hubGaps from the hubs' centres to the cut ends of the struts; absent where none are given
 * @param ends how struts end
 * @param mergeWithinMm struts whose lengths differ by no more are one kind; 0 for those that are equal up to rounding
 * @param cutToleranceMm how exactly the workshop cuts
 * @param hubPlate the plate at every hub, if there is one
 */
public record Joinery(
        Optional<HubGaps> hubGaps,
        Ends ends,
        double mergeWithinMm,
        double cutToleranceMm,
        Optional<HubPlate> hubPlate) {

    /** What a workshop holds with a stop and a saw; common practice, no source. */
    public static final double USUAL_TOLERANCE_MM = 1;

    /**
     * Checks the numbers.
     *
     * @param hubGaps from the hubs' centres to the cut ends
     * @param ends how struts end
     * @param mergeWithinMm what is one kind, 0 or more
     * @param cutToleranceMm how exactly the workshop cuts, 0 or more
     * @param hubPlate the plate at every hub
     * @throws IllegalArgumentException if a number is negative or not finite
     */
    public Joinery {
        checkNotBelow0("merged kind", mergeWithinMm);
        checkNotBelow0("tolerance", cutToleranceMm);
    }

    /**
     * Struts that reach from node to node.
     *
     * @return a joinery without gaps
     */
    public static Joinery nodeToNode() {
        return new Joinery(Optional.empty(), new Ends.Plain(), 0, USUAL_TOLERANCE_MM, Optional.empty());
    }

    /**
     * Struts cut off square at the same distance from every hub.
     *
     * @param mm from the hub's centre to the cut end of a strut, 0 or more
     * @return a joinery with that gap
     * @throws IllegalArgumentException if the gap is negative or not finite
     */
    public static Joinery gap(double mm) {
        return nodeToNode().withHubGaps(HubGaps.all(mm));
    }

    /**
     * The same with other gaps.
     *
     * @param other from the hubs' centres to the cut ends
     * @return a copy
     */
    public Joinery withHubGaps(HubGaps other) {
        return new Joinery(Optional.of(other), ends, mergeWithinMm, cutToleranceMm, hubPlate);
    }

    /**
     * The same with other ends.
     *
     * @param other how struts end
     * @return a copy
     */
    public Joinery withEnds(Ends other) {
        return new Joinery(hubGaps, other, mergeWithinMm, cutToleranceMm, hubPlate);
    }

    /**
     * The same with larger or smaller kinds.
     *
     * @param mm by how much the lengths of one kind may differ, 0 or more
     * @return a copy
     */
    public Joinery withMergeWithin(double mm) {
        return new Joinery(hubGaps, ends, mm, cutToleranceMm, hubPlate);
    }

    /**
     * The same in another workshop.
     *
     * @param mm how exactly it cuts, 0 or more
     * @return a copy
     */
    public Joinery withCutTolerance(double mm) {
        return new Joinery(hubGaps, ends, mergeWithinMm, mm, hubPlate);
    }

    /**
     * The same with a plate at every hub.
     *
     * @param plate the plate
     * @return a copy
     */
    public Joinery withHubPlate(HubPlate plate) {
        return new Joinery(hubGaps, ends, mergeWithinMm, cutToleranceMm, Optional.of(plate));
    }

    /**
     * From the axis of a hub to the ends of its struts, measured along the plane that touches the sphere where ends are
     * flattened, and along the strut where they are not.
     *
     * @param base whether it is a hub of the base ring
     * @param struts how many struts it has
     * @return millimetres; below 0 where all flattened ends are bolted together and reach past the axis
     * @throws CalotteException if gaps are given, but none for such a hub
     */
    public double endMm(boolean base, int struts) {
        if (hubGaps.isPresent()) {
            return hubGaps.get().ofMm(base, struts);
        }
        if (ends instanceof Ends.Flattened flat) {
            return hubPlate.map(plate -> plate.holeCircleMm() / 2).orElse(0.0) - flat.holeEdgeMm();
        }
        return 0;
    }

    /** All gaps that are given, the smallest first. */
    Stream<Double> gapsMm() {
        return hubGaps.stream().flatMap(HubGaps::allMm).sorted();
    }

    /**
     * What does not go together, whatever the dome.
     *
     * @return the problems, possibly none
     */
    public List<Problem> problems() {
        return new JoineryRules(this).problems();
    }

    static void checkAbove0(String what, double mm) {
        if (!(mm > 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException("no " + what + " is " + mm + " mm");
        }
    }

    private static void checkNotBelow0(String what, double mm) {
        if (!(mm >= 0 && Double.isFinite(mm))) {
            throw new IllegalArgumentException("no " + what + " is within " + mm + " mm");
        }
    }
}
