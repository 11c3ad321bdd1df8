package dev.calotte.dome;

import dev.calotte.geometry.TriangleNet;

/**
 * A dome without its openings in plain numbers, for those who go through all of it: nothing is made for a question. Hubs,
 * struts and panels have the indices of {@link Dome#whole()}.
 */
public final class Skeleton {

    private final Body body;
    private final TriangleNet net;

    Skeleton(Body body) {
        this.body = body;
        this.net = body.net();
    }

    /**
     * How many hubs there are.
     *
     * @return the number of hubs
     */
    public int hubCount() {
        return body.hubCount();
    }

    /**
     * How many struts there are.
     *
     * @return the number of struts
     */
    public int strutCount() {
        return body.strutCount();
    }

    /**
     * How many panels there are.
     *
     * @return the number of panels
     */
    public int panelCount() {
        return body.panelCount();
    }

    /**
     * Whether a hub is one of the base ring.
     *
     * @param hub the index of a hub
     * @return true for a base hub
     */
    public boolean isOpen(int hub) {
        return net.isOpen(hub);
    }

    /**
     * One end of a strut.
     *
     * @param strut the index of a strut
     * @return the index of the hub there
     */
    public int start(int strut) {
        return net.start(body.half(strut));
    }

    /**
     * The other end of a strut.
     *
     * @param strut the index of a strut
     * @return the index of the hub there
     */
    public int end(int strut) {
        return net.end(body.half(strut));
    }

    /**
     * How long a strut is.
     *
     * @param strut the index of a strut
     * @return from node to node, in millimetres
     */
    public double lengthMm(int strut) {
        return body.lengthMm(strut);
    }

    /**
     * The angle between the panels of a strut.
     *
     * @param strut the index of a strut
     * @return the angle inside the dome in radians; not a number for a strut of the base ring
     */
    public double dihedralRad(int strut) {
        return body.dihedralRad(strut);
    }

    /**
     * A side of a panel.
     *
     * @param panel the index of a panel
     * @param side 0, 1 or 2, in the order of {@link Panel#struts()}
     * @return the index of the strut
     */
    public int strut(int panel, int side) {
        return body.strutOf(3 * panel + side);
    }

    /**
     * What leaves a hub, in the order of {@link Dome#around}.
     *
     * @param hub the index of a hub
     * @return for each strut its index, and after it that of the strut that closes the panel up to the next one, or
     *     {@link Spoke#NONE} after the last of a base hub
     */
    public int[] around(int hub) {
        int first = net.spoke(hub);
        int count = 0;
        int last = first;
        for (int h = first; h >= 0 && (count == 0 || h != first); h = net.turn(h)) {
            last = h;
            count++;
        }
        boolean open = net.isOpen(hub);
        int[] around = new int[2 * count + (open ? 2 : 0)];
        int h = first;
        for (int i = 0; i < 2 * count; i += 2) {
            around[i] = body.strutOf(h);
            around[i + 1] = body.strutOf(TriangleNet.after(h));
            h = net.turn(h);
        }
        if (open) {
            around[2 * count] = body.strutOf(TriangleNet.before(last));
            around[2 * count + 1] = Spoke.NONE;
        }
        return around;
    }
}
