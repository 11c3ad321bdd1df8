package dev.calotte.book;

import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Table;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.StrutKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Pairs that are easily taken for each other: struts and panels that differ by less than a thirtieth of their length or
 * three times what the workshop holds (common practice, no source), and mirror images.
 */
final class Confusion {

    private static final double NEAR = 1.0 / 30;
    private static final double TOLERANCES = 3;
    private static final int MOST = 60;

    private final Desk desk;
    private final double leastMm;
    private final List<Pair> pairs = new ArrayList<>();

    Confusion(Desk desk) {
        this.desk = desk;
        this.leastMm = TOLERANCES * desk.parts.joinery().cutToleranceMm();
    }

    /** A pair, by how much it differs; mirror images differ by nothing that a tape shows. */
    private record Pair(String first, String second, double differenceMm, String how) {}

    Table table() {
        addStruts();
        addPanels();
        addTwins();
        List<Row> rows = pairs.stream()
                .sorted(Comparator.comparingDouble(Pair::differenceMm))
                .limit(MOST)
                .map(pair -> Desk.row(pair.first(), pair.first(), pair.second(), pair.how()))
                .toList();
        return new Table(
                "Pairs easily confused",
                List.of(Desk.text("This"), Desk.text("and this"), Desk.text("differ by")),
                rows);
    }

    private boolean isNear(double difference, double length) {
        return difference > 0 && difference < Math.max(leastMm, NEAR * length);
    }

    private void addStruts() {
        List<StrutKind> rising = desk.parts.strutKinds().stream()
                .sorted(Comparator.comparingDouble(StrutKind::cutLengthMm))
                .toList();
        for (int i = 1; i < rising.size(); i++) {
            StrutKind shorter = rising.get(i - 1);
            StrutKind longer = rising.get(i);
            double difference = longer.cutLengthMm() - shorter.cutLengthMm();
            if (isNear(difference, longer.cutLengthMm())) {
                pairs.add(new Pair(shorter.mark(), longer.mark(), difference, desk.cut(difference) + " in length"));
            }
        }
    }

    private void addPanels() {
        List<PanelKind> kinds = desk.parts.panelKinds().stream()
                .filter(kind -> kind.hand() != Hand.RIGHT || kind.twin().isEmpty())
                .sorted(Comparator.comparingDouble(kind -> kind.triangle().area()))
                .toList();
        for (int i = 1; i < kinds.size(); i++) {
            Triangle one = kinds.get(i - 1).triangle();
            Triangle other = kinds.get(i).triangle();
            double difference = Math.max(
                    Math.abs(one.a() - other.a()),
                    Math.max(Math.abs(one.b() - other.b()), Math.abs(one.c() - other.c())));
            if (isNear(difference, other.c())) {
                pairs.add(new Pair(
                        kinds.get(i - 1).mark(),
                        kinds.get(i).mark(),
                        difference,
                        desk.cut(difference) + " in the side that differs most"));
            }
        }
    }

    private void addTwins() {
        for (PanelKind kind : desk.parts.panelKinds()) {
            if (kind.hand() == Hand.LEFT) {
                kind.twin()
                        .ifPresent(twin -> pairs.add(new Pair(
                                kind.mark(),
                                twin,
                                0,
                                "their hand only: short, middle, long against short, long, middle")));
            }
        }
        for (HubKind kind : desk.parts.hubKinds()) {
            if (kind.hand() == Hand.LEFT) {
                kind.twin()
                        .ifPresent(twin -> pairs.add(
                                new Pair(kind.mark(), twin, 0, "the order of their struts only: mirror images")));
            }
        }
    }
}
