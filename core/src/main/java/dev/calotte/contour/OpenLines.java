package dev.calotte.contour;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.util.ArrayList;
import java.util.List;

/** Joins sides into lines, each as long as one side begins where the other ended. */
final class OpenLines {

    private final Operation operation;
    private final List<Polyline> paths = new ArrayList<>();
    private Corners corners = new Corners();
    private double endX;
    private double endY;

    OpenLines(Operation operation) {
        this.operation = operation;
    }

    void add(Side side, double bulge) {
        if (corners.size() > 0 && (side.fromX() != endX || side.fromY() != endY)) {
            end();
        }
        corners.add(side.fromX(), side.fromY(), bulge);
        endX = side.toX();
        endY = side.toY();
    }

    List<Polyline> paths() {
        if (corners.size() > 0) {
            end();
        }
        return paths;
    }

    private void end() {
        paths.add(corners.add(endX, endY, 0).open(operation));
        corners = new Corners();
    }
}
