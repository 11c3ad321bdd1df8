package dev.calotte.parts;

import dev.calotte.dome.Spoke;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * What leaves a hub, counter-clockwise: the numbers of the strut kinds, and after each the number of the strut kind
 * that closes the panel up to the next one, which fixes the angle between the two. Where an opening took that panel the
 * angle itself is told, by the number of its group below 0. After the last strut of an open circle there is nothing.
 */
final class HubCircle {

    /** By how many struts there are, closed before open, then by the numbers. */
    static final Comparator<HubCircle> ORDER = Comparator.comparingInt((HubCircle c) -> c.struts.length)
            .thenComparing(HubCircle::isOpen)
            .thenComparing(c -> c.struts, Arrays::compare)
            .thenComparing(c -> c.opposites, Arrays::compare);

    static final int NO_PANEL = 0;

    private final int[] struts;
    private final int[] opposites;

    private HubCircle(int[] struts, int[] opposites) {
        this.struts = struts;
        this.opposites = opposites;
    }

    /** Reads a circle with the kind of each strut and a number for what lies between it and the next one. */
    static HubCircle of(List<Spoke> spokes, IntUnaryOperator strutKind, ToIntFunction<Spoke> after) {
        return new HubCircle(
                spokes.stream().mapToInt(s -> strutKind.applyAsInt(s.strut())).toArray(),
                spokes.stream().mapToInt(after).toArray());
    }

    boolean isOpen() {
        return opposites[opposites.length - 1] == NO_PANEL;
    }

    private int size() {
        return struts.length;
    }

    /** How often the circle is turned by one strut to read as the smallest of its turns; an open one never. */
    int turnToSmallest() {
        int turns = isOpen() ? 1 : size();
        return IntStream.range(0, turns)
                .boxed()
                .min(Comparator.comparing(this::turned, ORDER))
                .orElseThrow();
    }

    HubCircle smallest() {
        return turned(turnToSmallest());
    }

    private HubCircle turned(int by) {
        return new HubCircle(
                IntStream.range(0, size()).map(i -> struts[(i + by) % size()]).toArray(),
                IntStream.range(0, size())
                        .map(i -> opposites[(i + by) % size()])
                        .toArray());
    }

    /** Seen from inside: the struts in reverse, each still followed by what lies between it and the next. */
    HubCircle mirrored() {
        int n = size();
        return new HubCircle(
                IntStream.range(0, n).map(i -> struts[n - 1 - i]).toArray(),
                IntStream.range(0, n).map(i -> opposites[(2 * n - 2 - i) % n]).toArray());
    }
}
