package dev.calotte.svg.paper;

import dev.calotte.document.Drawing;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/** The whole template in small, with the grid of its pages. */
final class OverviewPage {

    private static final double LINE = 4.5;
    private static final double WORDS = 36;
    private static final int MOST_LINES = 8;

    private final Drawing drawing;
    private final Tiling tiling;
    private final Window room;
    private final double scale;
    private final double bottom;

    OverviewPage(Drawing drawing, Tiling tiling) {
        this.drawing = drawing;
        this.tiling = tiling;
        Window window = tiling.layout().window();
        this.room = new Window(window.left(), window.bottom(), window.right(), window.top() - WORDS);
        this.scale = Math.min(room.width() / gridWidth(), room.height() / gridHeight());
        this.bottom = room.top() - scale * gridHeight();
    }

    private double gridWidth() {
        return tiling.columns() * tiling.layout().acrossMm() + PageLayout.OVERLAP;
    }

    private double gridHeight() {
        return tiling.rows() * tiling.layout().downMm() + PageLayout.OVERLAP;
    }

    PaperPage page() {
        PageFrame frame = new PageFrame(tiling.layout().size())
                .titled(drawing.title())
                .placed(place())
                .noted(PageFrame.LINES)
                .with(grid())
                .with(small(tiling.inks()));
        List<String> steps = Letters.wrapped(steps(), PageFrame.SMALL, room.width());
        List<String> lines = new ArrayList<>(
                descriptions().stream().limit(MOST_LINES - steps.size()).toList());
        lines.addAll(steps);
        double y = tiling.layout().window().top();
        for (String line : lines) {
            frame.with(new Label(
                    Letters.fitted(line, PageFrame.SMALL, room.width()),
                    room.left(),
                    y,
                    PageFrame.SMALL,
                    Anchor.START));
            y -= LINE;
        }
        tiling.pages().forEach(cell -> frame.with(mark(cell)));
        return frame.page(drawing.title() + ", overview");
    }

    private String place() {
        return "overview, about 1 : " + NumberText.trimmed(1 / scale, 1)
                + (tiling.pages().isEmpty() ? ", no pages" : "");
    }

    private List<String> descriptions() {
        return PatternInks.parts(drawing).stream()
                .flatMap(part ->
                        Letters.wrapped(part.mark() + ": " + part.description(), PageFrame.SMALL, room.width())
                                .stream())
                .toList();
    }

    private String steps() {
        if (tiling.pages().isEmpty()) {
            return "At full size this pattern takes more than " + Template.MOST_PAGES
                    + " pages, and every join adds its error, so no pages are written. Have svg/" + drawing.name()
                    + ".svg printed at full size on one sheet, or mark the panel out with a tape: its corners"
                    + " stand in dome.json.";
        }
        return tiling.pages().size() + " pages, in " + tiling.rows() + " rows and " + tiling.columns()
                + " columns; pages without a line are left out. Print at 100 % (actual size) and check the rulers of each"
                + " page. Begin at the upper left: cut off the dotted edges of a page, lay it on those to its left and"
                + " above so that the crosses and the thin lines meet, and tape it down.";
    }

    private List<Ink> grid() {
        List<double[]> cells = new ArrayList<>();
        for (Cell cell : tiling.pages()) {
            double x = tiling.x(cell);
            double y = tiling.y(cell) + PageLayout.OVERLAP;
            double right = x + tiling.layout().acrossMm();
            double top = y + tiling.layout().downMm();
            cells.add(new double[] {x, y, right, y, right, top, x, top, x, y});
        }
        return cells.isEmpty() ? List.of() : small(List.of(new Ink("PAGES", Pen.FAINT, cells)));
    }

    private Label mark(Cell cell) {
        double x = tiling.x(cell) + tiling.layout().acrossMm() / 2;
        double y = tiling.y(cell) + PageLayout.OVERLAP + tiling.layout().downMm() / 2;
        return new Label(cell.mark(), room.left() + scale * x, bottom + scale * y, PageFrame.SMALL, Anchor.MIDDLE);
    }

    private List<Ink> small(List<Ink> inks) {
        return inks.stream().map(this::small).toList();
    }

    private Ink small(Ink ink) {
        List<double[]> chains = ink.chains().stream().map(this::small).toList();
        return new Ink(ink.id(), ink.pen(), chains);
    }

    private double[] small(double[] chain) {
        double[] small = new double[chain.length];
        for (int i = 0; i < chain.length; i += 2) {
            small[i] = room.left() + scale * chain[i];
            small[i + 1] = bottom + scale * chain[i + 1];
        }
        return small;
    }
}
