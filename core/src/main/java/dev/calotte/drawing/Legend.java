package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.parts.Parts;
import java.util.List;

/** Kinds with their looks and counts, as far as they are few enough to be looked up. */
final class Legend {

    private static final int MOST = 32;
    private static final double ROW = 6.5;
    private static final double COLUMN = 46;
    private static final double SWATCH = 6;
    private static final double GAP = 6;

    private Legend() {}

    /**
     * A kind.
     *
     * @param mark its mark
     * @param colour the number of its colour
     * @param hatch its hatch
     * @param says what stands beside its look
     */
    record Entry(String mark, int colour, Hatch hatch, String says) {}

    static void add(Paper paper, Parts parts) {
        List<Entry> entries = parts.panelKinds().stream()
                .map(kind -> new Entry(
                        kind.mark(),
                        kind.number(),
                        KindLook.hatch(kind.hand()),
                        kind.mark() + "  " + kind.count() + (kind.count() == 1 ? " panel" : " panels")))
                .toList();
        add(paper, entries, entries.size() + " kinds of panels; the sheets of panels show each.");
    }

    static void add(Paper paper, List<Entry> entries, String ifTooMany) {
        if (entries.size() > MOST) {
            paper.note(ifTooMany);
            return;
        }
        double widest = entries.stream()
                .mapToDouble(entry -> Letters.widthMm(entry.says(), Letters.MARK))
                .max()
                .orElse(0);
        double column = Math.max(COLUMN, SWATCH + 2 + widest + GAP);
        int columns = Math.max(1, (int) (paper.room().width() / column));
        int rows = (entries.size() + columns - 1) / columns;
        Box strip = paper.strip(ROW * rows + 2);
        double first = strip.high() - 2 - ROW / 2;
        for (int i = 0; i < entries.size(); i++) {
            int row = i / columns;
            double x = strip.left() + column * (i % columns);
            put(paper, entries.get(i), x, first - ROW * row);
        }
    }

    private static void put(Paper paper, Entry entry, double x, double y) {
        List<Double> box = List.of(x, y - 2, x + SWATCH, y - 2, x + SWATCH, y + 2, x, y + 2);
        paper.add(new Facet(box, entry.colour(), entry.hatch(), Weight.FINE, entry.mark()));
        paper.text(entry.says(), x + SWATCH + 2, y, Letters.MARK, Anchor.START);
    }
}
