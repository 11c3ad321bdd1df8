package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.Triangle;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Panels by the lengths of their sides and by hand; how their struts end is no matter of theirs. */
final class PanelSorting {

    final int[] kindOf;
    final List<PanelKind> kinds;

    /** The numbers of the lengths of three sides, rising. */
    private record Sides(int a, int b, int c) {

        static final Comparator<Sides> ORDER =
                Comparator.comparingInt(Sides::a).thenComparingInt(Sides::b).thenComparingInt(Sides::c);

        static Sides of(int... around) {
            int[] rising = around.clone();
            Arrays.sort(rising);
            return new Sides(rising[0], rising[1], rising[2]);
        }

        Triangle triangle(StrutSorting struts) {
            return new Triangle(lengthMm(struts, a), lengthMm(struts, b), lengthMm(struts, c));
        }

        private static double lengthMm(StrutSorting struts, int number) {
            return struts.firstOf(number).lengthMm();
        }

        boolean close(StrutSorting struts) {
            return lengthMm(struts, a) + lengthMm(struts, b) > lengthMm(struts, c);
        }
    }

    PanelSorting(Dome dome, StrutSorting struts) {
        Twins<Sides> twins = new Twins<>(Sides.ORDER);
        Twins.Tally[] tallies = new Twins.Tally[dome.panels().size()];
        for (Panel panel : dome.panels()) {
            int[] around =
                    panel.struts().stream().mapToInt(struts::lengthNumber).toArray();
            tallies[panel.index()] = twins.note(closing(Sides.of(around), struts), hand(around), panel.index());
        }
        // areas that are equal up to rounding are left in the order of their sides
        double step = StrutSorting.SAME * dome.radiusMm() * dome.radiusMm();
        Comparator<Sides> byArea =
                Comparator.comparingLong(s -> Math.round(s.triangle(struts).area() / step));
        this.kinds = twins.kinds(
                byArea,
                (number, hand, sides, tally, twin) -> new PanelKind(
                        number,
                        hand,
                        Stream.of(sides.a, sides.b, sides.c)
                                .map(side -> struts.firstOf(side).number())
                                .toList(),
                        sides.triangle(struts),
                        twin.map(letter -> "P" + number + letter),
                        tally.count()));
        this.kindOf = Arrays.stream(tallies).mapToInt(Twins.Tally::index).toArray();
    }

    /** Merging a long side with a longer one can leave a thin panel without height. */
    private static Sides closing(Sides sides, StrutSorting struts) {
        if (!sides.close(struts)) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.merge-within",
                    "the sides of a panel no longer make a triangle once they are merged.",
                    "Merge less.");
        }
        return sides;
    }

    /** Of three different sizes in a circle two steps rise in the one hand and one in the other. */
    private static Hand hand(int... around) {
        int rising = 0;
        for (int k = 0; k < 3; k++) {
            int next = around[(k + 1) % 3];
            if (around[k] == next) {
                return Hand.NONE;
            }
            rising += around[k] < next ? 1 : 0;
        }
        return rising == 2 ? Hand.LEFT : Hand.RIGHT;
    }
}
