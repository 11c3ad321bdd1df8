package dev.calotte.parts;

import dev.calotte.dome.Spoke;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;

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

    /**
     * Reads a circle of a dome without openings.
     *
     * @param around for each strut its index, and that of the strut that closes the panel after it
     */
    static HubCircle of(int[] around, IntUnaryOperator strutKind, IntUnaryOperator length) {
        int[] struts = new int[around.length / 2];
        int[] opposites = new int[struts.length];
        for (int i = 0; i < struts.length; i++) {
            int opposite = around[2 * i + 1];
            struts[i] = strutKind.applyAsInt(around[2 * i]);
            opposites[i] = opposite == Spoke.NONE ? NO_PANEL : length.applyAsInt(opposite);
        }
        return new HubCircle(struts, opposites);
    }

    boolean isOpen() {
        return opposites[opposites.length - 1] == NO_PANEL;
    }

    private int size() {
        return struts.length;
    }

    /** How often the circle is turned by one strut to read as the smallest of its turns; an open one never. */
    int turnToSmallest() {
        int smallest = 0;
        for (int turn = 1; turn < size() && !isOpen(); turn++) {
            int order = compareTurns(struts, turn, smallest);
            if (order < 0 || (order == 0 && compareTurns(opposites, turn, smallest) < 0)) {
                smallest = turn;
            }
        }
        return smallest;
    }

    private static int compareTurns(int[] circle, int one, int other) {
        int n = circle.length;
        for (int i = 0; i < n; i++) {
            int order = Integer.compare(circle[(i + one) % n], circle[(i + other) % n]);
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    HubCircle smallest() {
        return turned(turnToSmallest());
    }

    private HubCircle turned(int by) {
        return new HubCircle(turned(struts, by), turned(opposites, by));
    }

    private static int[] turned(int[] circle, int by) {
        int[] turned = new int[circle.length];
        Arrays.setAll(turned, i -> circle[(i + by) % circle.length]);
        return turned;
    }

    /** Seen from inside: the struts in reverse, each still followed by what lies between it and the next. */
    HubCircle mirrored() {
        int n = size();
        int[] back = new int[n];
        int[] between = new int[n];
        Arrays.setAll(back, i -> struts[n - 1 - i]);
        Arrays.setAll(between, i -> opposites[(2 * n - 2 - i) % n]);
        return new HubCircle(back, between);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HubCircle circle
                && Arrays.equals(struts, circle.struts)
                && Arrays.equals(opposites, circle.opposites);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(struts) + Arrays.hashCode(opposites);
    }
}
