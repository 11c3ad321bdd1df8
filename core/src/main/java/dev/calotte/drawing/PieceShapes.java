package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels;
import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.NotchedEdge;
import dev.calotte.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The shapes of a cut piece in the order in which it is worked: labels, drawn notches, grain arrow, dots where seams stop,
 * holes, the cut outline, and the net line for reference. Where edges are bevelled the outline is that of the outer face,
 * and that of the inner one is a reference.
 *
 * @param cover the cover that the piece belongs to
 * @param pose where the piece lies
 * @param netToo whether the net line is drawn where it lies outside the piece, too
 */
record PieceShapes(Cover cover, Pose pose, boolean netToo) {

    private static final double ROUNDING_MM = 1e-6;
    private static final double DOT = 1;
    private static final double TICK = 5;
    private static final double ARROW = 60;

    /**
     * The part of a drawing that a piece is.
     *
     * @param named its mark and description, without shapes
     * @param pattern the pattern that it belongs to
     * @param piece the piece
     * @param labels what is written on it, in the order of {@link PieceLabels}
     */
    Part part(Part named, Pattern pattern, CutPiece piece, List<Label> labels) {
        List<ConvexPolygon> inside = Stream.concat(Stream.of(piece.net(), piece.outline()), piece.outer().stream())
                .map(outline -> ConvexPolygon.round(
                        outline.corners().stream().map(pose::at).toList()))
                .toList();
        Part bare = new Part(named.mark(), named.description(), of(pattern, piece));
        return Lettering.on(bare, inside, labels.stream().map(pose::label).toList());
    }

    private List<Shape> of(Pattern pattern, CutPiece piece) {
        List<Shape> shapes = new ArrayList<>();
        NotchedEdge notched = new NotchedEdge(pattern, piece, TICK);
        notched.ticks().forEach(tick -> shapes.add(Polyline.open(Operation.ENGRAVE, pose.xy(tick))));
        piece.grainRad()
                .ifPresent(rad ->
                        arrow(piece, rad).forEach(line -> shapes.add(Polyline.open(Operation.ENGRAVE, pose.xy(line)))));
        if (cover.allowances().wideMm() > 0) {
            piece.net().corners().forEach(corner -> shapes.add(circle(Operation.ENGRAVE, corner, DOT)));
        }
        piece.holes()
                .forEach(hole ->
                        shapes.add(circle(Operation.DRILL, new Vector2D(hole.x(), hole.y()), hole.diameterMm() / 2)));
        shapes.add(Polyline.closed(
                Operation.CUT_OUTER,
                pose.xy(piece.outer().orElseGet(notched::outline).corners())));
        piece.outer()
                .ifPresent(outer -> shapes.add(
                        Polyline.closed(Operation.REF, pose.xy(notched.outline().corners()))));
        if (netToo || isInside(piece.net(), piece.blank())) {
            shapes.add(Polyline.closed(Operation.REF, pose.xy(piece.net().corners())));
        }
        return shapes;
    }

    /** Gaps and reliefs leave the net shape larger than the piece, and it would lie on the neighbours. */
    private static boolean isInside(ConvexPolygon net, ConvexPolygon blank) {
        for (int side = 0; side < blank.size(); side++) {
            Vector2D outward = blank.outward(side);
            if (net.reach(outward) > blank.reach(outward) + ROUNDING_MM) {
                return false;
            }
        }
        return true;
    }

    private Circle circle(Operation operation, Vector2D centre, double radius) {
        Vector2D at = pose.at(centre);
        return new Circle(operation, at.getX(), at.getY(), radius);
    }

    /** Along the grain through the middle of the net corners, a quarter of the piece long at most. */
    private static List<List<Vector2D>> arrow(CutPiece piece, double rad) {
        Vector2D middle = Vector2D.ZERO;
        for (Vector2D corner : piece.net().corners()) {
            middle = middle.add(1.0 / piece.net().size(), corner);
        }
        Vector2D along = new Vector2D(StrictMath.cos(rad), StrictMath.sin(rad));
        double half = Math.min(ARROW, piece.net().narrowestWidth() / 4) / 2;
        Vector2D tip = middle.add(half, along);
        Vector2D tail = middle.subtract(half, along);
        return List.of(List.of(tail, tip), head(tip, along, -half / 3), head(tail, along, half / 3));
    }

    /** Two strokes that meet at a tip, their ends so far along from it. */
    private static List<Vector2D> head(Vector2D tip, Vector2D along, double size) {
        Vector2D across = new Vector2D(-along.getY(), along.getX()).scalarMultiply(Math.abs(size));
        Vector2D ends = tip.add(size, along);
        return List.of(ends.add(across), tip, ends.subtract(across));
    }
}
