package dev.calotte.dome;

import java.util.List;

/**
 * Panels that are left out of a dome, for a door, a window or a vent.
 *
 * @param name what to call it, not empty
 * @param panels the indices of the panels among those of the dome without openings, at least one
 * @param removesStruts whether struts that are left without a panel go too, and hubs that are left without a strut
 */
public record Opening(String name, List<Integer> panels, boolean removesStruts) {

    /**
     * Copies the list.
     *
     * @param name what to call it
     * @param panels the indices of the panels
     * @param removesStruts whether struts that are left without a panel go too
     * @throws IllegalArgumentException if there is no name or no panel
     */
    public Opening {
        panels = List.copyOf(panels);
        if (name.isEmpty() || panels.isEmpty()) {
            throw new IllegalArgumentException("an opening has a name and at least one panel");
        }
    }
}
