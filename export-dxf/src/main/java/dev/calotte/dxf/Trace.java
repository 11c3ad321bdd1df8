package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;
import dev.calotte.dxf.DxfOutlines.Outline;
import dev.calotte.dxf.TagReader.Tag;
import java.util.Arrays;

/** A shape as it is read, in the unit of the file. */
final class Trace {

    /** Corners that are no further apart are one; millimetres. */
    private static final double SAME = 1e-6;

    private final Origin origin;
    private boolean closed;
    private double[] xyb = new double[12];
    private int size;
    private double radius;

    Trace(Origin origin, boolean closed) {
        this.origin = origin;
        this.closed = closed;
    }

    static Trace circle(Entity entity) throws DxfFormatException {
        Trace trace = new Trace(entity.origin(), true);
        trace.add(entity.number(10), entity.number(20), 0);
        trace.radius = entity.number(40);
        if (!(trace.radius > 0)) {
            throw entity.wrong("its radius is not above 0");
        }
        return trace;
    }

    void add(double x, double y, double bulge) {
        if (3 * size == xyb.length) {
            xyb = Arrays.copyOf(xyb, 6 * size);
        }
        xyb[3 * size] = x;
        xyb[3 * size + 1] = y;
        xyb[3 * size + 2] = bulge;
        size++;
    }

    void setY(Tag tag) throws DxfFormatException {
        xyb[3 * last(tag) + 1] = tag.number();
    }

    void setBulge(Tag tag) throws DxfFormatException {
        xyb[3 * last(tag) + 2] = tag.number();
    }

    private int last(Tag tag) throws DxfFormatException {
        if (size == 0) {
            throw tag.wrong("code " + tag.code() + " comes before the first corner");
        }
        return size - 1;
    }

    int size() {
        return size;
    }

    /** The shape in millimetres. */
    Outline outline(double unitMm) throws DxfFormatException {
        Operation operation = operation(origin.layer());
        Shape shape = radius > 0
                ? new Circle(operation, unitMm * xyb[0], unitMm * xyb[1], unitMm * radius)
                : path(operation, unitMm);
        return new Outline(origin.layer(), shape);
    }

    private static Operation operation(String layer) {
        return Arrays.stream(Operation.values())
                .filter(operation -> operation.name().equals(layer))
                .findFirst()
                .orElse(Operation.CUT_OUTER);
    }

    private Path path(Operation operation, double unitMm) throws DxfFormatException {
        for (int i = 0; i < 3 * size; i++) {
            xyb[i] *= i % 3 == 2 ? 1 : unitMm;
        }
        closed |= size > 3 && same(0, size - 1);
        dropRepeated();
        if (closed && size == 2 && (xyb[2] != 0 || xyb[5] != 0)) {
            halveArcs();
        }
        if (size < (closed ? 3 : 2)) {
            throw origin.wrong("it has " + size + " corners, and needs " + (closed ? 3 : 2));
        }
        double[] xy = new double[2 * size];
        double[] bulges = new double[size];
        for (int i = 0; i < size; i++) {
            xy[2 * i] = xyb[3 * i];
            xy[2 * i + 1] = xyb[3 * i + 1];
            bulges[i] = closed || i < size - 1 ? xyb[3 * i + 2] : 0;
        }
        return closed ? Path.closed(operation, xy, bulges) : Path.open(operation, xy, bulges);
    }

    /** Of corners that lie on each other the last stays, with the side that begins there. */
    private void dropRepeated() {
        int kept = 0;
        for (int i = 0; i < size; i++) {
            boolean again = kept > 0 && same(kept - 1, i);
            kept = again ? kept - 1 : kept;
            System.arraycopy(xyb, 3 * i, xyb, 3 * kept, 3);
            kept++;
        }
        if (closed && kept > 1 && same(0, kept - 1)) {
            kept--;
        }
        size = kept;
    }

    private boolean same(int one, int other) {
        return Math.abs(xyb[3 * one] - xyb[3 * other]) <= SAME
                && Math.abs(xyb[3 * one + 1] - xyb[3 * other + 1]) <= SAME;
    }

    /** Two arcs enclose an area, and a path has three corners at least. */
    private void halveArcs() {
        double[] two = Arrays.copyOf(xyb, 6);
        size = 0;
        for (int i = 0; i < 2; i++) {
            double bulge = two[3 * i + 2];
            double half = StrictMath.tan(StrictMath.atan(bulge) / 2);
            int next = 3 * (1 - i);
            double across = two[next] - two[3 * i];
            double upwards = two[next + 1] - two[3 * i + 1];
            add(two[3 * i], two[3 * i + 1], half);
            add(two[3 * i] + across / 2 + bulge * upwards / 2, two[3 * i + 1] + upwards / 2 - bulge * across / 2, half);
        }
    }
}
