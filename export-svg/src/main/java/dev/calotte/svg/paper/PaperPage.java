package dev.calotte.svg.paper;

import dev.calotte.document.Picture.Label;
import dev.calotte.export.PageSize;
import java.util.List;

/**
 * A page of a template: black lines and words, none of them nearer to the edge of the paper than 10 mm.
 *
 * @param title what it shows, in one line
 * @param size the paper, upright
 * @param inks its lines
 * @param words its words
 */
public record PaperPage(String title, PageSize size, List<Ink> inks, List<Label> words) {

    /**
     * Copies the lists.
     *
     * @param title what it shows
     * @param size the paper
     * @param inks its lines
     * @param words its words
     */
    public PaperPage {
        inks = List.copyOf(inks);
        words = List.copyOf(words);
    }
}
