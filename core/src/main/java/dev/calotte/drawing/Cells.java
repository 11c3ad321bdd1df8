package dev.calotte.drawing;

import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Things of one sort side by side, each in a cell of its own, on as many sheets as they need. */
final class Cells {

    private static final int FEW = 6;
    private static final double LEAST_WIDTH = 88;
    private static final double LEAST_HEIGHT = 76;

    private Cells() {}

    /** What a cell holds. */
    interface Content {

        /**
         * Draws one thing.
         *
         * @param paper where to
         * @param cell the room for it
         * @param index which thing
         */
        void draw(Paper paper, Box cell, int index);
    }

    /**
     * What is drawn.
     *
     * @param name the documents' name, with a number where there are several
     * @param heading what stands over them
     * @param note a line under that
     * @param count how many things there are
     */
    record Series(String name, String heading, String note, int count) {}

    static List<Draft> of(Series series, UnitSystem units, Content content) {
        PaperSize size = PaperSize.of(units).get(series.count <= FEW ? 0 : 1);
        List<Draft> sheets = new ArrayList<>();
        int done = 0;
        while (done < series.count) {
            Paper paper = new Paper(size, series.heading);
            paper.note(series.note);
            List<Box> cells = cells(paper.room());
            int from = done;
            done = Math.min(series.count, from + cells.size());
            IntStream.range(from, done).forEach(i -> content.draw(paper, cells.get(i - from), i));
            boolean only = done == series.count && from == 0;
            String name = only ? series.name : series.name + "-" + (sheets.size() + 1);
            double low = cells.get(done - from - 1).low();
            sheets.add(paper.draft("drawings/" + name, series.heading.toLowerCase(Locale.ROOT), "no scale", low));
        }
        return sheets;
    }

    private static List<Box> cells(Box room) {
        int columns = (int) (room.width() / LEAST_WIDTH);
        int rows = (int) (room.height() / LEAST_HEIGHT);
        double width = room.width() / columns;
        double height = room.height() / rows;
        List<Box> cells = new ArrayList<>();
        for (int i = 0; i < rows * columns; i++) {
            int row = i / columns;
            double left = room.left() + width * (i % columns);
            double high = room.high() - height * row;
            cells.add(new Box(left, high - height, left + width, high).grownBy(-1));
        }
        return cells;
    }
}
