package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Weight;
import dev.calotte.drawing.SizeChoice.Attempt;
import dev.calotte.parts.CloseKinds;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** The rows of panels, each unrolled to a strip, the one at the crown on top. */
final class RowsDrawing {

    private static final double BETWEEN = 4;
    private static final double ARROW = 8;
    private static final int MOST_PAIRS = 12;

    private final Subject subject;
    private final PieceMarks marks;
    private final List<RowStrip> strips;
    private final List<Box> extents;

    private RowsDrawing(Subject subject) {
        this.subject = subject;
        this.marks = subject.marks();
        this.strips = RowStrip.of(subject.dome());
        this.extents = strips.stream().map(RowStrip::extent).toList();
    }

    static Draft of(Subject subject) {
        RowsDrawing drawing = new RowsDrawing(subject);
        List<PaperSize> sizes =
                PaperSize.of(subject.units()).stream().map(PaperSize::onItsSide).toList();
        return SizeChoice.smallest(sizes, drawing::on);
    }

    private Attempt on(PaperSize size) {
        Paper paper = new Paper(size, "Rows of panels, unrolled");
        paper.note("Each row from left to right as it is counted: counter-clockwise from the start ray seen from above,"
                + " to the right seen from outside.");
        closeKinds(paper);
        Legend.add(paper, subject.parts());
        ScaleBar bar = ScaleBar.on(paper, subject.units());
        Box room = paper.room();
        DrawnScale scale = scale(room);
        double y = room.high() - ARROW;
        double zero = room.left() + rowNames() - scale.onPaper(left());
        arrow(paper, zero, y);
        Leaders leaders = new Leaders();
        for (int i = 0; i < strips.size(); i++) {
            Box extent = extents.get(i);
            OnPaper place = new OnPaper(new Vector2D(zero, y - scale.onPaper(extent.high())), scale);
            add(paper, strips.get(i), place, leaders);
            double middle = y - scale.onPaper(extent.height()) / 2;
            paper.text("row " + strips.get(i).row(), room.left(), middle, Letters.MARK, Anchor.START);
            y -= scale.onPaper(extent.height()) + BETWEEN;
        }
        double low = y + BETWEEN;
        leaders.draw(paper, new Box(zero, low, room.right() - leaders.widthMm() - 1, room.high() - ARROW));
        bar.draw(scale, ", along the slope");
        return new Attempt(
                paper.draft("drawings/rows", "rows of panels, unrolled", "scale " + scale.text(), low),
                leaders.count() + Crowding.count(paper.labels()));
    }

    private void closeKinds(Paper paper) {
        List<CloseKinds> pairs = subject.parts().closeKinds().stream()
                .filter(pair -> pair.first().startsWith("P"))
                .toList();
        if (!pairs.isEmpty()) {
            String text = pairs.stream()
                    .limit(MOST_PAIRS)
                    .map(pair -> pair.first() + " and " + pair.second() + " by "
                            + subject.units().length(pair.differenceMm(), 1))
                    .collect(Collectors.joining(", "));
            paper.note(
                    "Mind the marks, these differ little: " + text + (pairs.size() > MOST_PAIRS ? ", and more." : "."));
        }
    }

    private DrawnScale scale(Box room) {
        double across = room.width() - rowNames();
        double up = room.height() - ARROW - BETWEEN * (strips.size() - 1);
        double wide = extents.stream().mapToDouble(Box::right).max().orElse(1) - left();
        double high = extents.stream().mapToDouble(Box::height).sum();
        DrawnScale byWidth = DrawnScale.fitting(wide, Math.max(across, 1), subject.units());
        DrawnScale byHeight = DrawnScale.fitting(high, Math.max(up, 1), subject.units());
        return byWidth.ratio() > byHeight.ratio() ? byWidth : byHeight;
    }

    private double left() {
        return extents.stream().mapToDouble(Box::left).min().orElse(0);
    }

    private double rowNames() {
        int last = strips.get(strips.size() - 1).row();
        return Letters.widthMm("row " + last, Letters.MARK) + 3;
    }

    /** The start ray over the strips, pointing the way of the count. */
    private static void arrow(Paper paper, double x, double y) {
        paper.line(x, y + 1, x, y + 6, Weight.STRONG);
        StartArrow.add(paper, new Vector2D(x, y + 3.5), new Vector2D(1, 0));
    }

    private void add(Paper paper, RowStrip strip, OnPaper place, Leaders leaders) {
        for (int i = 0; i < strip.panels().size(); i++) {
            var panel = strip.panels().get(i);
            List<Vector2D> corners = place.of(strip.corners(i));
            String mark = marks.of(panel);
            paper.add(KindLook.facet(corners, subject.parts().kindOf(panel), Weight.STRONG, mark));
            leaders.mark(paper, mark, Letters.SMALL, corners);
        }
    }
}
