package dev.calotte.svg.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.document.Book;
import dev.calotte.document.Book.Block;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Document;
import dev.calotte.document.Picture;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused leaves no half file. */
class BookRefusalTest {

    private static void refuses(Document document, String why) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BookExporter().write(document, out))
                .withMessageContaining(why);
        assertThat(out.size()).isZero();
    }

    private static Block ticks(String... ids) {
        return new Ticks(
                "Do",
                List.of(ids).stream()
                        .map(id -> new Tick(id, "Do it.", Optional.empty()))
                        .toList());
    }

    @Test
    void otherDocuments() {
        Picture picture = SampleBook.bar(1);
        assertThat(new BookExporter().accepts(picture)).isFalse();
        refuses(picture, "book/bar is no book");
    }

    @Test
    void ticksOfOneName() {
        refuses(SampleBook.with(ticks("a", "b"), ticks("a")), "the tick a comes twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "a b", "a\"", "\u00e9", "a\n"})
    void ticksOfOtherCharacters(String id) {
        refuses(SampleBook.with(ticks(id)), "'" + id + "' is not of the characters");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "A", "a-b"})
    void keysOfOtherCharacters(String key) {
        Book book = SampleBook.with();
        refuses(
                new Book(book.name(), book.title(), key, book.chapters(), book.scene(), book.colophon()),
                "'" + key + "' is not of the characters");
    }

    @Test
    void picturesThatCannotBeDrawn() {
        Picture flat = new Picture("book/flat", "Flat", 10, 0, List.of());
        refuses(SampleBook.with(new Figure(flat, "Flat", Optional.empty())), "a page cannot be 0 mm long");
    }
}
