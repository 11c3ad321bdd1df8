package dev.calotte.parts;

import dev.calotte.geometry.Triangle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Two kinds that are easily taken for each other, because they differ by less than three times what the workshop holds;
 * the factor is common practice, no source.
 *
 * @param first the mark of the one, of panels without a letter for the hand
 * @param second the mark of the other
 * @param differenceMm by how much they differ: struts in their cut lengths, panels in the side that differs most
 */
public record CloseKinds(String first, String second, double differenceMm) {

    private static final double TOLERANCES = 3;

    /** Pairs of struts that follow each other by their cut lengths, then pairs of panels. */
    static List<CloseKinds> of(List<StrutKind> struts, List<PanelKind> panels, double toleranceMm) {
        List<CloseKinds> close = new ArrayList<>();
        addStruts(struts, TOLERANCES * toleranceMm, close);
        addPanels(panels, TOLERANCES * toleranceMm, close);
        return List.copyOf(close);
    }

    private static void addStruts(List<StrutKind> struts, double withinMm, List<CloseKinds> close) {
        List<StrutKind> rising = struts.stream()
                .sorted(Comparator.comparingDouble(StrutKind::cutLengthMm))
                .toList();
        for (int i = 1; i < rising.size(); i++) {
            StrutKind shorter = rising.get(i - 1);
            StrutKind longer = rising.get(i);
            double difference = longer.cutLengthMm() - shorter.cutLengthMm();
            if (difference < withinMm) {
                close.add(new CloseKinds(shorter.mark(), longer.mark(), difference));
            }
        }
    }

    private static void addPanels(List<PanelKind> panels, double withinMm, List<CloseKinds> close) {
        List<PanelKind> rising = panels.stream()
                .sorted(Comparator.comparingDouble(kind -> kind.triangle().a()))
                .toList();
        for (int i = 0; i < rising.size(); i++) {
            PanelKind one = rising.get(i);
            rising.subList(i + 1, rising.size()).stream()
                    .takeWhile(other -> other.triangle().a() - one.triangle().a() < withinMm)
                    .flatMap(other -> pair(one, other, withinMm).stream())
                    .forEach(close::add);
        }
    }

    private static Optional<CloseKinds> pair(PanelKind one, PanelKind other, double withinMm) {
        double difference = difference(one.triangle(), other.triangle());
        if (one.number() == other.number() || difference >= withinMm) {
            return Optional.empty();
        }
        int first = Math.min(one.number(), other.number());
        int second = Math.max(one.number(), other.number());
        return Optional.of(new CloseKinds("P" + first, "P" + second, difference));
    }

    private static double difference(Triangle one, Triangle other) {
        return Math.max(
                Math.abs(one.a() - other.a()), Math.max(Math.abs(one.b() - other.b()), Math.abs(one.c() - other.c())));
    }
}
