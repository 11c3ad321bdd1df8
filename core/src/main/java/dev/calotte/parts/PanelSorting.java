package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Skeleton;
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

        static Sides of(int one, int two, int three) {
            int least = Math.min(one, Math.min(two, three));
            int most = Math.max(one, Math.max(two, three));
            return new Sides(least, Math.max(Math.min(one, two), Math.min(Math.max(one, two), three)), most);
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

    /** Sorts the panels of a dome without openings. */
    PanelSorting(Dome dome, StrutSorting struts) {
        Twins<Sides> twins = new Twins<>(Sides.ORDER);
        Skeleton skeleton = dome.skeleton();
        Twins.Tally[] tallies = new Twins.Tally[skeleton.panelCount()];
        for (int panel = 0; panel < tallies.length; panel++) {
            int a = struts.lengthNumber(skeleton.strut(panel, 0));
            int b = struts.lengthNumber(skeleton.strut(panel, 1));
            int c = struts.lengthNumber(skeleton.strut(panel, 2));
            Sides sides = Sides.of(a, b, c);
            tallies[panel] = twins.note(sides, hand(a, b, c), panel);
            if (tallies[panel].count() == 1) {
                checkClosing(sides, struts);
            }
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
    private static void checkClosing(Sides sides, StrutSorting struts) {
        if (!sides.close(struts)) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.merge-within",
                    "the sides of a panel no longer make a triangle once they are merged.",
                    "Merge less.");
        }
    }

    /** Of three different sizes in a circle two steps rise in the one hand and one in the other. */
    private static Hand hand(int a, int b, int c) {
        if (a == b || b == c || c == a) {
            return Hand.NONE;
        }
        int rising = (a < b ? 1 : 0) + (b < c ? 1 : 0) + (c < a ? 1 : 0);
        return rising == 2 ? Hand.LEFT : Hand.RIGHT;
    }
}
