package dev.calotte.svg.paper;

import java.util.List;

/**
 * Lines on a page that belong together.
 *
 * @param id what they are, unique on the page: a name in XML
 * @param pen how they are drawn
 * @param chains chains of straight lines: x and y of each point in millimetres from the lower left corner of the page
 */
public record Ink(String id, Pen pen, List<double[]> chains) {

    /**
     * Copies the list.
     *
     * @param id what they are
     * @param pen how they are drawn
     * @param chains chains of straight lines
     */
    public Ink {
        chains = List.copyOf(chains);
    }

    /**
     * Whether a chain ends where it begins.
     *
     * @param chain x and y of each point
     * @return true for an outline
     */
    public static boolean isClosed(double[] chain) {
        int last = chain.length - 2;
        return last >= 6 && chain[0] == chain[last] && chain[1] == chain[last + 1];
    }
}
