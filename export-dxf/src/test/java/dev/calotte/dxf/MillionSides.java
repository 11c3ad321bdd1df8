package dev.calotte.dxf;

import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Writes a drawing of a million sides in every dialect; run by itself in a small heap. */
final class MillionSides {

    private static final int OUTLINES = 1000;
    private static final int CORNERS = 1000;

    private MillionSides() {}

    public static void main(String[] arguments) throws IOException {
        List<Shape> outlines = new ArrayList<>();
        for (int i = 0; i < OUTLINES; i++) {
            int row = i / 40;
            outlines.add(gear(200.0 * (i % 40) + 100, 200.0 * row + 100));
        }
        Drawing drawing = new Drawing("sheets/million", "", 8000, 5000, List.of(new Drawing.Part("P1", "", outlines)));
        outlines.clear();
        for (Dialect dialect : Dialect.values()) {
            CountingStream out = new CountingStream();
            new DxfWriter(dialect).write(drawing, out);
            if (out.count() < 20L * OUTLINES * CORNERS || out.largest() > 1_000_000) {
                throw new IllegalStateException(out.count() + " bytes, " + out.largest() + " at once");
            }
        }
    }

    private static Polyline gear(double x, double y) {
        double[] xy = new double[2 * CORNERS];
        for (int i = 0; i < CORNERS; i++) {
            double angle = 2 * Math.PI * i / CORNERS;
            double radius = i % 2 == 0 ? 80 : 90;
            xy[2 * i] = x + radius * StrictMath.cos(angle);
            xy[2 * i + 1] = y + radius * StrictMath.sin(angle);
        }
        return Polyline.closed(Operation.CUT_OUTER, xy);
    }
}
