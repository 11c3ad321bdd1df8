package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.Groups;
import dev.calotte.geometry.MergedGroups;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Struts by length, and those of one length by where they end at either hub. */
final class StrutSorting {

    /** Rounding: as a part of the radius for lengths, in radians for angles. */
    static final double SAME = 1e-9;

    private final Joinery joinery;
    private final double radiusMm;
    /** Over the radius. */
    private final MergedGroups lengths;

    private final int[] numbers;
    private final int[] firstOfLength;
    final List<StrutKind> kinds;

    /** The number of a length, and from the hubs' axes to the strut's ends, the smaller first. */
    private record Shape(int length, double nearMm, double farMm) {

        /** Of one length, the larger its gaps the shorter it is cut. */
        static final Comparator<Shape> ORDER = Comparator.comparingInt(Shape::length)
                .thenComparing(shape -> shape.nearMm + shape.farMm, Comparator.reverseOrder())
                .thenComparing(Shape::nearMm);
    }

    StrutSorting(Dome dome, Joinery joinery) {
        this.joinery = joinery;
        this.radiusMm = dome.radiusMm();
        List<Strut> struts = dome.struts();
        double[] chords =
                struts.stream().mapToDouble(s -> s.lengthMm() / radiusMm).toArray();
        this.lengths = MergedGroups.of(chords, SAME, joinery.mergeWithinMm() / radiusMm);
        Map<Shape, List<Strut>> shapes = shapes(struts, HubEnds.mm(dome, joinery));
        this.numbers = new int[struts.size()];
        this.firstOfLength = new int[lengths.count()];
        List<StrutKind> made = new ArrayList<>();
        shapes.forEach((shape, members) -> {
            made.add(kind(made.size() + 1, shape, members));
            members.forEach(strut -> numbers[strut.index()] = made.size());
            firstOfLength[shape.length] = firstOfLength[shape.length] == 0 ? made.size() : firstOfLength[shape.length];
        });
        this.kinds = List.copyOf(made);
    }

    private Map<Shape, List<Strut>> shapes(List<Strut> struts, double[] endMm) {
        Map<Shape, List<Strut>> shapes = new TreeMap<>(Shape.ORDER);
        for (Strut strut : struts) {
            double from = endMm[strut.from()];
            double to = endMm[strut.to()];
            Shape shape = new Shape(lengths.of(strut.index()), Math.min(from, to), Math.max(from, to));
            shapes.computeIfAbsent(shape, s -> new ArrayList<>()).add(strut);
        }
        return shapes;
    }

    /** The number of a strut's kind, from 1. */
    int number(int strut) {
        return numbers[strut];
    }

    /** The number of a strut's length among all lengths, from 1, whatever its ends. */
    int lengthNumber(int strut) {
        return lengths.of(strut) + 1;
    }

    /** The first kind of a length. */
    StrutKind firstOf(int lengthNumber) {
        return kinds.get(firstOfLength[lengthNumber - 1] - 1);
    }

    private StrutKind kind(int number, Shape shape, List<Strut> members) {
        double chord = lengths.value(shape.length);
        double axialAngle = StrictMath.asin(chord / 2);
        StrutCut cut = new StrutCut(joinery.ends(), shape.nearMm, shape.farMm, axialAngle);
        if (!cut.leaves(chord * radiusMm)) {
            throw usedUp(number, shape, chord * radiusMm);
        }
        return new StrutKind(
                number,
                chord,
                chord * radiusMm,
                cut.cutMm(chord * radiusMm),
                List.of(shape.nearMm, shape.farMm),
                lengths.error(shape.length) * radiusMm,
                axialAngle,
                cut.flatEnds(chord * radiusMm),
                dihedrals(members),
                members.size());
    }

    private static List<StrutKind.Dihedral> dihedrals(List<Strut> members) {
        Groups angles = Groups.of(
                members.stream()
                        .flatMapToDouble(strut -> strut.dihedralRad().stream())
                        .toArray(),
                SAME);
        return IntStream.range(0, angles.count())
                .mapToObj(a -> new StrutKind.Dihedral(angles.value(a), angles.size(a)))
                .toList();
    }

    private CalotteException usedUp(int number, Shape shape, double lengthMm) {
        String strut = String.format(Locale.ROOT, "use up strut S%d (%.1f mm from node to node).", number, lengthMm);
        if (joinery.ends() instanceof Ends.Flattened) {
            return new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.ends",
                    "its two flattened ends " + strut,
                    "Flatten less, or take a larger dome or a lower breakdown.");
        }
        boolean equal = shape.nearMm == shape.farMm;
        String gaps = equal
                ? String.format(Locale.ROOT, "two gaps of %.1f mm ", shape.nearMm)
                : String.format(Locale.ROOT, "gaps of %.1f mm and %.1f mm ", shape.nearMm, shape.farMm);
        return new CalotteException(
                Code.IMPOSSIBLE,
                "frame.hub-gap",
                gaps + strut,
                String.format(
                        Locale.ROOT,
                        "Use less than %.1f mm%s, or a larger dome or a lower breakdown.",
                        equal ? lengthMm / 2 : lengthMm,
                        equal ? "" : " together"));
    }
}
