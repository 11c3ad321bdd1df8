package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Weight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * Marks beside a figure, each with a line to the piece where it has no room. They stand in a column on either side in
 * the order of their pieces, so that no two lines of a side cross for long.
 */
final class Leaders {

    /** From one mark to the next in a column. */
    static final double PITCH = 4.4;

    /** From the figure to the columns. */
    static final double OUT = 6;

    private final List<Leader> all = new ArrayList<>();

    /** A mark that has to be led to its piece. */
    private record Leader(String text, Vector2D to) {}

    void add(String text, Vector2D to) {
        all.add(new Leader(text, to));
    }

    /** Writes a mark into its piece, or keeps it for a leader if there is no room. */
    void mark(Paper paper, String mark, double height, List<Vector2D> corners) {
        MarkSpot.in(corners, Letters.capitals(mark, height))
                .ifPresentOrElse(
                        at -> paper.add(Letters.middle(mark, at.getX(), at.getY(), height)),
                        () -> add(mark, MarkSpot.middle(corners)));
    }

    int count() {
        return all.size();
    }

    /** How many find no place in the columns beside a box. */
    int misfits(Box figure) {
        return Math.max(0, all.size() - 2 * (int) (figure.height() / PITCH));
    }

    /** How wide a column has to be. */
    double widthMm() {
        return all.stream()
                .mapToDouble(l -> Letters.widthMm(l.text, Letters.SMALL))
                .max()
                .orElse(0);
    }

    /** Draws them left and right of a box, whose sides the columns stand at. */
    void draw(Paper paper, Box figure) {
        List<Leader> across = new ArrayList<>(all);
        across.sort(Comparator.comparingDouble(l -> l.to.getX()));
        int left = 0;
        while (left < across.size() && across.get(left).to.getX() < figure.middleX()) {
            left++;
        }
        int most = Math.max(1, (int) (figure.height() / PITCH));
        left = Math.max(Math.min(left, most), across.size() - most);
        column(paper, figure, across.subList(0, left), figure.left(), Anchor.END);
        column(paper, figure, across.subList(left, across.size()), figure.right(), Anchor.START);
    }

    private static void column(Paper paper, Box figure, List<Leader> some, double x, Anchor anchor) {
        List<Leader> upwards = some.stream()
                .sorted(Comparator.comparingDouble(l -> l.to.getY()))
                .toList();
        double[] y =
                spread(upwards.stream().mapToDouble(l -> l.to.getY()).toArray(), PITCH, figure.low(), figure.high());
        double out = anchor == Anchor.START ? 1 : -1;
        for (int i = 0; i < y.length; i++) {
            Leader leader = upwards.get(i);
            paper.line(leader.to.getX(), leader.to.getY(), x, y[i], Weight.FINE);
            paper.text(leader.text, x + out, y[i], Letters.SMALL, anchor);
        }
    }

    /** Rising places, moved apart as little as one pass each way can, and kept within the ends while there is room. */
    static double[] spread(double[] rising, double pitch, double low, double high) {
        double[] y = rising.clone();
        double least = low + pitch / 2;
        for (int i = 0; i < y.length; i++) {
            y[i] = Math.max(y[i], least);
            least = y[i] + pitch;
        }
        double most = high - pitch / 2;
        for (int i = y.length - 1; i >= 0; i--) {
            y[i] = Math.min(y[i], most);
            most = y[i] - pitch;
        }
        return y;
    }
}
