package dev.calotte.svg.paper;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.export.PageSize;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing at full size for a home printer: one page if it fits, or an overview and the pages to be taped together.
 *
 * <p>Pages that show no line of the drawing are left out, but for those that hold the others together. The drawing is
 * upright or turned by a quarter, whichever needs fewer pages. Neighbours overlap by 10 mm; crosses stand on both, where
 * the edge of the one comes to lie on the other. Curves are drawn as straight lines within 0.01 mm.
 */
public final class Template {

    /**
     * A template of more pages is only an overview that says what to do instead: each join adds its error, and a panel of
     * more than about 1.2 m is marked out sooner with a tape.
     */
    public static final int MOST_PAGES = 24;

    private static final List<String> FOLDERS = List.of("panels/", "hubs/");

    private final Drawing drawing;
    private final Tiling tiling;

    private Template(Drawing drawing, Tiling tiling) {
        this.drawing = drawing;
        this.tiling = tiling;
    }

    /**
     * Whether a document is a single pattern, which people mark out by hand.
     *
     * @param document a document
     * @return true for patterns of panels and of hub plates that have a line
     */
    public static boolean suits(Document document) {
        return document instanceof Drawing drawing
                && FOLDERS.stream().anyMatch(drawing.name()::startsWith)
                && !PatternInks.of(drawing).isEmpty();
    }

    /**
     * Spreads a drawing over pages.
     *
     * @param drawing a drawing that {@link #suits}
     * @param size the paper
     * @return its template
     */
    public static Template of(Drawing drawing, PageSize size) {
        return new Template(drawing, Tiling.of(new PageLayout(size), PatternInks.of(drawing)));
    }

    /**
     * The name of its first file, which is the part of the drawing's name after its folder.
     *
     * @return for example {@code glazing-P1}
     */
    public String name() {
        return drawing.name().substring(drawing.name().indexOf('/') + 1);
    }

    /**
     * The files of its pages, each drawn when it is asked for.
     *
     * @return the overview or only page first, then row by row
     */
    public List<Leaf> leaves() {
        if (tiling.isOnePage()) {
            return List.of(new Leaf(name(), () -> new TilePage(drawing, tiling).whole()));
        }
        TilePage tile = new TilePage(drawing, tiling);
        List<Leaf> leaves = new ArrayList<>();
        leaves.add(new Leaf(name(), () -> new OverviewPage(drawing, tiling).page()));
        for (Cell cell : tiling.pages()) {
            leaves.add(new Leaf(name() + "-" + cell.mark(), () -> tile.page(cell)));
        }
        return leaves;
    }
}
