package dev.calotte.compare;

import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * By how little two kinds of a dome differ: struts in their cut lengths, panels in the side that differs most. A panel
 * and its mirror image are no pair, nor are struts that are cut alike.
 */
final class LeastDifference {

    private static final double EQUAL_MM = 1e-6;

    private LeastDifference() {}

    /** Nothing if there is but one kind of each. */
    static OptionalDouble ofMm(Parts parts) {
        double least = Math.min(ofStruts(parts.strutKinds()), ofPanels(parts.panelKinds()));
        return Double.isInfinite(least) ? OptionalDouble.empty() : OptionalDouble.of(least);
    }

    private static double ofStruts(List<StrutKind> kinds) {
        double[] rising =
                kinds.stream().mapToDouble(StrutKind::cutLengthMm).sorted().toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < rising.length; i++) {
            double difference = rising[i] - rising[i - 1];
            least = difference > EQUAL_MM ? Math.min(least, difference) : least;
        }
        return least;
    }

    private static double ofPanels(List<PanelKind> kinds) {
        List<Triangle> rising = kinds.stream()
                .filter(kind -> kind.hand() != Hand.RIGHT || kind.twin().isEmpty())
                .map(PanelKind::triangle)
                .sorted(Comparator.comparingDouble(Triangle::a))
                .toList();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rising.size(); i++) {
            for (int j = i + 1;
                    j < rising.size() && rising.get(j).a() - rising.get(i).a() < least;
                    j++) {
                least = Math.min(least, difference(rising.get(i), rising.get(j)));
            }
        }
        return least;
    }

    private static double difference(Triangle one, Triangle other) {
        double shorter = Math.max(Math.abs(one.a() - other.a()), Math.abs(one.b() - other.b()));
        return Math.max(shorter, Math.abs(one.c() - other.c()));
    }
}
