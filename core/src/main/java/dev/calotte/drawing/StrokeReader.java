package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads texts back that were written with {@link StrokeText}, whatever their height and direction, from the lines that are
 * engraved. The sides of each letter have to follow one another as they were written, and the letters of a text too; other
 * lines may come between texts. How sides are joined to paths does not matter, nor in which direction they run, since
 * readers of files join them anew.
 *
 * <p>The first letter gives height and direction, and the others have to stand where it says. Of several ways to read,
 * the one that explains the most sides is taken, and of those the one that stands more upright: a single 6 is a 9 upside
 * down. Spaces at the ends of a text leave no strokes, and a text of letters with one side only, such as a hyphen, is not
 * told from other lines.
 */
public final class StrokeReader {

    private StrokeReader() {}

    /**
     * Reads what is engraved.
     *
     * @param shapes shapes of one or several pieces, in the order in which they are worked; those that are not engraved are
     *     passed over
     * @return the texts with the middles of their lines, in the frame of the shapes and the order of writing
     */
    public static List<Label> texts(List<? extends Shape> shapes) {
        Sides sides = Sides.of(shapes.stream()
                .filter(shape -> shape.operation() == Operation.ENGRAVE && shape instanceof Polyline)
                .map(Polyline.class::cast)
                .toList());
        List<Label> texts = new ArrayList<>();
        int at = 0;
        while (at < sides.size()) {
            Optional<WrittenLine> line = line(sides, at);
            line.ifPresent(found -> texts.add(found.label()));
            at += line.map(WrittenLine::length).orElse(1);
        }
        return List.copyOf(texts);
    }

    /** The best text that begins with a side. */
    private static Optional<WrittenLine> line(Sides sides, int start) {
        WrittenLine best = null;
        for (GridLetter letter : GridLetter.ALL) {
            for (boolean reversed : new boolean[] {false, true}) {
                WrittenLine line = sides.begun(letter, start, reversed)
                        .map(fit -> WrittenLine.of(letter, fit).continued(sides, start))
                        .filter(WrittenLine::certain)
                        .orElse(best);
                best = best == null || line.isBetterThan(best) ? line : best;
            }
        }
        return Optional.ofNullable(best);
    }
}
