package dev.calotte.stl.body;

import dev.calotte.document.Rods;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Rods joined by knots. A knot is the convex hull of a ball round its point and of the rings in which its rods begin;
 * where a rod begins the hull is open. Rings stand so far out that no ring's plane is reached by another ring, so every
 * ring lies on the hull and knots of neighbouring points stay apart.
 */
final class RodShape {

    private static final int SIDES = 12;
    /** Of a ball's radius to a rod's. */
    private static final double BALL = 1.25;
    /** Beyond where rings would just touch each other's planes. */
    private static final double SPARE = 1.1;

    private final Rods rods;
    private final double radius;
    private final Soup soup = new Soup();
    /** The rod's ring at either end, the same way round and side by side. */
    private final int[][][] rings;

    private RodShape(Rods rods) {
        this.rods = rods;
        this.radius = rods.diameterMm() / 2 / StrictMath.cos(Math.PI / SIDES);
        this.rings = new int[rods.size()][2][];
    }

    static Soup of(Rods rods) {
        RodShape shape = new RodShape(rods);
        for (int point = 0; point < rods.pointCount(); point++) {
            shape.addKnot(point);
        }
        for (int[][] rod : shape.rings) {
            shape.addRod(rod[0], rod[1]);
        }
        return Slice.above(shape.soup, 2, rods.baseMm());
    }

    private Vector3D point(int point) {
        return new Vector3D(rods.at(point, 0), rods.at(point, 1), rods.at(point, 2));
    }

    /** A rod end: which rod, and which of its ends. */
    private record End(int rod, int side) {}

    private List<End> ends(int point) {
        List<End> ends = new ArrayList<>();
        for (int rod = 0; rod < rods.size(); rod++) {
            for (int side = 0; side < 2; side++) {
                if (rods.end(rod, side) == point) {
                    ends.add(new End(rod, side));
                }
            }
        }
        return ends;
    }

    private Vector3D direction(End end) {
        Vector3D from = point(rods.end(end.rod(), end.side()));
        return point(rods.end(end.rod(), 1 - end.side())).subtract(from).normalize();
    }

    private void addKnot(int point) {
        List<End> ends = ends(point);
        double out = outMm(ends.stream().map(this::direction).toList());
        List<Vector3D> places = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            places.addAll(ring(ends.get(i), point(point), out));
            for (int k = 0; k < SIDES; k++) {
                owners.add(i);
            }
        }
        for (Vector3D ball : ball()) {
            places.add(point(point).add(BALL * radius, ball));
            owners.add(-1 - owners.size());
        }
        int first = soup.vertices().size();
        places.forEach(place -> soup.vertex(place.getX(), place.getY(), place.getZ()));
        for (int i = 0; i < ends.size(); i++) {
            rings[ends.get(i).rod()][ends.get(i).side()] = numbers(first + i * SIDES);
        }
        for (int[] face : Hull.of(places)) {
            boolean open = owners.get(face[0]).equals(owners.get(face[1]))
                    && owners.get(face[1]).equals(owners.get(face[2]));
            if (!open) {
                soup.triangle(first + face[0], first + face[1], first + face[2]);
            }
        }
    }

    private static int[] numbers(int first) {
        int[] numbers = new int[SIDES];
        for (int k = 0; k < SIDES; k++) {
            numbers[k] = first + k;
        }
        return numbers;
    }

    /** How far out rings have to stand. */
    private double outMm(List<Vector3D> directions) {
        double most = BALL * radius;
        for (int i = 0; i < directions.size(); i++) {
            for (int j = 0; j < i; j++) {
                double half = Vector3D.angle(directions.get(i), directions.get(j)) / 2;
                most = Math.max(most, radius / StrictMath.tan(half));
            }
        }
        return SPARE * most;
    }

    private List<Vector3D> ring(End end, Vector3D centre, double out) {
        Vector3D along = direction(new End(end.rod(), 0));
        Vector3D side = along.crossProduct(Math.abs(along.getZ()) < 0.8 ? Vector3D.PLUS_K : Vector3D.PLUS_I)
                .normalize();
        Vector3D up = along.crossProduct(side);
        Vector3D middle = centre.add(out, direction(end));
        List<Vector3D> ring = new ArrayList<>();
        for (int k = 0; k < SIDES; k++) {
            double angle = 2 * Math.PI * k / SIDES;
            ring.add(middle.add(radius * StrictMath.cos(angle), side).add(radius * StrictMath.sin(angle), up));
        }
        return ring;
    }

    /** Twenty-six directions, from the centre of a cube to its corners, edges and faces. */
    private static List<Vector3D> ball() {
        List<Vector3D> ball = new ArrayList<>();
        for (int i = 0; i < 27; i++) {
            if (i != 13) {
                ball.add(new Vector3D(i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1).normalize());
            }
        }
        return ball;
    }

    private void addRod(int[] from, int[] to) {
        for (int k = 0; k < SIDES; k++) {
            int next = (k + 1) % SIDES;
            soup.triangle(from[k], from[next], to[next]);
            soup.triangle(from[k], to[next], to[k]);
        }
    }
}
