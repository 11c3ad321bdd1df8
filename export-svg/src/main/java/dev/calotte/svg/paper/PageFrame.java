package dev.calotte.svg.paper;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import dev.calotte.export.PageSize;
import java.util.ArrayList;
import java.util.List;

/** What every page has: a heading, the words that matter when it is printed, and four rulers. */
final class PageFrame {

    static final double SMALL = 2.5;
    static final double NORMAL = 3.5;
    static final String LINES = "Thick lines: cut. Broken lines: fold. Dash-dotted lines: for reference.";
    private static final String ACTUAL_SIZE = "Print at 100 % (actual size)";
    private static final double LINE = 4.2;

    private static final double TITLE_DOWN = 2.5;
    private static final double PLACE_DOWN = 9;
    private static final double METRIC_DOWN = 20;
    private static final double INCHES_DOWN = 28;
    private static final double NOTES_DOWN = 15.5;
    private static final double NOTES_RIGHT = 122;
    private static final double RULER_RIGHT = 10.5;
    private static final double METRIC_UP = 3;
    private static final double INCHES_UP = 113;

    private final PageLayout layout;
    private final List<Ink> inks = new ArrayList<>();
    private final List<Label> words = new ArrayList<>();

    PageFrame(PageSize size) {
        this.layout = new PageLayout(size);
        rulersAcross();
        rulersUpwards();
    }

    private void rulersAcross() {
        double left = PageLayout.MARGIN;
        double metric = layout.top() - METRIC_DOWN;
        double inches = layout.top() - INCHES_DOWN;
        inks.add(Ruler.METRIC.across(left, metric));
        inks.add(Ruler.INCHES.across(left, inches));
        words.add(Ruler.METRIC.labelAcross(left, metric));
        words.add(Ruler.INCHES.labelAcross(left, inches));
    }

    private void rulersUpwards() {
        double x = PageLayout.MARGIN + RULER_RIGHT;
        double metric = PageLayout.MARGIN + METRIC_UP;
        double inches = PageLayout.MARGIN + INCHES_UP;
        inks.add(Ruler.METRIC.upwards(x, metric));
        inks.add(Ruler.INCHES.upwards(x, inches));
        words.addAll(Ruler.METRIC.labelUpwards(PageLayout.MARGIN, metric));
        words.addAll(Ruler.INCHES.labelUpwards(PageLayout.MARGIN, inches));
    }

    /** The same again, to go on with. */
    private PageFrame(PageFrame other) {
        this.layout = other.layout;
        inks.addAll(other.inks);
        words.addAll(other.words);
    }

    PageFrame copy() {
        return new PageFrame(this);
    }

    /** What the pages show. */
    PageFrame titled(String title) {
        double left = PageLayout.MARGIN;
        double right = layout.size().widthMm() - PageLayout.MARGIN;
        double top = layout.top();
        words.add(new Label(Letters.fitted(title, NORMAL, right - left), left, top - TITLE_DOWN, NORMAL, Anchor.START));
        words.add(new Label(ACTUAL_SIZE, right, top - PLACE_DOWN, NORMAL, Anchor.END));
        return this;
    }

    /** Which of the pages this is. */
    PageFrame placed(String place) {
        words.add(new Label(place, PageLayout.MARGIN, layout.top() - PLACE_DOWN, NORMAL, Anchor.START));
        return this;
    }

    /** Sentences to the right of the rulers. */
    PageFrame noted(String notes) {
        double left = PageLayout.MARGIN + NOTES_RIGHT;
        double y = layout.top() - NOTES_DOWN;
        for (String line : Letters.wrapped(notes, SMALL, layout.size().widthMm() - PageLayout.MARGIN - left)) {
            words.add(new Label(line, left, y, SMALL, Anchor.START));
            y -= LINE;
        }
        return this;
    }

    PageFrame with(List<Ink> more) {
        inks.addAll(more);
        return this;
    }

    PageFrame with(Label label) {
        words.add(label);
        return this;
    }

    PaperPage page(String title) {
        return new PaperPage(title, layout.size(), inks, words);
    }
}
