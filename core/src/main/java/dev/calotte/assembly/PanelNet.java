package dev.calotte.assembly;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.Arrays;
import java.util.List;

/** Which panels of a dome are neighbours, by numbers. */
final class PanelNet {

    static final int NONE = -1;

    private final int[] struts;
    private final int[] hubs;
    private final int[] across;

    PanelNet(Dome dome) {
        List<Panel> panels = dome.panels();
        this.struts = new int[3 * panels.size()];
        this.hubs = new int[3 * panels.size()];
        this.across = new int[3 * panels.size()];
        int[] first = new int[dome.struts().size()];
        Arrays.fill(first, NONE);
        Arrays.fill(across, NONE);
        for (Panel panel : panels) {
            for (int side = 0; side < 3; side++) {
                int here = 3 * panel.index() + side;
                struts[here] = panel.struts().get(side);
                hubs[here] = panel.hubs().get(side);
                meet(first, here);
            }
        }
    }

    private void meet(int[] first, int here) {
        int there = first[struts[here]];
        if (there == NONE) {
            first[struts[here]] = here;
        } else {
            across[here] = there;
            across[there] = here;
        }
    }

    int panels() {
        return struts.length / 3;
    }

    /** The side on the other side of a side's strut, or {@link #NONE}; sides are numbered 3 × panel + side. */
    int across(int side) {
        return across[side];
    }

    int strut(int side) {
        return struts[side];
    }

    /** The hub at which a side begins, counter-clockwise seen from outside. */
    int hub(int side) {
        return hubs[side];
    }

    /** The next side of the same panel, counter-clockwise. */
    static int after(int side) {
        return side % 3 == 2 ? side - 2 : side + 1;
    }

    /** The side of the same panel before it. */
    static int before(int side) {
        return side % 3 == 0 ? side + 2 : side - 1;
    }
}
