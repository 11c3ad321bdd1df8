package dev.calotte.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The shapes that struts have, each once, numbered as they come. */
final class StrutShapes {

    private static final int NONE = -1;

    /** Of each length the newest shape, and of each shape the one of its length before it. */
    private final int[] newest;

    private final List<Integer> before = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();

    /** The number of a length, and from the hubs' axes to the strut's ends, the smaller first. */
    record Shape(int length, double nearMm, double farMm) {

        /** Of one length, the larger its gaps the shorter it is cut. */
        static final Comparator<Shape> ORDER = Comparator.comparingInt(Shape::length)
                .thenComparing(shape -> shape.nearMm + shape.farMm, Comparator.reverseOrder())
                .thenComparing(Shape::nearMm);

        boolean has(double near, double far) {
            return nearMm == near && farMm == far;
        }
    }

    StrutShapes(int lengths) {
        this.newest = IntStream.generate(() -> NONE).limit(lengths).toArray();
    }

    /** The number of a shape. */
    int number(int length, double oneMm, double otherMm) {
        double near = Math.min(oneMm, otherMm);
        double far = Math.max(oneMm, otherMm);
        int number = newest[length];
        while (number != NONE && !shapes.get(number).has(near, far)) {
            number = before.get(number);
        }
        return number == NONE ? add(new Shape(length, near, far)) : number;
    }

    private int add(Shape shape) {
        shapes.add(shape);
        before.add(newest[shape.length]);
        newest[shape.length] = shapes.size() - 1;
        return shapes.size() - 1;
    }

    Shape shape(int number) {
        return shapes.get(number);
    }

    /** The numbers of all shapes in the order of their kinds. */
    int[] ordered() {
        return IntStream.range(0, shapes.size())
                .boxed()
                .sorted(Comparator.comparing(shapes::get, Shape.ORDER))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
