package dev.calotte.drawing;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Where on paper a figure stands and how large.
 *
 * @param origin where its origin is
 * @param scale how many times smaller it is
 */
record OnPaper(Vector2D origin, DrawnScale scale) {

    Vector2D of(Vector2D point) {
        return origin.add(1 / scale.ratio(), point);
    }

    List<Vector2D> of(List<Vector2D> points) {
        return points.stream().map(this::of).toList();
    }
}
