package dev.calotte.dxf;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dxf.DxfOutlines.Outline;
import dev.calotte.dxf.TagReader.Tag;
import dev.calotte.export.Corners;
import java.util.Arrays;

/** A shape as it is read, in the unit of the file. */
final class Trace {

    private final Origin origin;
    private final boolean closed;
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

    private Polyline path(Operation operation, double unitMm) throws DxfFormatException {
        Corners corners = new Corners();
        for (int i = 0; i < 3 * size; i += 3) {
            corners.add(unitMm * xyb[i], unitMm * xyb[i + 1], xyb[i + 2]);
        }
        try {
            return corners.path(operation, closed);
        } catch (IllegalArgumentException tooFew) {
            throw origin.wrong(tooFew.getMessage());
        }
    }
}
