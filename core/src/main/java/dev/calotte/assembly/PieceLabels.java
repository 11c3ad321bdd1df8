package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What is written on a piece of a cover, and where: its mark, row and face in the middle, reading upwards on the dome,
 * and along each side, just inside the net line, the mark of the neighbour there.
 */
public final class PieceLabels {

    /** After ISO 3098: marks and edge labels of drawings; on cloth and sheets twice as large, as far as there is room. */
    private static final double MARK_MM = 7;

    private static final double EDGE_MM = 5;
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
        Pattern pattern = patterns.of(panel);
        Vector2D up = up(panel);
        double height = Math.min(MARK_MM, pattern.whole().net().narrowestWidth() / 20);
        List<Label> labels = new ArrayList<>();
        List<String> lines = List.of(marks.of(panel), "row " + panel.row(), "OUT");
        for (int line = 0; line < lines.size(); line++) {
            Vector2D at = middle(pattern).add((1 - line) * LINE * height, up);
            labels.add(label(lines.get(line), at, new Vector2D(up.getY(), -up.getX()), height));
        }
        for (int side = 0; side < 3; side++) {
            labels.add(neighbour(panel, pattern, side, Math.min(EDGE_MM, height)));
        }
        return List.copyOf(labels);
    }

    private Label neighbour(Panel panel, Pattern pattern, int side, double height) {
        Vector2D outward = pattern.whole().net().outward(side);
        Vector2D from = pattern.whole().net().corner(side);
        Vector2D to = pattern.whole().net().corner(side + 1);
        Vector2D at = new Vector2D(0.5, from, 0.5, to).subtract(LINE * height, outward);
        return label(
                patterns.across(panel, side).map(marks::of).orElse("base"),
                at,
                to.subtract(from).normalize(),
                height);
    }

    private static Label label(String text, Vector2D at, Vector2D along, double height) {
        return new Label(text, at.getX(), at.getY(), StrictMath.atan2(along.getY(), along.getX()), height);
    }

    /** The centre of the circle inside the net shape, where the piece is widest. */
    private static Vector2D middle(Pattern pattern) {
        Vector2D sum = Vector2D.ZERO;
        double lengths = 0;
        for (int corner = 0; corner < 3; corner++) {
            double opposite = pattern.whole()
                    .net()
                    .corner(corner + 1)
                    .distance(pattern.whole().net().corner(corner + 2));
            sum = sum.add(opposite, pattern.whole().net().corner(corner));
            lengths += opposite;
        }
        return sum.scalarMultiply(1 / lengths);
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
