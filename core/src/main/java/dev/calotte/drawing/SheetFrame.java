package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import java.util.List;

/** One line at the bottom right that says what a sheet is. A title too long for it is shortened. */
final class SheetFrame {

    private static final String BETWEEN = "  |  ";
    private static final double UNDER_RULE = 3.5;

    private SheetFrame() {}

    static void add(List<Item> items, Draft draft, List<String> fields) {
        double right = draft.paper().widthMm() - Paper.MARGIN;
        double room = right - Paper.MARGIN;
        String rest = BETWEEN + String.join(BETWEEN, fields.subList(1, fields.size()));
        double left = room - Letters.widthMm(rest, Letters.SMALL);
        String text = Letters.shortened(fields.get(0), Letters.SMALL, left) + rest;
        double width = Letters.widthMm(text, Letters.SMALL);
        double y = Paper.MARGIN + Letters.SMALL / 2;
        items.add(new Line(right - width, y + UNDER_RULE, right, y + UNDER_RULE, Weight.FINE, false));
        items.add(new Label(text, right, y, Letters.SMALL, Anchor.END));
    }
}
