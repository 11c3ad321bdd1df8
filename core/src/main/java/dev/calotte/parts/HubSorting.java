package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Spoke;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Hubs by what leaves them. A hub's circle is compared with its mirror image, each written as the smallest of its
 * turns: the smaller of the two is the shape, and which one it was is the hand.
 */
final class HubSorting {

    final int[] kindOf;
    final List<HubKind> kinds;

    private final Dome dome;
    private final StrutSorting struts;

    HubSorting(Dome dome, StrutSorting struts) {
        this.dome = dome;
        this.struts = struts;
        Twins<HubCircle> twins = new Twins<>(HubCircle.ORDER);
        Twins.Tally[] tallies = new Twins.Tally[dome.hubs().size()];
        for (int hub = 0; hub < tallies.length; hub++) {
            HubCircle circle = HubCircle.of(dome.around(hub), struts);
            HubCircle left = circle.smallest();
            HubCircle right = circle.mirrored().smallest();
            int order = HubCircle.ORDER.compare(left, right);
            Hand hand = order == 0 ? Hand.NONE : order < 0 ? Hand.LEFT : Hand.RIGHT;
            tallies[hub] = twins.note(order <= 0 ? left : right, hand, hub);
        }
        this.kinds = twins.kinds(HubCircle.ORDER, this::kind);
        this.kindOf = Arrays.stream(tallies).mapToInt(Twins.Tally::index).toArray();
    }

    private HubKind kind(int number, Hand hand, HubCircle shape, Twins.Tally tally, Optional<String> twin) {
        List<Spoke> spokes = dome.around(tally.example());
        Collections.rotate(spokes, -HubCircle.of(spokes, struts).turnToSmallest());
        List<StrutKind> around = spokes.stream()
                .map(s -> struts.kinds.get(struts.number(s.strut()) - 1))
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
