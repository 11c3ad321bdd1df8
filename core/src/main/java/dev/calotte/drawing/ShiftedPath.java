package dev.calotte.drawing;

import dev.calotte.document.Arc;
import dev.calotte.document.Polyline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A closed path with every side moved to the right of its way: outwards where it runs counter-clockwise round a part,
 * inwards where it runs clockwise round an opening. Straight sides stay straight and arcs keep their centres; neighbours
 * meet where they cross, so corners are mitred.
 *
 * @param path the path
 * @param by how far each side moves, in millimetres
 */
record ShiftedPath(Polyline path, double by) {

    /** Sides whose directions differ by less run on into one another; the error of that is of its square. */
    private static final double SMOOTH = 1e-10;

    /** Chords of an arc when crossings are looked for. */
    private static final int CHORDS = 16;

    /** The moved path; nothing if a side is used up by the shift, or the path crosses itself. */
    Optional<Polyline> moved() {
        List<Side> sides = IntStream.range(0, path.size())
                .mapToObj(corner -> new Side(place(path, corner), place(path, next(corner)), path.arc(corner)))
                .toList();
        List<Vector2D> corners = new ArrayList<>();
        for (int corner = 0; corner < sides.size(); corner++) {
            Side before = sides.get((corner + sides.size() - 1) % sides.size());
            Optional<Vector2D> meeting = meeting(before, sides.get(corner));
            if (meeting.isEmpty()) {
                return Optional.empty();
            }
            corners.add(meeting.get());
        }
        double[] bulges = new double[sides.size()];
        for (int side = 0; side < bulges.length; side++) {
            bulges[side] = sides.get(side).bulge(corners.get(side), corners.get(next(side)), by);
        }
        return DoubleStream.of(bulges).anyMatch(Double::isNaN) ? Optional.empty() : simple(corners, bulges);
    }

    private Optional<Polyline> simple(List<Vector2D> corners, double[] bulges) {
        double[] xy = corners.stream()
                .flatMapToDouble(corner -> DoubleStream.of(corner.getX(), corner.getY()))
                .toArray();
        Polyline moved = Polyline.closed(path.operation(), xy, bulges);
        return crossesItself(moved) ? Optional.empty() : Optional.of(moved);
    }

    private int next(int corner) {
        return (corner + 1) % path.size();
    }

    private static Vector2D place(Polyline path, int corner) {
        return new Vector2D(path.x(corner), path.y(corner));
    }

    /** Where two neighbours meet when moved: of the places where they cross the one next to where two lines would. */
    private Optional<Vector2D> meeting(Side before, Side after) {
        Vector2D one = before.rightAtEnd();
        Vector2D other = after.rightAtStart();
        double along = one.dotProduct(other);
        if (along < SMOOTH - 1) {
            return Optional.empty();
        }
        Vector2D mitre = after.from.add(by / (1 + along), one.add(other));
        if (along > 1 - SMOOTH || (before.arc.isEmpty() && after.arc.isEmpty())) {
            return Optional.of(mitre);
        }
        return before.crossings(after, by).stream().min(Comparator.comparingDouble(mitre::distance));
    }

    private static boolean crossesItself(Polyline moved) {
        List<Vector2D> places = new ArrayList<>();
        for (int corner = 0; corner < moved.size(); corner++) {
            places.add(place(moved, corner));
            moved.arc(corner).ifPresent(arc -> places.addAll(between(arc)));
        }
        for (int one = 0; one < places.size(); one++) {
            for (int two = one + 2; two < places.size(); two++) {
                if ((two + 1) % places.size() != one && cross(places, one, two)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Vector2D> between(Arc arc) {
        return IntStream.range(1, CHORDS)
                .mapToDouble(chord -> arc.startRad() + arc.sweepRad() * chord / CHORDS)
                .mapToObj(angle -> new Vector2D(arc.x(angle), arc.y(angle)))
                .toList();
    }

    private static boolean cross(List<Vector2D> places, int one, int two) {
        Vector2D a = places.get(one);
        Vector2D b = places.get(one + 1);
        Vector2D c = places.get(two);
        Vector2D d = places.get((two + 1) % places.size());
        return overlap(a.getX(), b.getX(), c.getX(), d.getX())
                && overlap(a.getY(), b.getY(), c.getY(), d.getY())
                && turn(a, b, c) * turn(a, b, d) <= 0
                && turn(c, d, a) * turn(c, d, b) <= 0;
    }

    /** Two sides of one line, one behind the other, do not meet. */
    private static boolean overlap(double a, double b, double c, double d) {
        return Math.min(a, b) <= Math.max(c, d) && Math.min(c, d) <= Math.max(a, b);
    }

    private static double turn(Vector2D from, Vector2D to, Vector2D point) {
        return point.crossProduct(from, to);
    }

    /** A side of the path as it was. */
    private record Side(Vector2D from, Vector2D to, Optional<Arc> arc) {

        Vector2D rightAtStart() {
            return rightAt(from);
        }

        Vector2D rightAtEnd() {
            return rightAt(to);
        }

        /** Square to its direction at a place on it, to the right. Right of a counter-clockwise arc is outside of it. */
        private Vector2D rightAt(Vector2D place) {
            return arc.map(round -> place.subtract(centre(round))
                            .scalarMultiply(Math.signum(round.sweepRad()) / round.radiusMm()))
                    .orElseGet(() -> new Vector2D(to.getY() - from.getY(), from.getX() - to.getX())
                            .scalarMultiply(1 / from.distance(to)));
        }

        private static Vector2D centre(Arc round) {
            return new Vector2D(round.xMm(), round.yMm());
        }

        private double radius(double by) {
            return arc.map(round -> round.radiusMm() + Math.signum(round.sweepRad()) * by)
                    .orElseThrow();
        }

        List<Vector2D> crossings(Side other, double by) {
            if (arc.isEmpty()) {
                return other.crossings(this, by);
            }
            return other.arc.isPresent() ? withCircle(other, by) : withLine(other, by);
        }

        private List<Vector2D> withLine(Side line, double by) {
            Vector2D right = line.rightAtStart();
            Vector2D along = new Vector2D(-right.getY(), right.getX());
            Vector2D centre = centre(arc.orElseThrow());
            double beside = line.from.add(by, right).subtract(centre).dotProduct(right);
            return pair(centre.add(beside, right), along, radius(by) * radius(by) - beside * beside);
        }

        private List<Vector2D> withCircle(Side other, double by) {
            Vector2D centre = centre(arc.orElseThrow());
            Vector2D way = centre(other.arc.orElseThrow()).subtract(centre);
            double apart = way.getNorm();
            double mine = radius(by) * radius(by);
            double theirs = other.radius(by) * other.radius(by);
            double foot = (apart * apart + mine - theirs) / (2 * apart);
            Vector2D unit = way.scalarMultiply(1 / apart);
            return pair(centre.add(foot, unit), new Vector2D(-unit.getY(), unit.getX()), mine - foot * foot);
        }

        private static List<Vector2D> pair(Vector2D foot, Vector2D along, double square) {
            if (!(square >= 0)) {
                return List.of();
            }
            double half = Math.sqrt(square);
            return List.of(foot.add(half, along), foot.subtract(half, along));
        }

        /** The bulge between its new ends; no number if nothing of the side is left. */
        double bulge(Vector2D start, Vector2D end, double by) {
            if (arc.isEmpty()) {
                return end.subtract(start).dotProduct(to.subtract(from)) > 0 ? 0 : Double.NaN;
            }
            double was = arc.get().sweepRad();
            double sense = Math.signum(was);
            Vector2D begins = start.subtract(centre(arc.get()));
            Vector2D ends = end.subtract(centre(arc.get()));
            double turned = StrictMath.atan2(
                    begins.getX() * ends.getY() - begins.getY() * ends.getX(), begins.dotProduct(ends));
            double sweep = sense * turned < 0 ? turned + sense * 2 * Math.PI : turned;
            boolean left = radius(by) > 0 && Math.abs(sweep - was) < Math.PI;
            return left ? StrictMath.tan(sweep / 4) : Double.NaN;
        }
    }
}
