package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import java.util.stream.IntStream;

/** Where struts end at each hub. */
final class HubEnds {

    private HubEnds() {}

    /** From the axis of each hub to the ends of its struts, in millimetres. */
    static double[] mm(Dome dome, Joinery joinery) {
        int[] struts = new int[dome.hubs().size()];
        for (Strut strut : dome.struts()) {
            struts[strut.from()]++;
            struts[strut.to()]++;
        }
        return IntStream.range(0, struts.length)
                .mapToDouble(hub -> joinery.endMm(dome.hubs().get(hub).open(), struts[hub]))
                .toArray();
    }
}
