package dev.calotte.drawing;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Item;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing that does not know yet which sheet of how many it is.
 *
 * @param name its document's name
 * @param what what it shows, in a few words
 * @param says what its title says after the dome's
 * @param paper its page
 * @param scale its scale, or that it has none
 * @param items what is on it, all but the frame
 */
record Draft(String name, String what, String says, PaperSize paper, String scale, List<Item> items) {

    Draft {
        items = List.copyOf(items);
    }

    /** The same with more to say in its title. */
    Draft saying(String more) {
        return new Draft(name, what, more, paper, scale, items);
    }

    /** Adds the frame's line: the fields of ISO 7200 that a builder reads. */
    Picture framed(String title, String units, int sheet, int of) {
        List<Item> all = new ArrayList<>(items);
        SheetFrame.add(all, this, List.of(title, what, scale, units, "sheet " + sheet + " of " + of));
        return new Picture(name, title + ": " + says, paper.widthMm(), paper.heightMm(), all);
    }
}
