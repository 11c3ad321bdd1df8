package dev.calotte.check;

import dev.calotte.check.RecordedCover.Part;
import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedCover.Sheet;
import dev.calotte.check.RecordedDome.Panel;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a cover is cut from its stock: every piece of every panel once, where its numbers say, on the stock, and clear of
 * the others.
 */
public final class PlanCheck {

    private final RecordedDome dome;
    private final RecordedCover cover;
    private final Findings findings;
    private final Map<String, Piece> pieces = new TreeMap<>();
    private final Map<String, String> kindOf = new TreeMap<>();
    private final Map<String, Integer> laid = new TreeMap<>();
    private final Map<String, Integer> ofMark = new TreeMap<>();

    private PlanCheck(RecordedDome dome, RecordedCover cover, Findings findings) {
        this.dome = dome;
        this.cover = cover;
        this.findings = findings;
        cover.pieces().forEach(piece -> pieces.put(piece.mark(), piece));
        dome.panels().forEach(panel -> kindOf.put(panel.mark(), panel.kind()));
    }

    /**
     * Looks a plan through.
     *
     * @param dome the dome
     * @param cover its cover, with a plan
     * @param findings takes what is wrong
     */
    public static void of(RecordedDome dome, RecordedCover cover, Findings findings) {
        new PlanCheck(dome, cover, findings).check();
    }

    private String where(int sheet, Part part) {
        return cover.name() + " sheet " + (sheet + 1) + ", " + part.panel();
    }

    private void check() {
        for (int i = 0; i < cover.sheets().size(); i++) {
            Sheet sheet = cover.sheets().get(i);
            for (Part part : sheet.parts()) {
                part(i, sheet, part);
            }
            apart(i, sheet);
        }
        for (Piece piece : cover.pieces()) {
            findings.same(
                    cover.name() + " " + piece.mark(),
                    "how often it is laid",
                    ofMark.getOrDefault(piece.mark(), 0),
                    piece.count(),
                    0);
        }
        dome.panels().forEach(this::panel);
    }

    private void panel(Panel panel) {
        if (!laid.containsKey(panel.mark()) && !laid.containsKey(panel.mark() + "s1")) {
            findings.add(Fault.MISSING, cover.name() + " " + panel.mark(), "it lies on no stock.");
        }
    }

    private void part(int number, Sheet sheet, Part part) {
        String where = where(number, part);
        Piece piece = pieces.get(part.mark());
        if (piece == null) {
            findings.add(Fault.FOREIGN, where, "there is no pattern " + part.mark() + ".");
            return;
        }
        ofMark.merge(part.mark(), 1, Integer::sum);
        if (laid.merge(part.panel() + piece.suffix(), 1, Integer::sum) > 1) {
            findings.add(Fault.DOUBLED, where, "it is laid a second time.");
        }
        findings.same(
                where, "the kind of its pattern", piece.panelKind(), kindOf.getOrDefault(part.panel(), "no panel's"));
        double off = blank(piece, part).beside(part.outline());
        if (!(off <= 10 * Printed.RECORD_MM)) {
            findings.add(
                    Fault.MOVED,
                    where,
                    "its outline is up to " + Findings.text(off) + " mm from where x, y and rotation have it.");
        }
        onStock(where, sheet, part);
    }

    private void onStock(String where, Sheet sheet, Part part) {
        double beyond = Convex.beyond(part.outline(), sheet.border());
        if (beyond > Printed.FILE_MM) {
            findings.add(Fault.OUTSIDE, where, "it reaches " + Findings.text(beyond) + " mm beyond the stock.");
            return;
        }
        double kept = Convex.distance(part.outline(), sheet.border());
        if (kept < sheet.margin() - Printed.FILE_MM) {
            findings.add(
                    Fault.OUTSIDE,
                    where,
                    "it lies " + Findings.text(kept) + " mm from the edge of the stock, less than the margin of "
                            + Findings.text(sheet.margin()) + " mm.");
        }
    }

    private static Ring blank(Piece piece, Part part) {
        return Laid.of(part).at(new Ring(piece.blank().corners()));
    }

    /** Goes through the parts from left to right, each against those that have not ended yet. */
    private void apart(int number, Sheet sheet) {
        List<Part> parts = sheet.parts().stream()
                .sorted(Comparator.comparingDouble(p -> p.outline().least().getX()))
                .toList();
        for (int i = 0; i < parts.size(); i++) {
            Ring one = parts.get(i).outline();
            double end = one.most().getX() + cover.spacing();
            for (int j = i + 1;
                    j < parts.size() && parts.get(j).outline().least().getX() < end;
                    j++) {
                apart(number, parts.get(i), parts.get(j));
            }
        }
    }

    private void apart(int number, Part one, Part other) {
        double overlap = Convex.overlap(one.outline(), other.outline());
        if (overlap > Printed.FILE_MM) {
            findings.add(
                    Fault.OVERLAPPING,
                    where(number, one),
                    "it lies " + Findings.text(overlap) + " mm over " + other.panel() + ".");
        } else if (-overlap < cover.spacing()) {
            double apart = Convex.distance(one.outline(), other.outline());
            if (apart < cover.spacing() - Printed.FILE_MM) {
                findings.add(
                        Fault.OVERLAPPING,
                        where(number, one),
                        "it lies " + Findings.text(apart) + " mm from " + other.panel() + ", less than the spacing of "
                                + Findings.text(cover.spacing()) + " mm.");
            }
        }
    }
}
