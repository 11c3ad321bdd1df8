package dev.calotte.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The different lengths among the cuts, longest first, and whose they are. */
final class BarLengths {

    /** Lengths that differ by no more are one, in millimetres: rounding. */
    static final double ROUNDING_MM = 1e-6;

    private final List<Cut> cuts;
    private final int[] first;

    private BarLengths(List<Cut> cuts, int[] first) {
        this.cuts = cuts;
        this.first = first;
    }

    static BarLengths of(List<Cut> cuts) {
        List<Cut> sorted = new ArrayList<>(cuts);
        sorted.sort(Comparator.comparingDouble(Cut::lengthMm).reversed());
        int[] first = new int[sorted.size() + 1];
        int count = 0;
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(first[count]).lengthMm() - sorted.get(i).lengthMm() > ROUNDING_MM) {
                first[++count] = i;
            }
        }
        first[++count] = sorted.size();
        return new BarLengths(List.copyOf(sorted), Arrays.copyOf(first, count + 1));
    }

    int count() {
        return first.length - 1;
    }

    double lengthMm(int kind) {
        return cuts.get(first[kind]).lengthMm();
    }

    double[] need() {
        double[] need = new double[count()];
        for (int kind = 0; kind < need.length; kind++) {
            need[kind] = marks(kind).size();
        }
        return need;
    }

    /** A mark for each single part of a length. */
    List<Cut> marks(int kind) {
        List<Cut> marks = new ArrayList<>();
        for (Cut cut : cuts.subList(first[kind], first[kind + 1])) {
            for (int i = 0; i < cut.count(); i++) {
                marks.add(cut);
            }
        }
        return marks;
    }
}
