package dev.calotte.book;

import dev.calotte.document.Book;
import dev.calotte.document.Picture;
import java.util.List;
import java.util.Optional;

/** The book by which a dome is bought, cut, joined, raised and checked. */
public final class BuildBook {

    private BuildBook() {}

    /**
     * Writes the book of a dome.
     *
     * @param matter what it is made from
     * @param drawings the drawings of the dome, as {@link dev.calotte.drawing.DomeDrawings} makes them; none if it has too
     *     many panels, and then there is no scene either
     * @return the document {@code build-book}
     */
    public static Book of(Matter matter, List<Picture> drawings) {
        Desk desk = new Desk(matter, drawings);
        return new Book(
                "build-book",
                matter.subject().title(),
                DesignKey.of(matter),
                List.of(
                        new GlanceChapter(desk).chapter(),
                        new BuyChapter(desk).chapter(),
                        new CutChapter(desk).chapter(),
                        new MarkChapter(desk).chapter(),
                        new JoinChapter(desk).chapter(),
                        new RaiseChapter(desk).chapter(),
                        new CheckChapter(desk).chapter(),
                        new CareChapter(desk).chapter()),
                drawings.isEmpty() ? Optional.empty() : Optional.of(new DomeScene(desk).scene()),
                matter.program());
    }
}
