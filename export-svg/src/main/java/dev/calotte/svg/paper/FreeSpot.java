package dev.calotte.svg.paper;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Where a word crosses no line, as near to the middle of a room as there is such a place. */
final class FreeSpot {

    /** The white around a word. */
    private static final double WHITE = 0.6;

    private static final int STEPS = 12;

    /** Sideways and upwards, the nearest first; of places that are as good the first one wins. */
    private static final List<int[]> STEPS_OUTWARDS = IntStream.rangeClosed(-STEPS, STEPS)
            .boxed()
            .flatMap(i -> IntStream.rangeClosed(-STEPS, STEPS).mapToObj(j -> new int[] {i, j}))
            .sorted(Comparator.comparingInt(step -> step[0] * step[0] + step[1] * step[1]))
            .toList();

    private final List<double[]> lines;

    FreeSpot(List<Ink> inks) {
        this.lines = inks.stream().flatMap(ink -> ink.chains().stream()).toList();
    }

    /** A word where it fits best; in the middle of the room if it is wider than that. */
    Label label(String word, Window room) {
        double width = Letters.widestMm(word, PageFrame.SMALL) + 2 * WHITE;
        double height = PageFrame.SMALL + 2 * WHITE;
        Window middle = round((room.left() + room.right()) / 2, (room.bottom() + room.top()) / 2, width, height);
        double across = Math.max(0, room.width() - width) / (2 * STEPS);
        double up = Math.max(0, room.height() - height) / (2 * STEPS);
        Window best = leastCrossed(middle, across, up);
        return new Label(
                word,
                (best.left() + best.right()) / 2,
                (best.bottom() + best.top()) / 2,
                PageFrame.SMALL,
                Anchor.MIDDLE);
    }

    private static Window round(double x, double y, double width, double height) {
        return new Window(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
    }

    private Window leastCrossed(Window middle, double across, double up) {
        List<double[]> near = middle.grown(STEPS * across, STEPS * up).of(lines);
        Window best = middle;
        int least = Integer.MAX_VALUE;
        for (int[] step : STEPS_OUTWARDS) {
            Window place = middle.moved(step[0] * across, step[1] * up);
            int crossed = place.of(near).size();
            if (crossed == 0) {
                return place;
            }
            if (crossed < least) {
                best = place;
                least = crossed;
            }
        }
        return best;
    }
}
