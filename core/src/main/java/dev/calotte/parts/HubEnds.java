package dev.calotte.parts;

import dev.calotte.dome.Skeleton;
import java.util.Arrays;

/** Where struts end at each hub. */
final class HubEnds {

    private HubEnds() {}

    /** From the axis of each hub to the ends of its struts, in millimetres. */
    static double[] mm(Skeleton skeleton, Joinery joinery) {
        int[] struts = new int[skeleton.hubCount()];
        for (int strut = 0; strut < skeleton.strutCount(); strut++) {
            struts[skeleton.start(strut)]++;
            struts[skeleton.end(strut)]++;
        }
        double[] ends = new double[struts.length];
        double[] base = new double[1 + Arrays.stream(struts).max().orElse(0)];
        Arrays.fill(base, Double.NaN);
        double[] inner = base.clone();
        for (int hub = 0; hub < ends.length; hub++) {
            double[] known = skeleton.isOpen(hub) ? base : inner;
            if (Double.isNaN(known[struts[hub]])) {
                known[struts[hub]] = joinery.endMm(skeleton.isOpen(hub), struts[hub]);
            }
            ends[hub] = known[struts[hub]];
        }
        return ends;
    }
}
