package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.drawing.Lay.Fit;
import java.util.Optional;

/**
 * Letters that follow one another on a line.
 *
 * @param text what is written
 * @param end where the next letter would begin on the grid
 * @param length how many sides it takes
 * @param certain whether a letter is among them that more than one side tells
 * @param fit how the grid lies
 */
record WrittenLine(String text, double end, int length, boolean certain, Fit fit) {

    /** As far as spaces may reach in the middle of a text. */
    private static final int MOST_SPACES = 4;

    /** So many letters may come before one that is certain. */
    private static final int UNCERTAIN = 4;

    static WrittenLine of(GridLetter first, Fit fit) {
        int sides = first.sides().size();
        return new WrittenLine(first.text(), first.width() + StrokeAlphabet.GAP, sides, sides > 1, fit);
    }

    /** The line with all letters that follow; a letter that begins like another is the one with more sides. */
    WrittenLine continued(Sides sides, int start) {
        WrittenLine line = this;
        Optional<WrittenLine> longer = next(sides, start);
        while (longer.isPresent() && (longer.get().certain || longer.get().length <= UNCERTAIN)) {
            line = longer.get();
            longer = line.next(sides, start);
        }
        return line;
    }

    private Optional<WrittenLine> next(Sides sides, int start) {
        double space = StrokeAlphabet.glyph(' ').width() + StrokeAlphabet.GAP;
        for (int spaces = 0; spaces <= MOST_SPACES; spaces++) {
            double u = end + spaces * space;
            for (GridLetter letter : GridLetter.ALL) {
                Optional<Fit> all = sides.continued(letter, start + length, u, fit);
                if (all.isPresent()) {
                    int more = letter.sides().size();
                    return Optional.of(new WrittenLine(
                            text + " ".repeat(spaces) + letter.text(),
                            u + letter.width() + StrokeAlphabet.GAP,
                            length + more,
                            certain || more > 1,
                            all.get()));
                }
            }
        }
        return Optional.empty();
    }

    boolean isBetterThan(WrittenLine other) {
        return length > other.length || (length == other.length && upright() > other.upright());
    }

    private double upright() {
        return StrictMath.cos(fit.lay().turnRad());
    }

    Label label() {
        Lay lay = fit.lay();
        double half = (end - StrokeAlphabet.GAP) / 2;
        double middle = StrokeAlphabet.CAPITAL / 2;
        return new Label(
                text, lay.x(half, middle), lay.y(half, middle), lay.turnRad(), StrokeAlphabet.CAPITAL * lay.unitMm());
    }
}
