package dev.calotte.document;

import java.util.List;
import java.util.Optional;

/**
 * A book to work by, in the order of the work. All texts are of any characters, without markup.
 *
 * @param name where the file belongs
 * @param title what is built
 * @param key what tells one design from another, of the characters {@code a-z 0-9}: ticks are remembered under it
 * @param chapters the chapters in order
 * @param scene what is built, to be turned and touched; empty if there are too many pieces
 * @param colophon what made the book: the program and its version
 */
public record Book(
        String name, String title, String key, List<Chapter> chapters, Optional<Scene> scene, String colophon)
        implements Document {

    /**
     * A chapter.
     *
     * @param title its heading, for example {@code Cut}
     * @param need what one needs at hand before it begins; may be empty
     * @param blocks what it says
     * @param done what one should have when it ends; may be empty
     */
    public record Chapter(String title, String need, List<Block> blocks, String done) {

        /**
         * Copies the list.
         *
         * @param title its heading
         * @param need what one needs at hand
         * @param blocks what it says
         * @param done what one should have
         */
        public Chapter {
            blocks = List.copyOf(blocks);
        }
    }

    /** A part of a chapter. */
    public sealed interface Block permits Text, Notice, Table, Figure, Ticks, Source, View {}

    /**
     * Paragraphs.
     *
     * @param heading stands above; may be empty
     * @param paragraphs the paragraphs
     */
    public record Text(String heading, List<String> paragraphs) implements Block {

        /**
         * Copies the list.
         *
         * @param heading stands above
         * @param paragraphs the paragraphs
         */
        public Text {
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /**
     * A warning in a box.
     *
     * @param heading what it is about
     * @param lines what to mind
     */
    public record Notice(String heading, List<String> lines) implements Block {

        /**
         * Copies the list.
         *
         * @param heading what it is about
         * @param lines what to mind
         */
        public Notice {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A table.
     *
     * @param heading stands above
     * @param columns its columns
     * @param rows its rows, each with a cell for every column
     */
    public record Table(String heading, List<Column> columns, List<Row> rows) implements Block {

        /**
         * Copies the lists.
         *
         * @param heading stands above
         * @param columns its columns
         * @param rows its rows
         * @throws IllegalArgumentException if a row has more or fewer cells than there are columns
         */
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            int wide = columns.size();
            if (rows.stream().anyMatch(row -> row.cells().size() != wide)) {
                throw new IllegalArgumentException("the rows of " + heading + " do not fit its columns");
            }
        }
    }

    /**
     * A column.
     *
     * @param heading what it holds, with the unit
     * @param number whether it holds numbers, which stand at the right
     */
    public record Column(String heading, boolean number) {}

    /**
     * A row.
     *
     * @param about the mark of the kind or piece that it is about, which the scene shows; may be empty
     * @param cells its cells
     */
    public record Row(String about, List<String> cells) {

        /**
         * Copies the list.
         *
         * @param about what it is about
         * @param cells its cells
         */
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A picture, alone or beside the table that it belongs to.
     *
     * @param picture the picture
     * @param caption what it shows
     * @param beside a table
     */
    public record Figure(Picture picture, String caption, Optional<Table> beside) implements Block {}

    /**
     * Things to do, each with a box to tick.
     *
     * @param heading stands above
     * @param ticks what to do, in order
     */
    public record Ticks(String heading, List<Tick> ticks) implements Block {

        /**
         * Copies the list.
         *
         * @param heading stands above
         * @param ticks what to do
         */
        public Ticks {
            ticks = List.copyOf(ticks);
        }
    }

    /**
     * Something to do.
     *
     * @param id what tells it from all others in the book, of the characters {@code a-z 0-9 . -}
     * @param text what to do
     * @param picture how it looks then, if there is a picture
     */
    public record Tick(String id, String text, Optional<Picture> picture) {}

    /**
     * A text to be shown as it is, line by line.
     *
     * @param heading stands above
     * @param text the text
     */
    public record Source(String heading, String text) implements Block {}

    /**
     * The place of the scene.
     *
     * @param caption what it shows and how it is turned
     * @param instead the picture that stands for it on paper
     */
    public record View(String caption, Picture instead) implements Block {}

    /**
     * Copies the list.
     *
     * @param name where the file belongs
     * @param title what is built
     * @param key what tells one design from another
     * @param chapters the chapters
     * @param scene what is built
     * @param colophon what made the book
     */
    public Book {
        chapters = List.copyOf(chapters);
    }
}
