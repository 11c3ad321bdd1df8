package dev.calotte.svg.paper;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A line of a known length with ticks, to check a print by.
 *
 * @param id what it is
 * @param text its length, for people
 * @param stepMm from tick to tick
 * @param steps how many of them
 */
record Ruler(String id, String text, double stepMm, int steps) {

    static final Ruler METRIC = new Ruler("RULER-100MM", "100 mm", 25, 4);
    static final Ruler INCHES = new Ruler("RULER-4IN", "4 in", 25.4, 4);

    private static final double LONG = 3.5;
    private static final double SHORT = 2;
    private static final double LETTERS = 2.5;
    private static final double LINE = 3.8;

    double lengthMm() {
        return stepMm * steps;
    }

    /** To the right from a point, ticks upwards. */
    Ink across(double x, double y) {
        return ink("-X", 1, 0, x, y);
    }

    /** Up from a point, ticks to the left. */
    Ink upwards(double x, double y) {
        return ink("-Y", 0, 1, x, y);
    }

    private Ink ink(String axis, int right, int up, double x, double y) {
        List<double[]> chains = new ArrayList<>();
        chains.add(new double[] {x, y, x + right * lengthMm(), y + up * lengthMm()});
        for (int i = 0; i <= steps; i++) {
            double tick = i % steps == 0 ? LONG : SHORT;
            double at = i * stepMm;
            chains.add(
                    new double[] {x + right * at, y + up * at, x + right * at - up * tick, y + up * at + right * tick});
        }
        return new Ink(id + axis, Pen.FINE, chains);
    }

    Label labelAcross(double x, double y) {
        return new Label(text, x + lengthMm() + 2, y + LETTERS / 2, LETTERS, Anchor.START);
    }

    /** Word below word, because there is little room beside the pattern. */
    List<Label> labelUpwards(double x, double y) {
        String[] words = text.split(" ", -1);
        double first = y + lengthMm() + LETTERS + (words.length - 1) * LINE;
        return IntStream.range(0, words.length)
                .mapToObj(i -> new Label(words[i], x, first - i * LINE, LETTERS, Anchor.START))
                .toList();
    }
}
