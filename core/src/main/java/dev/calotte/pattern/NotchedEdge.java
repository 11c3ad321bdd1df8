package dev.calotte.pattern;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The notches of a piece, as they are cut into its outline or drawn where there is no allowance to cut into. Of a divided
 * pattern each part has those on its side of the seams, though their allowances reach beyond.
 *
 * @param pattern the pattern that the piece belongs to
 * @param piece the piece
 * @param tickMm how long a drawn notch is
 */
public record NotchedEdge(Pattern pattern, CutPiece piece, double tickMm) {

    private static final double ON_LINE_MM = 1e-6;
    private static final Vector2D UP = new Vector2D(0, 1);
    private static final Vector2D DOWN = new Vector2D(0, -1);

    /** A notch: where it meets the cut edge, which way is in, and how deep. */
    private record Cut(Vector2D mouth, Vector2D inward, double depthMm) {

        Vector2D tip(double depth) {
            return mouth.add(depth, inward);
        }

        Vector2D along() {
            return new Vector2D(inward.getY(), -inward.getX());
        }
    }

    /**
     * The outline at the inner face with a V for each notch that is cut, twice as wide as it is deep.
     *
     * @return the outline; the piece's own if nothing is cut
     */
    public Polygon outline() {
        List<Cut> cuts = cuts().stream().filter(cut -> cut.depthMm > 0).toList();
        List<Vector2D> corners = new ArrayList<>();
        for (int side = 0; side < piece.outline().size(); side++) {
            Vector2D from = piece.outline().corner(side);
            Vector2D to = piece.outline().corner(side + 1);
            corners.add(from);
            cuts.stream()
                    .filter(cut -> liesOn(from, to, cut))
                    .sorted(Comparator.comparingDouble(cut -> cut.mouth.distance(from)))
                    .forEach(cut -> {
                        corners.add(cut.mouth.subtract(cut.depthMm, cut.along()));
                        corners.add(cut.tip(cut.depthMm));
                        corners.add(cut.mouth.add(cut.depthMm, cut.along()));
                    });
        }
        return Polygon.of(corners);
    }

    /**
     * The notches that are only drawn.
     *
     * @return two points each, from the cut edge inwards
     */
    public List<List<Vector2D>> ticks() {
        return cuts().stream()
                .filter(cut -> cut.depthMm == 0)
                .filter(cut -> liesOnOutline(cut))
                .map(cut -> List.of(cut.mouth, cut.tip(tickMm)))
                .toList();
    }

    private boolean liesOnOutline(Cut cut) {
        for (int side = 0; side < piece.outline().size(); side++) {
            if (liesOn(piece.outline().corner(side), piece.outline().corner(side + 1), cut)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the whole mouth of a notch lies between two corners. */
    private static boolean liesOn(Vector2D from, Vector2D to, Cut cut) {
        Vector2D along = to.subtract(from);
        Vector2D mouth = cut.mouth.subtract(from);
        double length = along.getNorm();
        double at = mouth.dotProduct(along) / length;
        double beside = (along.getX() * mouth.getY() - along.getY() * mouth.getX()) / length;
        return Math.abs(beside) < ON_LINE_MM && at > cut.depthMm && at < length - cut.depthMm;
    }

    /** Whether a notch is on this part's side of the seams that bound it. */
    private boolean isBetweenSeams(Cut cut) {
        ConvexPolygon net = pattern.whole().net();
        double height = cut.mouth.getY();
        double above = piece.net().reach(UP);
        double below = -piece.net().reach(DOWN);
        boolean under = above > net.reach(UP) - ON_LINE_MM || height <= above;
        return under && (below < ON_LINE_MM - net.reach(DOWN) || height > below);
    }

    private List<Cut> cuts() {
        return all().stream().filter(this::isBetweenSeams).toList();
    }

    private List<Cut> all() {
        List<Cut> cuts = new ArrayList<>();
        Vector2D hub = Vector2D.ZERO;
        for (int k = 0; k < 3; k++) {
            Side side = pattern.sides().get(k);
            Vector2D outward = pattern.whole().net().outward(k);
            Vector2D along = new Vector2D(-outward.getY(), outward.getX());
            for (Notch notch : side.notches()) {
                Vector2D mouth = hub.add(notch.alongMm(), along).add(side.growthMm() + side.allowanceMm(), outward);
                cuts.add(new Cut(mouth, outward.negate(), notch.depthMm()));
            }
            hub = hub.add(side.lengthMm(), along);
        }
        return cuts;
    }
}
