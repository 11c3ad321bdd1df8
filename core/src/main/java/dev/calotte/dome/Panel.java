package dev.calotte.dome;

import java.util.List;

/**
 * A triangle between three hubs.
 *
 * @param index its place among the dome's panels: by row, then by place
 * @param hubs its three hubs, counter-clockwise seen from outside, beginning with the lowest index
 * @param struts its three struts, number k between the hubs k and k + 1
 * @param row its row from 1, counted from the crown
 * @param place its place in the row from 1, counter-clockwise from the start ray seen from above
 */
public record Panel(int index, List<Integer> hubs, List<Integer> struts, int row, int place) {

    /**
     * Copies the lists.
     *
     * @param index its place among the dome's panels
     * @param hubs its three hubs
     * @param struts its three struts
     * @param row its row
     * @param place its place in the row
     */
    public Panel {
        hubs = List.copyOf(hubs);
        struts = List.copyOf(struts);
    }
}
