package dev.calotte.pattern;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.Arrays;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Which panels share a strut, which of the two is the upper one, and which way the strut is read. */
final class Neighbours {

    static final int NONE = -1;

    /** Heights and bearings that differ by less than this part of the radius are equal. */
    private static final double LEVEL = 1e-9;

    private final Dome dome;
    private final int[] first;
    private final int[] second;
    private final Vector3D[] hubs;

    Neighbours(Dome dome) {
        this.dome = dome;
        this.first = new int[dome.struts().size()];
        this.second = new int[dome.struts().size()];
        this.hubs = dome.hubs().stream().map(Hub::position).toArray(Vector3D[]::new);
        Arrays.fill(first, NONE);
        Arrays.fill(second, NONE);
        for (Panel panel : dome.panels()) {
            for (int strut : panel.struts()) {
                if (first[strut] == NONE) {
                    first[strut] = panel.index();
                } else {
                    second[strut] = panel.index();
                }
            }
        }
    }

    /** The panel on the other side of a strut, or {@link #NONE}. */
    int across(Panel panel, int strut) {
        return first[strut] == panel.index() ? second[strut] : first[strut];
    }

    /** How a panel lies to its neighbour across its side k. */
    Lap lap(Panel panel, int k) {
        int strut = panel.struts().get(k);
        int other = across(panel, strut);
        if (other == NONE) {
            return Lap.NONE;
        }
        double higher = centre(panel).getZ() - centre(dome.panels().get(other)).getZ();
        if (Math.abs(higher) > LEVEL * dome.radiusMm()) {
            return higher > 0 ? Lap.OVER : Lap.UNDER;
        }
        // side by side the one further on counter-clockwise lies above, so that every such joint runs the same way
        return runsDown(panel, k) ? Lap.OVER : Lap.UNDER;
    }

    /**
     * Whether the strut's first end, the higher one or of two at one height the one further back counter-clockwise, is
     * the first hub of the panel's side k.
     */
    boolean runsDown(Panel panel, int k) {
        Vector3D from = hubs[panel.hubs().get(k)];
        Vector3D to = hubs[panel.hubs().get((k + 1) % 3)];
        double lower = from.getZ() - to.getZ();
        if (Math.abs(lower) > LEVEL * dome.radiusMm()) {
            return lower > 0;
        }
        double onward = from.getX() * to.getY() - from.getY() * to.getX();
        // a level strut right over the centre has no sense of turning; its hubs' order is as good as any
        boolean overCentre = Math.abs(onward) <= LEVEL * dome.radiusMm() * dome.radiusMm();
        return overCentre ? panel.hubs().get(k) < panel.hubs().get((k + 1) % 3) : onward > 0;
    }

    /** The side of a panel that lies most nearly level; of several the first. */
    int foot(Panel panel) {
        int foot = 0;
        for (int k = 1; k < 3; k++) {
            foot = slope(panel, k) < slope(panel, foot) - LEVEL ? k : foot;
        }
        return foot;
    }

    private double slope(Panel panel, int k) {
        Vector3D from = hubs[panel.hubs().get(k)];
        Vector3D to = hubs[panel.hubs().get((k + 1) % 3)];
        return Math.abs(to.getZ() - from.getZ()) / from.distance(to);
    }

    private Vector3D centre(Panel panel) {
        Vector3D sum = Vector3D.ZERO;
        for (int hub : panel.hubs()) {
            sum = sum.add(hubs[hub]);
        }
        return sum.scalarMultiply(1.0 / 3);
    }

    Strut strut(Panel panel, int k) {
        return dome.struts().get(panel.struts().get(k));
    }
}
