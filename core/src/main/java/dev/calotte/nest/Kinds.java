package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentSkipListMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.util.FastMath;

/** The pieces of a plan with all that is asked of them again and again: shapes face up and face down, and stands. */
final class Kinds {

    private static final double SAME = 1e-9;

    private final List<Piece> pieces;
    private final List<ConvexPolygon> over = new ArrayList<>();
    private final List<List<Stand>> stands = new ArrayList<>();
    private final List<List<Stand>> flush = new ArrayList<>();
    private final ConcurrentSkipListMap<String, List<Stand>> askew = new ConcurrentSkipListMap<>();

    Kinds(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        for (int kind = 0; kind < pieces.size(); kind++) {
            over.add(mirrored(pieces.get(kind).outline()));
            stands.add(isFree(kind) ? List.of() : grained(kind));
        }
        for (int kind = 0; kind < pieces.size(); kind++) {
            flush.add(flush(kind, Manner.ANY));
        }
    }

    private static ConvexPolygon mirrored(ConvexPolygon outline) {
        int size = outline.size();
        double[] xy = new double[2 * size];
        for (int c = 0; c < size; c++) {
            xy[2 * c] = -outline.x(size - 1 - c);
            xy[2 * c + 1] = outline.y(size - 1 - c);
        }
        return ConvexPolygon.of(xy);
    }

    /** The same pieces, none of which may lie face down. */
    Kinds faceUp() {
        return new Kinds(pieces.stream().map(Piece::faceUp).toList());
    }

    /** Whether one of the pieces may lie face down, and that differs. */
    boolean areMirrored() {
        for (int kind = 0; kind < pieces.size(); kind++) {
            if (mirrors(kind)) {
                return true;
            }
        }
        return false;
    }

    int[] needed() {
        return pieces.stream().mapToInt(Piece::count).toArray();
    }

    int count() {
        return pieces.size();
    }

    Piece piece(int kind) {
        return pieces.get(kind);
    }

    double[] need() {
        return pieces.stream().mapToDouble(Piece::count).toArray();
    }

    int parts() {
        return pieces.stream().mapToInt(Piece::count).sum();
    }

    /** How many triangles give as much work as all parts do: that of two parts grows with the corners of both. */
    int inTriangles() {
        return pieces.stream()
                        .mapToInt(piece -> piece.count()
                                * piece.outline().size()
                                * piece.outline().size())
                        .sum()
                / 9;
    }

    boolean isFree(int kind) {
        return pieces.get(kind).grainRad().isEmpty();
    }

    /** Whether each piece keeps to its grain. */
    boolean areGrained() {
        return pieces.stream().allMatch(piece -> piece.grainRad().isPresent());
    }

    ConvexPolygon shape(int kind, boolean mirrored) {
        return mirrored ? over.get(kind) : pieces.get(kind).outline();
    }

    /** Whether a piece may lie face down, and that differs from a turn. */
    boolean mirrors(int kind) {
        return pieces.get(kind).mayMirror()
                && (isFree(kind)
                        ? !alikeTurned(shape(kind, false), shape(kind, true))
                        : grained(kind).size() > 2);
    }

    private static boolean alikeTurned(ConvexPolygon a, ConvexPolygon b) {
        for (int shift = 0; shift < a.size(); shift++) {
            boolean alike = true;
            for (int c = 0; c < a.size() && alike; c++) {
                for (int d = 1; d <= a.size() / 2 && alike; d++) {
                    double left = a.corner(c).distance(a.corner(c + d));
                    double right = b.corner(c + shift).distance(b.corner(c + d + shift));
                    alike = Math.abs(left - right) <= SAME * (left + right);
                }
            }
            if (alike) {
                return true;
            }
        }
        return false;
    }

    /** Ways to lay a piece with a grain; those that look like one before are left out. */
    private List<Stand> grained(int kind) {
        List<Stand> found = new ArrayList<>();
        double grain = pieces.get(kind).grainRad().orElseThrow();
        for (int half = 0; half < 2; half++) {
            addNew(found, kind, new Stand(false, -grain + half * FastMath.PI));
        }
        for (int half = 0; half < 2 && pieces.get(kind).mayMirror(); half++) {
            addNew(found, kind, new Stand(true, grain + half * FastMath.PI));
        }
        return found;
    }

    private void addNew(List<Stand> found, int kind, Stand stand) {
        ConvexPolygon shape = outline(kind, stand, 0, 0);
        if (found.stream().noneMatch(other -> alike(outline(kind, other, 0, 0), shape))) {
            found.add(stand);
        }
    }

    private static boolean alike(ConvexPolygon a, ConvexPolygon b) {
        double size = Math.sqrt(a.area());
        for (int shift = 0; shift < a.size(); shift++) {
            double dx = b.x(shift) - a.x(0);
            double dy = b.y(shift) - a.y(0);
            boolean alike = true;
            for (int c = 0; c < a.size(); c++) {
                int d = (c + shift) % a.size();
                alike &= Math.abs(b.x(d) - dx - a.x(c)) + Math.abs(b.y(d) - dy - a.y(c)) <= SAME * size;
            }
            if (alike) {
                return true;
            }
        }
        return false;
    }

    /** The ways to lay a piece that must keep its grain; empty if any turn will do. */
    List<Stand> stands(int kind) {
        return stands.get(kind);
    }

    /** Ways to lay a piece with a side along or across the stock. */
    List<Stand> flush(int kind) {
        return flush.get(kind);
    }

    /** Ways worth trying first: those of the grain, or with a side along an edge of the stock. */
    List<Stand> flush(int kind, Manner manner) {
        if (!isFree(kind)) {
            return stands.get(kind);
        }
        double longest = manner == Manner.LONGEST_ALONG ? longest(shape(kind, false)) * (1 - SAME) : 0;
        List<Stand> found = new ArrayList<>();
        for (boolean mirrored : mirrors(kind) ? new boolean[] {false, true} : new boolean[] {false}) {
            ConvexPolygon shape = shape(kind, mirrored);
            for (int side = 0; side < shape.size(); side++) {
                double away = FastMath.atan2(
                        shape.outward(side).getY(), shape.outward(side).getX());
                boolean taken = shape.corner(side).distance(shape.corner(side + 1)) >= longest;
                for (int quarter = 0; quarter < 4; quarter++) {
                    if (taken && manner.takes(quarter)) {
                        addNew(found, kind, new Stand(mirrored, quarter * FastMath.PI / 2 - away));
                    }
                }
            }
        }
        return found;
    }

    /** Ways to lay a piece where none with a side along or across the field will do: as the field holds it best. */
    List<Stand> askew(int kind, Field field) {
        // several fields, several threads and many sheets ask for the same
        return isFree(kind)
                ? askew.computeIfAbsent(
                        kind + " " + field.length() + " " + field.width(), key -> Room.askew(this, kind, field))
                : List.of();
    }

    /** Ways to lay a piece that may be turned at will with a side along one of the longest walls of a field. */
    List<Stand> alongside(int kind, Field field) {
        List<Stand> found = new ArrayList<>();
        for (double wall : isFree(kind) ? field.walls().directions() : List.<Double>of()) {
            for (boolean mirrored : mirrors(kind) ? new boolean[] {false, true} : new boolean[] {false}) {
                ConvexPolygon shape = shape(kind, mirrored);
                for (int side = 0; side < shape.size(); side++) {
                    Vector2D out = shape.outward(side);
                    found.add(new Stand(mirrored, wall - FastMath.atan2(out.getY(), out.getX())));
                }
            }
        }
        return found;
    }

    private static double longest(ConvexPolygon shape) {
        double longest = 0;
        for (int side = 0; side < shape.size(); side++) {
            longest = Math.max(longest, shape.corner(side).distance(shape.corner(side + 1)));
        }
        return longest;
    }

    ConvexPolygon outline(Spot spot) {
        return outline(spot.kind(), new Stand(spot.mirrored(), spot.turnRad()), spot.x(), spot.y());
    }

    ConvexPolygon outline(int kind, Stand stand, double x, double y) {
        ConvexPolygon shape = shape(kind, stand.mirrored());
        double cos = FastMath.cos(stand.turnRad());
        double sin = FastMath.sin(stand.turnRad());
        double[] xy = new double[2 * shape.size()];
        for (int c = 0; c < shape.size(); c++) {
            xy[2 * c] = x + shape.x(c) * cos - shape.y(c) * sin;
            xy[2 * c + 1] = y + shape.x(c) * sin + shape.y(c) * cos;
        }
        return ConvexPolygon.of(xy);
    }

    /** The area that a part and a half spacing round it cover: Steiner's formula for convex bodies (1840). */
    double coveredMm2(int kind, double spacing) {
        ConvexPolygon shape = shape(kind, false);
        double round = 0;
        for (int c = 0; c < shape.size(); c++) {
            round += shape.corner(c).distance(shape.corner(c + 1));
        }
        return shape.area() + round * spacing / 2 + FastMath.PI * spacing * spacing / 4;
    }

    /** The largest distance between two corners of any piece. */
    double widest() {
        double most = 0;
        for (Piece piece : pieces) {
            ConvexPolygon shape = piece.outline();
            for (int c = 0; c < shape.size(); c++) {
                for (int d = 0; d < c; d++) {
                    most = Math.max(most, shape.corner(c).distance(shape.corner(d)));
                }
            }
        }
        return most;
    }
}
