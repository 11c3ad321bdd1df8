package dev.calotte.svg.paper;

import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
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
                .with(legible(small(tiling.inks())));
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
        FreeSpot spot = new FreeSpot(legible(small(tiling.inks())));
        tiling.pages().forEach(cell -> frame.with(spot.label(cell.mark(), small(cell))));
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
            Window seen = small(cell);
            cells.add(seen.outline());
        }
        return cells.isEmpty() ? List.of() : List.of(new Ink("PAGES", Pen.FAINT, cells));
    }

    /** What of a page stays in sight. */
    private Window small(Cell cell) {
        Window seen = tiling.inSight(cell);
        double[] small = small(new double[] {seen.left(), seen.bottom(), seen.right(), seen.top()});
        return new Window(small[0], small[1], small[2], small[3]);
    }

    /** Without letters too small to be read; the words above say what they do. */
    private static List<Ink> legible(List<Ink> inks) {
        return inks.stream()
                .map(ink -> ink.id().equals(Operation.ENGRAVE.name())
                        ? new Ink(
                                ink.id(),
                                ink.pen(),
                                ink.chains().stream()
                                        .filter(OverviewPage::isLarge)
                                        .toList())
                        : ink)
                .filter(ink -> !ink.chains().isEmpty())
                .toList();
    }

    private static boolean isLarge(double[] chain) {
        Window round = Window.round(List.of(chain));
        return Math.max(round.width(), round.height()) >= PageFrame.SMALL;
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
