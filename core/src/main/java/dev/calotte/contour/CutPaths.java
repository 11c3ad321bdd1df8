package dev.calotte.contour;

import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Paths that are cut through, in the order of the drawing.
 *
 * @param paths the paths
 * @param marks for each the mark of its part
 */
record CutPaths(List<Polyline> paths, List<String> marks) {

    static CutPaths of(Drawing drawing) {
        CutPaths cut = new CutPaths(new ArrayList<>(), new ArrayList<>());
        for (Drawing.Part part : drawing.parts()) {
            for (Shape shape : part.shapes()) {
                if (isCut(shape)) {
                    cut.add((Polyline) shape, part.mark());
                }
            }
        }
        return cut;
    }

    private void add(Polyline path, String mark) {
        paths.add(path);
        marks.add(mark);
    }

    static boolean isCut(Shape shape) {
        return shape instanceof Polyline && isCut(shape.operation());
    }

    static boolean isCut(Operation operation) {
        return operation == Operation.CUT_INNER || operation == Operation.CUT_OUTER;
    }

    /** Those that may lie on each other or on themselves. */
    CutPaths crowded() {
        CutPaths kept = new CutPaths(new ArrayList<>(), new ArrayList<>());
        BitSet crowd = Crowd.of(paths);
        for (int path = crowd.nextSetBit(0); path >= 0; path = crowd.nextSetBit(path + 1)) {
            kept.add(paths.get(path), marks.get(path));
        }
        return kept;
    }
}
