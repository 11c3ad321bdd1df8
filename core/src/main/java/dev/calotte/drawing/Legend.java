package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Weight;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import java.util.List;

/** The kinds of panels with their looks and counts, as far as they are few enough to be looked up. */
final class Legend {

    private static final int MOST = 32;
    private static final double ROW = 6.5;
    private static final double COLUMN = 46;
    private static final double SWATCH = 6;

    private Legend() {}

    static void add(Paper paper, Parts parts) {
        List<PanelKind> kinds = parts.panelKinds();
        if (kinds.size() > MOST) {
            paper.note(kinds.size() + " kinds of panels; the sheets of panels show each.");
            return;
        }
        int columns = (int) (paper.room().width() / COLUMN);
        int rows = (kinds.size() + columns - 1) / columns;
        Box strip = paper.strip(ROW * rows + 2);
        double first = strip.high() - 2 - ROW / 2;
        for (int i = 0; i < kinds.size(); i++) {
            int row = i / columns;
            double x = strip.left() + COLUMN * (i % columns);
            put(paper, kinds.get(i), x, first - ROW * row);
        }
    }

    private static void put(Paper paper, PanelKind kind, double x, double y) {
        List<Double> box = List.of(x, y - 2, x + SWATCH, y - 2, x + SWATCH, y + 2, x, y + 2);
        paper.add(new Facet(box, kind.number(), KindLook.hatch(kind), Weight.FINE, kind.mark()));
        String text = kind.mark() + "  " + kind.count() + (kind.count() == 1 ? " panel" : " panels");
        paper.text(text, x + SWATCH + 2, y, Letters.MARK, Anchor.START);
    }
}
