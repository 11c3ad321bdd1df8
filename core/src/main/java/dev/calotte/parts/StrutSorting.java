package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Skeleton;
import dev.calotte.geometry.Groups;
import dev.calotte.geometry.MergedGroups;
import dev.calotte.parts.StrutShapes.Shape;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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

    /** Sorts the struts of a dome without openings. */
    StrutSorting(Dome dome, Joinery joinery) {
        Skeleton skeleton = dome.skeleton();
        this.joinery = joinery;
        this.radiusMm = dome.radiusMm();
        double[] chords = new double[skeleton.strutCount()];
        Arrays.setAll(chords, strut -> skeleton.lengthMm(strut) / radiusMm);
        this.lengths = MergedGroups.of(chords, SAME, joinery.mergeWithinMm() / radiusMm);
        this.firstOfLength = new int[lengths.count()];
        StrutShapes shapes = new StrutShapes(lengths.count());
        int[] shapeOf = shapesOf(skeleton, HubEnds.mm(skeleton, joinery), shapes);
        int[] ordered = shapes.ordered();
        int[] numberOf = new int[ordered.length];
        for (int i = 0; i < ordered.length; i++) {
            numberOf[ordered[i]] = i + 1;
        }
        this.numbers = Arrays.stream(shapeOf).map(shape -> numberOf[shape]).toArray();
        double[][] angles = dihedrals(skeleton, ordered.length);
        List<StrutKind> made = new ArrayList<>();
        for (int number = 1; number <= ordered.length; number++) {
            Shape shape = shapes.shape(ordered[number - 1]);
            firstOfLength[shape.length()] = firstOfLength[shape.length()] == 0 ? number : firstOfLength[shape.length()];
            made.add(kind(number, shape, angles[number - 1]));
        }
        this.kinds = List.copyOf(made);
    }

    private int[] shapesOf(Skeleton skeleton, double[] endMm, StrutShapes shapes) {
        int[] shapeOf = new int[skeleton.strutCount()];
        for (int strut = 0; strut < shapeOf.length; strut++) {
            double one = endMm[skeleton.start(strut)];
            double other = endMm[skeleton.end(strut)];
            shapeOf[strut] = shapes.number(lengths.of(strut), one, other);
        }
        return shapeOf;
    }

    /** The dihedrals of the struts of each kind, not a number at the base. */
    private double[][] dihedrals(Skeleton skeleton, int kindCount) {
        int[] counts = new int[kindCount];
        for (int number : numbers) {
            counts[number - 1]++;
        }
        double[][] angles = Arrays.stream(counts).mapToObj(double[]::new).toArray(double[][]::new);
        for (int strut = numbers.length - 1; strut >= 0; strut--) {
            int kind = numbers[strut] - 1;
            angles[kind][--counts[kind]] = skeleton.dihedralRad(strut);
        }
        return angles;
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

    private StrutKind kind(int number, Shape shape, double... angles) {
        double chord = lengths.value(shape.length());
        double axialAngle = StrictMath.asin(chord / 2);
        StrutCut cut = new StrutCut(joinery.ends(), shape.nearMm(), shape.farMm(), axialAngle);
        if (!cut.leaves(chord * radiusMm)) {
            throw usedUp(number, shape, chord * radiusMm);
        }
        return new StrutKind(
                number,
                chord,
                chord * radiusMm,
                cut.cutMm(chord * radiusMm),
                List.of(shape.nearMm(), shape.farMm()),
                lengths.error(shape.length()) * radiusMm,
                axialAngle,
                cut.flatEnds(chord * radiusMm),
                dihedrals(angles),
                angles.length);
    }

    private static List<StrutKind.Dihedral> dihedrals(double... all) {
        Groups angles = Groups.of(
                Arrays.stream(all).filter(angle -> !Double.isNaN(angle)).toArray(), SAME);
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
        boolean equal = shape.nearMm() == shape.farMm();
        String gaps = equal
                ? String.format(Locale.ROOT, "two gaps of %.1f mm ", shape.nearMm())
                : String.format(Locale.ROOT, "gaps of %.1f mm and %.1f mm ", shape.nearMm(), shape.farMm());
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
