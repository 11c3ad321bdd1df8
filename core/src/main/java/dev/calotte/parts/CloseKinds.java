package dev.calotte.parts;

import dev.calotte.geometry.Triangle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Two kinds that are easily taken for each other, because they differ by less than three times what the workshop holds;
 * the factor is common practice, no source.
 *
 * @param first the mark of the one, of panels without a letter for the hand
 * @param second the mark of the other
 * @param differenceMm by how much they differ: struts in their cut lengths, panels in the side that differs most
 */
public record CloseKinds(String first, String second, double differenceMm) {

    /** More pairs of panels than this are not listed: in fine breakdowns nearly all kinds are near all others. */
    static final int MOST_PANELS = 1000;

    private static final double TOLERANCES = 3;
    /** Struts of unequal lengths or gaps that are cut alike may be taken for each other without harm. */
    private static final double EQUAL_MM = 1e-6;

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
            if (difference > EQUAL_MM && difference < withinMm) {
                close.add(new CloseKinds(shorter.mark(), longer.mark(), difference));
            }
        }
    }

    private static void addPanels(List<PanelKind> panels, double withinMm, List<CloseKinds> close) {
        int most = close.size() + MOST_PANELS;
        List<PanelKind> rising = panels.stream()
                .filter(kind -> kind.hand() != Hand.RIGHT || kind.twin().isEmpty())
                .sorted(Comparator.comparingDouble(kind -> kind.triangle().a()))
                .toList();
        for (int i = 0; i < rising.size(); i++) {
            for (int j = i + 1; j < rising.size() && close.size() < most; j++) {
                if (rising.get(j).triangle().a() - rising.get(i).triangle().a() >= withinMm) {
                    break;
                }
                addPair(rising.get(i), rising.get(j), withinMm, close);
            }
        }
    }

    private static void addPair(PanelKind one, PanelKind other, double withinMm, List<CloseKinds> close) {
        double difference = difference(one.triangle(), other.triangle());
        if (difference < withinMm) {
            int first = Math.min(one.number(), other.number());
            int second = Math.max(one.number(), other.number());
            close.add(new CloseKinds("P" + first, "P" + second, difference));
        }
    }

    private static double difference(Triangle one, Triangle other) {
        return Math.max(
                Math.abs(one.a() - other.a()), Math.max(Math.abs(one.b() - other.b()), Math.abs(one.c() - other.c())));
    }
}
