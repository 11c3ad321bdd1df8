package dev.calotte.svg.book;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Scene;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The names in a book by which the page finds things. */
final class BookNames {

    private static final Pattern KEY = Pattern.compile("[a-z0-9]+");
    private static final Pattern TICK = Pattern.compile("[a-z0-9.-]+");

    private BookNames() {}

    /** Two ticks of one name would be ticked together. */
    static void check(Book book) {
        require(KEY, book.key());
        Set<String> seen = new TreeSet<>();
        blocks(book)
                .filter(Ticks.class::isInstance)
                .flatMap(block -> ((Ticks) block).ticks().stream())
                .map(Tick::id)
                .forEach(id -> {
                    require(TICK, id);
                    if (!seen.add(id)) {
                        throw new IllegalArgumentException(book.name() + ": the tick " + id + " comes twice");
                    }
                });
    }

    /** The marks of pieces and kinds that can be shown: none without a scene and a place for it. */
    static Set<String> shown(Book book) {
        Set<String> marks = new TreeSet<>();
        if (blocks(book).anyMatch(Book.View.class::isInstance)) {
            for (Scene.Piece piece : book.scene().map(Scene::pieces).stream()
                    .flatMap(pieces -> pieces.stream())
                    .toList()) {
                marks.add(piece.mark());
                marks.add(piece.kind());
            }
        }
        return marks;
    }

    private static Stream<Block> blocks(Book book) {
        return book.chapters().stream().flatMap(chapter -> chapter.blocks().stream());
    }

    private static void require(Pattern pattern, String name) {
        if (!pattern.matcher(name).matches()) {
            throw new IllegalArgumentException("'" + name + "' is not of the characters " + pattern);
        }
    }
}
