package dev.calotte.check;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.check.ExpectedDrawing.Cut;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.StrokeReader;
import dev.calotte.export.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The marks that are written on pieces, as the tool engraves them, and as the file calls its outlines. */
public final class WrittenMarks {

    private WrittenMarks() {}

    /**
     * Looks for the mark of each piece among what is engraved inside its outline, and for names of outlines that are those
     * of other pieces. A drawing of one piece that may lie anywhere is searched as a whole.
     *
     * @param expected what should be shown
     * @param reading what is shown
     * @param findings takes what is wrong
     */
    public static void of(ExpectedDrawing expected, Reading reading, Findings findings) {
        List<Label> texts = StrokeReader.texts(reading.shapes());
        boolean anywhere = expected.border().isEmpty();
        for (Cut cut : expected.cuts()) {
            List<Label> inside = new ArrayList<>(texts);
            inside.removeIf(text -> !anywhere && !Convex.inside(at(text), cut.outline()));
            // a piece too small for letters has none; what is not written cannot be swapped
            if (!inside.isEmpty() && inside.stream().noneMatch(text -> says(text.text(), cut.mark()))) {
                findings.add(
                        Fault.DIFFERENT,
                        cut.mark(),
                        "its mark is not engraved on it; what is: "
                                + inside.get(0).text() + ".");
            }
        }
        if (!anywhere && !expected.once() && expected.kerfMm() == 0) {
            names(expected, reading, findings);
        }
    }

    private static Vector2D at(Label text) {
        return new Vector2D(text.xMm(), text.yMm());
    }

    /** Whether a text is the mark, or holds it as a word: counts and rows may stand beside it. */
    private static boolean says(String text, String mark) {
        return List.of(text.split(" ")).contains(mark);
    }

    private static void names(ExpectedDrawing expected, Reading reading, Findings findings) {
        for (Reading.Line line : reading.lines()) {
            boolean cut = line.shape().operation() == Operation.CUT_OUTER;
            if (cut && line.mark().isPresent()) {
                name(expected, line.mark().get(), line.shape())
                        .ifPresent(piece -> findings.add(
                                Fault.DIFFERENT,
                                piece.mark(),
                                "its outline is called " + line.mark().get() + "."));
            }
        }
    }

    /** The piece whose outline a shape is, if it is called otherwise. */
    private static Optional<Cut> name(ExpectedDrawing expected, String mark, Shape shape) {
        if (!(shape instanceof Polyline path) || !path.isClosed()) {
            return Optional.empty();
        }
        Ring ring = Ring.of(path).plain(expected.withinMm());
        return expected.cuts().stream()
                .filter(cut -> !cut.mark().equals(mark))
                .filter(cut -> cut.outline().middle().distance(ring.middle()) <= expected.withinMm())
                .filter(cut -> cut.outline().plain(expected.withinMm()).distance(ring) <= 2 * expected.withinMm())
                .findFirst();
    }
}
