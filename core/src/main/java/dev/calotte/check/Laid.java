package dev.calotte.check;

import dev.calotte.check.RecordedCover.Part;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Where the frame of a piece lies on its stock: x changes its sign if it lies face down, then it is turned, then shifted. */
record Laid(boolean mirrored, double cos, double sin, Vector2D shift) {

    static Laid of(Part part) {
        double turn = StrictMath.toRadians(part.rotation());
        return new Laid(part.mirrored(), StrictMath.cos(turn), StrictMath.sin(turn), new Vector2D(part.x(), part.y()));
    }

    Vector2D at(Vector2D point) {
        double x = mirrored ? -point.getX() : point.getX();
        return new Vector2D(cos * x - sin * point.getY(), sin * x + cos * point.getY()).add(shift);
    }

    Ring at(Ring ring) {
        List<Vector2D> corners = new ArrayList<>();
        ring.corners().forEach(corner -> corners.add(at(corner)));
        return new Ring(corners);
    }
}
