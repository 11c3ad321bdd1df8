package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What is written on a piece of a cover, and where: its mark, row and face in the middle, reading upwards on the dome,
 * and along each side, just inside the net line, the mark of the neighbour there.
 *
 * <pre>{@code
 * Panel panel = dome.panels().get(0);
 * List<PieceLabels.Label> labels = new PieceLabels(fit.patterns()).of(panel);
 * }</pre>
 */
public final class PieceLabels {

    /** After ISO 3098: marks and edge labels of drawings; on cloth and sheets twice as large, as far as there is room. */
    private static final double MARK_MM = 7;

    private static final double EDGE_MM = 5;
    private static final double ON_LINE_MM = 1e-6;

    /** The room that a line of text needs, in heights of its letters. */
    private static final double LINE = 1.6;

    private final PieceMarks marks;
    private final Patterns patterns;
    private final Dome dome;

    /**
     * Labels for the pieces of a cover.
     *
     * @param patterns the patterns of the cover
     */
    public PieceLabels(Patterns patterns) {
        this.patterns = patterns;
        this.marks = new PieceMarks(patterns.parts());
        this.dome = patterns.parts().dome();
    }

    /** A face of a piece. */
    public enum Face {
        /** The one that is seen from outside the dome. */
        OUT,
        /** The one that is seen from inside. */
        IN
    }

    /**
     * A text on a piece.
     *
     * @param text what is written
     * @param xMm the middle of the text in the pattern's frame
     * @param yMm the middle of the text
     * @param turnRad the direction in which it is read, from x counter-clockwise
     * @param heightMm how high its capitals are
     */
    public record Label(String text, double xMm, double yMm, double turnRad, double heightMm) {}

    /**
     * The labels of a panel's piece.
     *
     * @param panel a panel of the dome
     * @return mark, row and face from top to bottom, then the neighbours along the pattern's sides, {@code base} where
     *     there is none
     */
    public List<Label> of(Panel panel) {
        return of(panel, patterns.of(panel).whole(), Face.OUT);
    }

    /**
     * The labels of one of the pieces that a panel is cut in.
     *
     * @param panel a panel of the dome
     * @param piece the whole of its pattern, or a part between seams
     * @param face the face that is written on
     * @return mark, row and face from top to bottom, then what lies along the sides of its net shape: the neighbour's
     *     mark, {@code base} where there is none, and along a seam the mark of the part there
     */
    public List<Label> of(Panel panel, CutPiece piece, Face face) {
        Pattern pattern = patterns.of(panel);
        String part = piece.mark().substring(pattern.mark().length());
        List<String> lines = List.of(marks.of(panel) + part, "row " + panel.row(), face.name());
        List<Label> labels = new ArrayList<>(lines(piece.net(), up(panel), lines));
        for (int side = 0; side < piece.net().size(); side++) {
            labels.add(beside(piece.net(), side, across(panel, piece, side)));
        }
        return List.copyOf(labels);
    }

    /**
     * The labels of a piece that stands for all of its kind.
     *
     * @param net its net shape
     * @param mark the mark of the kind
     * @param count how many there are
     * @param sides what is written along its sides, or nothing
     * @return mark, count and face from top to bottom, with the shape's own up, then one label a side
     */
    public static List<Label> ofKind(ConvexPolygon net, String mark, int count, List<String> sides) {
        List<String> lines = List.of(mark, "cut " + count, Face.OUT.name());
        List<Label> labels = new ArrayList<>(lines(net, new Vector2D(0, 1), lines));
        for (int side = 0; side < sides.size(); side++) {
            labels.add(beside(net, side, sides.get(side)));
        }
        return List.copyOf(labels);
    }

    private static double height(ConvexPolygon net) {
        return Math.min(MARK_MM, net.narrowestWidth() / 20);
    }

    private static List<Label> lines(ConvexPolygon net, Vector2D up, List<String> lines) {
        double height = height(net);
        List<Label> labels = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            Vector2D at = middle(net).add((1 - line) * LINE * height, up);
            labels.add(label(lines.get(line), at, new Vector2D(up.getY(), -up.getX()), height));
        }
        return labels;
    }

    /** What lies across a side of a piece, which is a part of a pattern's side or a seam. */
    private String across(Panel panel, CutPiece piece, int side) {
        Pattern pattern = patterns.of(panel);
        for (int of = 0; of < 3; of++) {
            if (liesOn(pattern.whole().net(), of, piece.net(), side)) {
                return patterns.across(panel, of).map(marks::of).orElse("base");
            }
        }
        int number = Integer.parseInt(piece.mark().substring(pattern.mark().length() + 1));
        boolean above = piece.net().outward(side).getY() > 0;
        return marks.of(panel) + "s" + (number + (above ? 1 : -1));
    }

    private static boolean liesOn(ConvexPolygon whole, int of, ConvexPolygon part, int side) {
        Vector2D outward = whole.outward(of);
        double reach = whole.corner(of).dotProduct(outward);
        return Math.abs(part.corner(side).dotProduct(outward) - reach) < ON_LINE_MM
                && Math.abs(part.corner(side + 1).dotProduct(outward) - reach) < ON_LINE_MM;
    }

    private static Label beside(ConvexPolygon net, int side, String text) {
        double height = Math.min(EDGE_MM, height(net));
        Vector2D from = net.corner(side);
        Vector2D to = net.corner(side + 1);
        Vector2D at = new Vector2D(0.5, from, 0.5, to).subtract(LINE * height, net.outward(side));
        return label(text, at, to.subtract(from).normalize(), height);
    }

    private static Label label(String text, Vector2D at, Vector2D along, double height) {
        return new Label(text, at.getX(), at.getY(), StrictMath.atan2(along.getY(), along.getX()), height);
    }

    /** The centre of the circle inside a triangle, where it is widest; of a part between seams the middle of its corners. */
    private static Vector2D middle(ConvexPolygon net) {
        boolean triangle = net.size() == 3;
        Vector2D sum = Vector2D.ZERO;
        double weights = 0;
        for (int corner = 0; corner < net.size(); corner++) {
            double weight = triangle ? net.corner(corner + 1).distance(net.corner(corner + 2)) : 1;
            sum = sum.add(weight, net.corner(corner));
            weights += weight;
        }
        return sum.scalarMultiply(1 / weights);
    }

    /** Up the slope in the pattern's frame; of a level panel the pattern's own up. */
    private Vector2D up(Panel panel) {
        Vector3D[] hubs = new Vector3D[3];
        for (int k = 0; k < 3; k++) {
            Hub hub = dome.hubs().get(panel.hubs().get((patterns.firstHub(panel) + k) % 3));
            hubs[k] = hub.position();
        }
        Vector3D x = hubs[1].subtract(hubs[0]).normalize();
        Vector3D out = x.crossProduct(hubs[2].subtract(hubs[0])).normalize();
        Vector2D slope = new Vector2D(x.getZ(), out.crossProduct(x).getZ());
        return slope.getNorm() < 1e-9 ? new Vector2D(0, 1) : slope.normalize();
    }
}
