package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Spoke;
import dev.calotte.geometry.Groups;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The angles between neighbouring struts of a hub that no panel closes, gathered where they differ by rounding only. */
final class BareGaps {

    private final double[] least;

    BareGaps(Dome dome) {
        double[] gaps = dome.openings().isEmpty() ? new double[0] : gaps(dome);
        Groups groups = Groups.of(gaps, StrutSorting.SAME);
        this.least =
                IntStream.range(0, groups.count()).mapToDouble(groups::value).toArray();
    }

    private static double[] gaps(Dome dome) {
        return IntStream.range(0, dome.hubs().size())
                .mapToObj(dome::around)
                .flatMap(spokes -> spokes.stream().filter(s -> s.panel() == Spoke.NONE))
                .flatMap(s -> s.gapRad().isPresent() ? Stream.of(s.gapRad().getAsDouble()) : Stream.empty())
                .mapToDouble(gap -> gap)
                .toArray();
    }

    /** The number of the group, from 1 by rising angle, of a spoke that has an angle and no panel. */
    int number(Spoke spoke) {
        int found = Arrays.binarySearch(least, spoke.gapRad().orElseThrow());
        return found >= 0 ? found + 1 : -found - 1;
    }
}
