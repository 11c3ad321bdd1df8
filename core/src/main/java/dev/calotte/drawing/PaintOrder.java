package dev.calotte.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The order in which triangles that do not pierce each other are painted, so that what is nearer covers what is further
 * away. Of each two whose pictures have some area in common, the one that is further away there comes first; a dome
 * with hollow edges or openings needs that, its middles alone do not tell. Triangles that are seen edge on are left out.
 *
 * <p>Should triangles cover each other in a circle, as those of a dome cannot, the furthest middle breaks it.
 */
final class PaintOrder {

    /** As a part of the whole picture's width. */
    private static final double SAME = 1e-9;

    private final List<Slab> slabs = new ArrayList<>();
    private final List<List<Slab>> nearer = new ArrayList<>();
    private final int[] waiting;
    private final double same;

    private PaintOrder(List<double[]> triangles) {
        double widest = triangles.stream()
                .flatMapToDouble(Arrays::stream)
                .map(Math::abs)
                .max()
                .orElse(1);
        this.same = SAME * widest;
        for (int i = 0; i < triangles.size(); i++) {
            nearer.add(new ArrayList<>());
            Slab slab = new Slab(i, triangles.get(i));
            if (Math.abs(slab.doubleArea()) > same * widest) {
                slabs.add(slab);
            }
        }
        this.waiting = new int[triangles.size()];
    }

    /**
     * Orders triangles.
     *
     * @param triangles of each its corners' places to the right, upwards and towards the eye, nine numbers
     * @return the numbers of those that show some area, the furthest first
     */
    static List<Integer> of(List<double[]> triangles) {
        PaintOrder order = new PaintOrder(triangles);
        order.compare();
        return order.sorted();
    }

    private void compare() {
        slabs.sort(Comparator.comparingDouble(Slab::left).thenComparingInt(Slab::index));
        List<Slab> open = new ArrayList<>();
        for (Slab slab : slabs) {
            open.removeIf(other -> other.right() <= slab.left());
            open.forEach(other -> compare(other, slab));
            open.add(slab);
        }
    }

    private void compare(Slab one, Slab other) {
        double ahead = one.ahead(other, same);
        if (Math.abs(ahead) > same) {
            Slab far = ahead < 0 ? one : other;
            Slab near = ahead < 0 ? other : one;
            nearer.get(far.index()).add(near);
            waiting[near.index()]++;
        }
    }

    private List<Integer> sorted() {
        Comparator<Slab> furthest = Comparator.comparingDouble(Slab::middle).thenComparingInt(Slab::index);
        PriorityQueue<Slab> ready = new PriorityQueue<>(furthest);
        slabs.stream().filter(slab -> waiting[slab.index()] == 0).forEach(ready::add);
        List<Slab> left = new ArrayList<>(slabs);
        left.sort(furthest);
        boolean[] done = new boolean[waiting.length];
        List<Integer> order = new ArrayList<>();
        while (order.size() < slabs.size()) {
            Slab next = ready.isEmpty() ? first(left, done) : ready.remove();
            if (!done[next.index()]) {
                done[next.index()] = true;
                order.add(next.index());
                nearer.get(next.index()).stream()
                        .filter(slab -> --waiting[slab.index()] == 0)
                        .forEach(ready::add);
            }
        }
        return order;
    }

    private static Slab first(List<Slab> left, boolean[] done) {
        return left.stream().filter(slab -> !done[slab.index()]).findFirst().orElseThrow();
    }
}
