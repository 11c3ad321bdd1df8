package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Strut;
import dev.calotte.geometry.Groups;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Struts by length. */
final class StrutSorting {

    /** Rounding: as a part of the radius for lengths, in radians for angles. */
    static final double SAME = 1e-9;

    private final Groups groups;
    final List<StrutKind> kinds;

    StrutSorting(Dome dome, Joinery joinery) {
        List<Strut> struts = dome.struts();
        double[] chords =
                struts.stream().mapToDouble(s -> s.lengthMm() / dome.radiusMm()).toArray();
        this.groups = Groups.of(chords, SAME);
        checkGap(joinery, groups.value(0) * dome.radiusMm());
        double[][] dihedrals = dihedrals(struts);
        this.kinds = IntStream.range(0, groups.count())
                .mapToObj(g -> kind(g, dome.radiusMm(), joinery, dihedrals[g]))
                .toList();
    }

    /** The number of a strut's kind, from 1. */
    int number(int strut) {
        return groups.of(strut) + 1;
    }

    double lengthMm(int number) {
        return kinds.get(number - 1).lengthMm();
    }

    private static void checkGap(Joinery joinery, double shortestMm) {
        if (shortestMm <= 2 * joinery.hubGapMm()) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.hub-gap",
                    String.format(
                            Locale.ROOT,
                            "two gaps of %.1f mm use up strut S1 (%.1f mm from node to node).",
                            joinery.hubGapMm(),
                            shortestMm),
                    String.format(
                            Locale.ROOT,
                            "Use less than %.1f mm, or a larger dome or a lower breakdown.",
                            shortestMm / 2));
        }
    }

    private double[][] dihedrals(List<Strut> struts) {
        List<List<Double>> found = new ArrayList<>();
        for (int g = 0; g < groups.count(); g++) {
            found.add(new ArrayList<>());
        }
        for (Strut strut : struts) {
            strut.dihedralRad().ifPresent(found.get(groups.of(strut.index()))::add);
        }
        return found.stream()
                .map(list -> list.stream().mapToDouble(d -> d).toArray())
                .toArray(double[][]::new);
    }

    private StrutKind kind(int group, double radiusMm, Joinery joinery, double[] dihedrals) {
        double chord = groups.value(group);
        Groups angles = Groups.of(dihedrals, SAME);
        return new StrutKind(
                group + 1,
                chord,
                chord * radiusMm,
                chord * radiusMm - 2 * joinery.hubGapMm(),
                StrictMath.asin(chord / 2),
                IntStream.range(0, angles.count())
                        .mapToObj(a -> new StrutKind.Dihedral(angles.value(a), angles.size(a)))
                        .toList(),
                groups.size(group));
    }
}
