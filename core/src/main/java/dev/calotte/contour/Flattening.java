package dev.calotte.contour;

import dev.calotte.document.Arc;
import dev.calotte.document.Polyline;
import java.util.Optional;

/**
 * Chords for arcs. The corners between them lie on the arc, equally far apart, so that a chord over the angle a of a
 * circle of radius r lies r (1 - cos(a/2)) from it at most.
 */
final class Flattening {

    private Flattening() {}

    static Polyline of(Polyline path, double toleranceMm) {
        int sides = path.isClosed() ? path.size() : path.size() - 1;
        Corners corners = new Corners();
        for (int i = 0; i < path.size(); i++) {
            corners.add(path.x(i), path.y(i), 0);
            Optional<Arc> arc = i < sides ? path.arc(i) : Optional.empty();
            arc.ifPresent(round -> between(round, toleranceMm, corners));
        }
        return path.isClosed() ? corners.closed(path.operation()) : corners.open(path.operation());
    }

    private static void between(Arc arc, double toleranceMm, Corners corners) {
        double cosine = Math.max(0, 1 - toleranceMm / arc.radiusMm());
        int chords = (int) Math.ceil(Math.abs(arc.sweepRad()) / (2 * StrictMath.acos(cosine)));
        for (int chord = 1; chord < chords; chord++) {
            double angle = arc.startRad() + arc.sweepRad() * chord / chords;
            corners.add(arc.x(angle), arc.y(angle), 0);
        }
    }
}
