package dev.calotte.drawing;

import dev.calotte.document.Picture;
import java.util.List;

/**
 * A picture of a sheet or of a stretch of a roll.
 *
 * @param picture the picture
 * @param places for each place the mark of its pattern, if the picture stands for several sheets that are laid alike:
 *     places are then numbered from 1 in the picture; empty if it shows one, with the marks of its pieces
 * @param sheets those sheets in order, each with the piece at every place
 */
public record StockPicture(Picture picture, List<String> places, List<Laid> sheets) {

    /**
     * What lies on one of several sheets.
     *
     * @param sheet the number of the sheet, from 1
     * @param marks the marks of its pieces, place by place
     */
    public record Laid(int sheet, List<String> marks) {

        /**
         * Copies the list.
         *
         * @param sheet the number of the sheet
         * @param marks the marks of its pieces
         */
        public Laid {
            marks = List.copyOf(marks);
        }
    }

    /**
     * Copies the lists.
     *
     * @param picture the picture
     * @param places the marks of the patterns, place by place
     * @param sheets the sheets
     * @throws IllegalArgumentException if a sheet has more or fewer pieces than there are places
     */
    public StockPicture {
        places = List.copyOf(places);
        sheets = List.copyOf(sheets);
        int count = places.size();
        if (sheets.stream().anyMatch(sheet -> sheet.marks().size() != count)) {
            throw new IllegalArgumentException("a sheet in " + picture.name() + " has not " + count + " pieces");
        }
    }

    static StockPicture alone(Picture picture) {
        return new StockPicture(picture, List.of(), List.of());
    }
}
