package dev.calotte.cli.brief;

import java.util.List;

/**
 * An opening that a brief asks for.
 *
 * @param name what it is called, one line
 * @param marks the marks of the panels to leave out, as they are written
 * @param removesStruts whether struts left without a panel go too
 */
public record OpeningRequest(String name, List<String> marks, boolean removesStruts) {

    /**
     * Copies the list.
     *
     * @param name what it is called
     * @param marks the marks of the panels to leave out
     * @param removesStruts whether struts left without a panel go too
     */
    public OpeningRequest {
        marks = List.copyOf(marks);
    }
}
