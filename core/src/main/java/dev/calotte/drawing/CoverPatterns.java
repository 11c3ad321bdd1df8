package dev.calotte.drawing;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
import dev.calotte.document.Shape;
import dev.calotte.geometry.Polygon;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.NotchedEdge;
import dev.calotte.pattern.Pattern;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * One drawing for each piece that is cut for a cover, at full size and seen from outside: the cut outline with its
 * notches, holes, the net shape for reference with a dot at each of its corners where seams stop, and an arrow where the
 * piece has a direction. Where edges are bevelled the outline is that of the outer face, and that of the inner one is a
 * reference. Beside it stands a reference of 100 mm.
 */
public final class CoverPatterns {

    private static final double MARGIN = 10;
    private static final double DOT = 1;
    private static final double TICK = 5;
    private static final double ARROW = 60;

    private final CoverFit fit;
    private final UnitSystem units;

    private CoverPatterns(CoverFit fit, UnitSystem units) {
        this.fit = fit;
        this.units = units;
    }

    /**
     * Draws the pieces of a cover.
     *
     * @param fit the cover with what is cut for it
     * @param units how lengths are written for people
     * @return a document {@code panels/COVER-MARK} for each piece, in the order of the patterns
     */
    public static List<Drawing> of(CoverFit fit, UnitSystem units) {
        CoverPatterns patterns = new CoverPatterns(fit, units);
        return fit.fits().stream()
                .flatMap(each -> each.pieces().stream().map(piece -> patterns.drawing(each, piece)))
                .toList();
    }

    private Drawing drawing(PatternFit each, CutPiece piece) {
        Polygon blank = piece.blank();
        Vector2D least = new Vector2D(-blank.reach(new Vector2D(-1, 0)), -blank.reach(new Vector2D(0, -1)));
        Vector2D shift = new Vector2D(MARGIN, 2 * MARGIN).subtract(least);
        double width = Math.max(blank.extent(new Vector2D(1, 0)), Reference.LENGTH) + 2 * MARGIN;
        double height = blank.extent(new Vector2D(0, 1)) + 3 * MARGIN;
        String cover = fit.patterns().cover().name();
        return new Drawing(
                "panels/" + cover + "-" + piece.mark(),
                "Cover " + cover + ", " + piece.mark() + ", cut "
                        + each.pattern().count() + ", with allowances",
                width,
                height,
                List.of(
                        new Part(piece.mark(), description(each, piece), shapes(each.pattern(), piece, shift)),
                        Reference.at(MARGIN)));
    }

    private List<Shape> shapes(Pattern pattern, CutPiece piece, Vector2D shift) {
        List<Shape> shapes = new ArrayList<>();
        NotchedEdge notched = new NotchedEdge(pattern, piece, TICK);
        notched.ticks().forEach(tick -> shapes.add(open(Operation.ENGRAVE, tick, shift)));
        piece.grainRad()
                .ifPresent(rad -> arrow(piece, rad).forEach(line -> shapes.add(open(Operation.ENGRAVE, line, shift))));
        boolean seam = fit.patterns().cover().allowances().wideMm() > 0;
        if (seam) {
            piece.net().corners().stream()
                    .map(c -> c.add(shift))
                    .forEach(c -> shapes.add(new Circle(Operation.ENGRAVE, c.getX(), c.getY(), DOT)));
        }
        piece.holes()
                .forEach(hole -> shapes.add(new Circle(
                        Operation.DRILL, hole.x() + shift.getX(), hole.y() + shift.getY(), hole.diameterMm() / 2)));
        shapes.add(closed(Operation.CUT_OUTER, piece.outer().orElseGet(notched::outline), shift));
        piece.outer().ifPresent(outer -> shapes.add(closed(Operation.REF, notched.outline(), shift)));
        shapes.add(closed(Operation.REF, piece.net(), shift));
        return shapes;
    }

    private static Path closed(Operation operation, Polygon polygon, Vector2D shift) {
        return Path.closed(operation, moved(polygon.corners(), shift));
    }

    private static Path open(Operation operation, List<Vector2D> points, Vector2D shift) {
        return Path.open(operation, moved(points, shift));
    }

    private static double[] moved(List<Vector2D> points, Vector2D shift) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).getX() + shift.getX();
            xy[2 * i + 1] = points.get(i).getY() + shift.getY();
        }
        return xy;
    }

    /** Along the grain through the middle of the net corners, a quarter of the piece long at most. */
    private static List<List<Vector2D>> arrow(CutPiece piece, double rad) {
        Vector2D middle = Vector2D.ZERO;
        for (Vector2D corner : piece.net().corners()) {
            middle = middle.add(1.0 / piece.net().size(), corner);
        }
        Vector2D along = new Vector2D(StrictMath.cos(rad), StrictMath.sin(rad));
        Vector2D across = new Vector2D(-along.getY(), along.getX());
        double half = Math.min(ARROW, piece.net().narrowestWidth() / 4) / 2;
        Vector2D tip = middle.add(half, along);
        Vector2D tail = middle.subtract(half, along);
        return List.of(
                List.of(tail, tip),
                List.of(
                        tip.add(-half / 3, along).add(half / 3, across),
                        tip,
                        tip.add(-half / 3, along).subtract(half / 3, across)),
                List.of(
                        tail.add(half / 3, along).add(half / 3, across),
                        tail,
                        tail.add(half / 3, along).subtract(half / 3, across)));
    }

    private String description(PatternFit each, CutPiece piece) {
        Pattern pattern = each.pattern();
        String hand = switch (pattern.kind().hand()) {
            case NONE -> "";
            default -> pattern.kind().hand().name().toLowerCase(Locale.ROOT) + " hand, ";
        };
        String part = each.pieces().size() > 1 ? "part of " + pattern.mark() + ", " : "";
        return part + hand + pattern.count() + " pieces, narrowest width "
                + units.length(piece.net().narrowestWidth(), 1) + " net, "
                + units.length(piece.blank().narrowestWidth(), 1) + " cut";
    }
}
