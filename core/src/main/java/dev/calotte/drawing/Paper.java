package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import java.util.ArrayList;
import java.util.List;

/** A page on which something is drawn: heading and notes above, frame below, between them the room for the figure. */
final class Paper {

    static final double MARGIN = 10;

    /** From one line of marks to the next. */
    static final double LINE = 6;

    private static final double FRAME = 9;

    /** Between the figure and what stands under it. */
    private static final double BELOW = 6;

    private final PaperSize size;
    private final List<Item> items = new ArrayList<>();
    private double top;
    private double bottom = MARGIN + FRAME;

    Paper(PaperSize size, String heading) {
        this.size = size;
        this.top = size.heightMm() - MARGIN;
        write(heading, Letters.TITLE, 9);
    }

    /** Writes a note under the heading, in as many lines as it needs. */
    void note(String text) {
        write(text, Letters.MARK, LINE);
    }

    private void write(String text, double height, double line) {
        for (String part : Letters.wrapped(text, height, size.widthMm() - 2 * MARGIN)) {
            items.add(new Label(part, MARGIN, top - line / 2, height, Anchor.START));
            top -= line;
        }
    }

    /** Takes a strip off the bottom of the room. */
    Box strip(double height) {
        Box strip = new Box(MARGIN, bottom, size.widthMm() - MARGIN, bottom + height);
        bottom += height;
        return strip;
    }

    /** What is left for the figure. */
    Box room() {
        return new Box(MARGIN, bottom, size.widthMm() - MARGIN, top - 2);
    }

    void add(Item item) {
        items.add(item);
    }

    void line(double x1, double y1, double x2, double y2, Weight weight) {
        if (Math.abs(x1 - x2) > 1e-3 || Math.abs(y1 - y2) > 1e-3) {
            items.add(new Line(x1, y1, x2, y2, weight, false));
        }
    }

    void text(String text, double x, double y, double height, Anchor anchor) {
        items.add(new Label(text, x, y, height, anchor));
    }

    List<Label> labels() {
        return items.stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    /**
     * The drawing, on a page without the empty space between its figure and what stands at the bottom.
     *
     * @param name its document's name
     * @param what what it shows
     * @param scale its scale
     * @param lowest how far down the figure reaches
     */
    Draft draft(String name, String what, String scale, double lowest) {
        double empty = Math.max(0, lowest - bottom - BELOW);
        List<Item> moved = items.stream()
                .map(item -> Shift.height(item) < bottom ? item : Shift.down(item, empty))
                .toList();
        return new Draft(name, what, what, new PaperSize(size.widthMm(), size.heightMm() - empty), scale, moved);
    }
}
