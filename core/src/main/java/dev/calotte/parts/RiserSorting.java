package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.geometry.Groups;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.parts.RiserWall.TopPlate;
import dev.calotte.parts.RiserWall.Upright;
import dev.calotte.parts.RiserWall.Wall;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Gathers the pieces of a wall under the base ring into kinds, equal up to rounding. */
final class RiserSorting {

    private final BasePlan plan;
    private final double heightMm;
    private final double radiusMm;
    private final double topMm;
    private final Rounded widths;
    private final Rounded heights;
    private final Rounded angles;

    /** A size of each bay or hub of the ring, and the number of the group that it belongs to. */
    private record Rounded(Groups groups, double unit) {

        static Rounded of(int size, IntToDoubleFunction value, double unit) {
            double[] values = IntStream.range(0, size)
                    .mapToDouble(i -> value.applyAsDouble(i) / unit)
                    .toArray();
            return new Rounded(Groups.of(values, StrutSorting.SAME), unit);
        }

        double value(int group) {
            return groups.value(group) * unit;
        }
    }

    /** Three groups that make a shape; the last two rising. */
    private record Shape(int first, int low, int high) {

        static final Comparator<Shape> ORDER = Comparator.comparingInt(Shape::first)
                .thenComparingInt(Shape::low)
                .thenComparingInt(Shape::high);

        static Shape of(int first, int one, int other) {
            return new Shape(first, Math.min(one, other), Math.max(one, other));
        }
    }

    RiserSorting(Dome dome, double heightMm) {
        if (!(heightMm > 0 && Double.isFinite(heightMm))) {
            throw new IllegalArgumentException("no wall is " + heightMm + " mm high");
        }
        if (dome.baseRing().isEmpty()) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.riser",
                    "a whole sphere has no base ring to put a wall under.",
                    "Leave the riser out, or keep a part of the sphere.");
        }
        this.plan = new BasePlan(dome);
        this.heightMm = heightMm;
        this.radiusMm = dome.radiusMm();
        this.topMm = dome.whole().hubs().stream()
                .mapToDouble(hub -> hub.position().getZ())
                .max()
                .orElseThrow();
        this.widths = Rounded.of(plan.size, plan::widthMm, radiusMm);
        this.heights = Rounded.of(plan.size, plan::aboveLowestMm, radiusMm);
        this.angles = Rounded.of(plan.size, plan::insideRad, 1);
    }

    RiserWall wall() {
        return new RiserWall(
                heightMm,
                topMm - plan.lowestMm() + heightMm,
                walls(),
                uprights(),
                bottomPlates(),
                topPlates(),
                plan.size - (int) plan.bays().count());
    }

    private int next(int hub) {
        return (hub + 1) % plan.size;
    }

    private Shape bay(int bay, Rounded ends) {
        return Shape.of(widths.groups.of(bay), ends.groups.of(bay), ends.groups.of(next(bay)));
    }

    private List<Wall> walls() {
        Twins<Shape> twins = new Twins<>(Shape.ORDER);
        plan.bays().forEach(bay -> {
            int step = Integer.compare(heights.groups.of(next(bay)), heights.groups.of(bay));
            Hand hand = step == 0 ? Hand.NONE : step > 0 ? Hand.LEFT : Hand.RIGHT;
            twins.note(bay(bay, heights), hand, bay);
        });
        return twins.kinds(
                Shape.ORDER,
                (number, hand, shape, tally, twin) -> new Wall(
                        number,
                        hand,
                        widths.value(shape.first),
                        heightMm + heights.value(shape.low),
                        heightMm + heights.value(shape.high),
                        topMm(shape),
                        tally.count()));
    }

    private double topMm(Shape shape) {
        double across = widths.value(shape.first);
        double rise = riseMm(shape);
        return Math.sqrt(across * across + rise * rise);
    }

    private double riseMm(Shape shape) {
        return heights.value(shape.high) - heights.value(shape.low);
    }

    private List<Upright> uprights() {
        int[] counts = new int[heights.groups.count()];
        plan.hubs().forEach(hub -> counts[heights.groups.of(hub)]++);
        List<Upright> uprights = new ArrayList<>();
        for (int g = 0; g < counts.length; g++) {
            if (counts[g] > 0) {
                uprights.add(new Upright(uprights.size() + 1, heightMm + heights.value(g), counts[g]));
            }
        }
        return uprights;
    }

    private List<BottomPlate> bottomPlates() {
        Twins<Shape> plates = new Twins<>(Shape.ORDER);
        plan.bays().forEach(bay -> plates.note(bay(bay, angles), Hand.NONE, bay));
        return plates.kinds(
                Shape.ORDER,
                (number, hand, shape, tally, twin) -> new BottomPlate(
                        number,
                        widths.value(shape.first),
                        angles.value(shape.low),
                        angles.value(shape.high),
                        tally.count()));
    }

    /** By length and slope, which width and rise decide; whatever the height above the ground. */
    private List<TopPlate> topPlates() {
        Rounded rises = Rounded.of(plan.size, bay -> riseMm(bay(bay, heights)), radiusMm);
        Twins<Shape> plates = new Twins<>(Shape.ORDER);
        plan.bays()
                .forEach(bay -> plates.note(
                        Shape.of(widths.groups.of(bay), rises.groups.of(bay), rises.groups.of(bay)), Hand.NONE, bay));
        return plates.kinds(Shape.ORDER, (number, hand, shape, tally, twin) -> {
            double across = widths.value(shape.first);
            double rise = rises.value(shape.low);
            double length = Math.sqrt(across * across + rise * rise);
            return new TopPlate(number, length, StrictMath.atan2(rise, across), tally.count());
        });
    }
}
