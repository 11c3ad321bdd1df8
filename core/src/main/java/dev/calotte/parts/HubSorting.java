package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Skeleton;
import dev.calotte.dome.Spoke;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Hubs by what leaves them. A hub's circle is compared with its mirror image, each written as the smallest of its
 * turns: the smaller of the two is the shape, and which one it was is the hand. In a dome with openings a shape that the
 * whole dome has keeps its number, and those that openings made are numbered on from there.
 */
final class HubSorting {

    final int[] kindOf;
    final List<HubKind> kinds;

    private final Dome dome;
    private final Skeleton skeleton;
    private final StrutSorting struts;
    private final BareGaps bareGaps;
    private final Map<HubCircle, Integer> numbers = new TreeMap<>(HubCircle.ORDER);

    /** Sorts the hubs of a whole dome. */
    HubSorting(Dome whole, StrutSorting struts) {
        this(whole, struts, Map.of());
    }

    /** Sorts the hubs of a dome with openings; the struts are sorted by the whole dome. */
    HubSorting(Dome dome, StrutSorting struts, HubSorting whole) {
        this(dome, struts, whole.numbers);
    }

    private HubSorting(Dome dome, StrutSorting struts, Map<HubCircle, Integer> wholeNumbers) {
        this.dome = dome;
        this.skeleton = dome.skeleton();
        this.struts = struts;
        this.bareGaps = new BareGaps(dome);
        this.numbers.putAll(wholeNumbers);
        Twins<HubCircle> twins = new Twins<>(HubCircle.ORDER);
        Twins.Tally[] tallies = new Twins.Tally[dome.hubs().size()];
        Map<HubCircle, Twins.Tally> known = new LinkedHashMap<>();
        for (int hub = 0; hub < tallies.length; hub++) {
            HubCircle circle = circle(hub);
            Twins.Tally tally = known.get(circle);
            if (tally == null) {
                tally = note(circle, hub, twins);
                known.put(circle, tally);
            } else {
                tally.countAnother();
            }
            tallies[hub] = tally;
        }
        Comparator<HubCircle> wholeFirst =
                Comparator.comparingInt(shape -> numbers.getOrDefault(shape, Integer.MAX_VALUE));
        this.kinds = twins.kinds(wholeFirst.thenComparing(HubCircle.ORDER), this::kind);
        this.kindOf = Arrays.stream(tallies).mapToInt(Twins.Tally::index).toArray();
    }

    private static Twins.Tally note(HubCircle circle, int hub, Twins<HubCircle> twins) {
        HubCircle left = circle.smallest();
        HubCircle right = circle.mirrored().smallest();
        int order = HubCircle.ORDER.compare(left, right);
        Hand hand = order == 0 ? Hand.NONE : order < 0 ? Hand.LEFT : Hand.RIGHT;
        return twins.note(order <= 0 ? left : right, hand, hub);
    }

    private HubCircle circle(int hub) {
        return dome.openings().isEmpty()
                ? HubCircle.of(skeleton.around(hub), struts::number, struts::lengthNumber)
                : circle(dome.around(hub));
    }

    private HubCircle circle(List<Spoke> spokes) {
        return HubCircle.of(spokes, strut -> struts.number(dome.wholeStrut(strut)), this::after);
    }

    /** The length of the strut that closes the panel up to the next strut; without a panel the group of the angle. */
    private int after(Spoke spoke) {
        if (spoke.opposite() != Spoke.NONE) {
            return struts.lengthNumber(dome.wholeStrut(spoke.opposite()));
        }
        return spoke.gapRad().isPresent() ? -bareGaps.number(spoke) : HubCircle.NO_PANEL;
    }

    private int numberOf(HubCircle shape) {
        return numbers.computeIfAbsent(shape, made -> numbers.size() + 1);
    }

    /** What leaves a hub, beginning with the first strut of its kind. */
    List<Spoke> around(int hub) {
        List<Spoke> spokes = dome.around(hub);
        Collections.rotate(spokes, -circle(spokes).turnToSmallest());
        return spokes;
    }

    private HubKind kind(int place, Hand hand, HubCircle shape, Twins.Tally tally, Optional<String> twin) {
        int number = numberOf(shape);
        List<Spoke> spokes = around(tally.example());
        List<StrutKind> around = spokes.stream()
                .map(s -> struts.kinds.get(struts.number(dome.wholeStrut(s.strut())) - 1))
                .toList();
        return new HubKind(
                number,
                hand,
                around.stream().map(StrutKind::number).toList(),
                spokes.stream()
                        .map(Spoke::gapRad)
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble)
                        .toList(),
                around.stream().map(StrutKind::axialAngleRad).toList(),
                shape.isOpen(),
                twin.map(letter -> "H" + number + letter),
                tally.count());
    }
}
