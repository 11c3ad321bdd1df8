package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Hub;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** How high the rows of hubs are over the ground, as dimensions beside an elevation. */
final class RowHeights {

    private static final double JOG = 6;

    private final List<Row> rows;

    /**
     * Hubs of one row.
     *
     * @param text what to write
     * @param lowMm the lowest of them over the ground
     * @param highMm the highest of them
     */
    private record Row(String text, double lowMm, double highMm) {}

    private RowHeights(List<Row> rows) {
        this.rows = rows;
    }

    static RowHeights of(Subject subject) {
        SortedMap<Integer, double[]> ends = new TreeMap<>();
        List<Hub> hubs = List.copyOf(subject.dome().hubs());
        double lowest =
                hubs.stream().mapToDouble(hub -> hub.position().getZ()).min().orElseThrow();
        for (Hub hub : hubs) {
            double height = hub.position().getZ() - lowest + subject.riserMm();
            double[] end = ends.computeIfAbsent(hub.row(), row -> new double[] {height, height});
            end[0] = Math.min(end[0], height);
            end[1] = Math.max(end[1], height);
        }
        List<Row> rows = new ArrayList<>();
        ends.forEach((row, end) -> rows.add(new Row(text(subject, row, end), end[0], end[1])));
        rows.sort(Comparator.comparingDouble(row -> row.lowMm + row.highMm));
        return new RowHeights(rows);
    }

    private static String text(Subject subject, int row, double[] end) {
        String low = subject.units().length(end[0]);
        String high = subject.units().length(end[1]);
        return "hubs of row " + row + ": " + (low.equals(high) ? low : low + " to " + high);
    }

    double widthMm() {
        double widest = rows.stream()
                .mapToDouble(row -> Letters.widthMm(row.text, Letters.SMALL))
                .max()
                .orElse(0);
        return JOG + 2 + widest;
    }

    /** How high all of them are, one over the other. */
    double heightMm() {
        return rows.size() * Leaders.PITCH;
    }

    /** Draws them, the line of dimensions at some x, from the ground upwards. */
    void draw(Paper paper, double x, Box figure, DrawnScale scale) {
        double ground = figure.low();
        double[] middles = rows.stream()
                .mapToDouble(row -> ground + scale.onPaper(row.lowMm + row.highMm) / 2)
                .toArray();
        double[] y = Leaders.spread(middles, Leaders.PITCH, ground - Leaders.PITCH / 2, figure.high() + Leaders.PITCH);
        paper.line(x, ground, x, middles[middles.length - 1], Weight.FINE);
        for (int i = 0; i < y.length; i++) {
            Row row = rows.get(i);
            paper.line(x, ground + scale.onPaper(row.lowMm), x, ground + scale.onPaper(row.highMm), Weight.STRONG);
            paper.line(x - 1.5, middles[i], x + 1.5, middles[i], Weight.FINE);
            paper.line(x + 1.5, middles[i], x + JOG, y[i], Weight.FINE);
            paper.text(row.text, x + JOG + 1, y[i], Letters.SMALL, Anchor.START);
        }
    }
}
