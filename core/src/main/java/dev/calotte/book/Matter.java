package dev.calotte.book;

import dev.calotte.assembly.Patches;
import dev.calotte.bill.Bill;
import dev.calotte.bill.Needs;
import dev.calotte.caution.Caution;
import dev.calotte.drawing.Subject;
import java.util.List;

/**
 * What a book is made from.
 *
 * @param subject the dome, what it is called, and how lengths are written
 * @param needs what it is made of
 * @param bill what that takes
 * @param patches its panels in units that are made first
 * @param cautions what to mind
 * @param notes what the reader should know about how the dome was understood; sentences
 * @param stockNotes what is said of the stock: how well it is used, what a little less would save; sentences
 * @param jigs whether jigs are printed for it
 * @param source the text that it was made from
 * @param program the program that makes it, with its version
 */
public record Matter(
        Subject subject,
        Needs needs,
        Bill bill,
        Patches patches,
        List<Caution> cautions,
        List<String> notes,
        List<String> stockNotes,
        boolean jigs,
        String source,
        String program) {

    /**
     * Copies the lists.
     *
     * @param subject the dome
     * @param needs what it is made of
     * @param bill what that takes
     * @param patches its panels in units
     * @param cautions what to mind
     * @param notes what the reader should know
     * @param stockNotes what is said of the stock
     * @param jigs whether jigs are printed
     * @param source the text that it was made from
     * @param program the program that makes it
     */
    public Matter {
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
        stockNotes = List.copyOf(stockNotes);
    }
}
