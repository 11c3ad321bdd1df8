package dev.calotte.svg.paper;

import java.util.function.Supplier;

/** A page and the name of its file. The page is drawn when it is first asked for. */
public final class Leaf {

    private final String name;
    private final Supplier<PaperPage> drawing;
    private PaperPage page;

    Leaf(String name, Supplier<PaperPage> drawing) {
        this.name = name;
        this.drawing = drawing;
    }

    /**
     * The name of its file, without folder and ending.
     *
     * @return for example {@code glazing-P1-r2c3}
     */
    public String name() {
        return name;
    }

    /**
     * The page.
     *
     * @return the same each time
     */
    public synchronized PaperPage page() {
        if (page == null) {
            page = drawing.get();
        }
        return page;
    }
}
