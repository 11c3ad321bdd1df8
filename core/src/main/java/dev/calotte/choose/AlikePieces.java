package dev.calotte.choose;

import dev.calotte.dome.Panel;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Piece;
import dev.calotte.nest.Placed;
import dev.calotte.pattern.CutPiece;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The pieces of a cover by their blanks: pieces that differ in holes or notches only are laid as one kind, and their
 * places are handed out when all lie.
 */
final class AlikePieces {

    private static final double SAME_MM = 1e-6;
    private static final Vector2D LEFT = new Vector2D(-1, 0);

    private final CoverFit fit;
    private final List<Panel> order;
    private final Map<String, List<Wanted>> wanted = new LinkedHashMap<>();

    /** For each piece, by its mark, the mark of its kind. */
    private final Map<String, String> kindOf = new TreeMap<>();

    /** A piece for a panel. */
    private record Wanted(CutPiece piece, Panel panel) {}

    /** A place on the stock: which part of which sheet, for the pieces of which group. */
    private record Lot(int sheet, int part, int group, double beginMm) {}

    /** The pieces for all panels; of a kind in the order of the patterns and of the panels. */
    AlikePieces(CoverFit fit, List<Panel> order) {
        this.fit = fit;
        this.order = order;
        Map<String, List<Panel>> panels = new TreeMap<>();
        for (Panel panel : order) {
            panels.computeIfAbsent(fit.patterns().of(panel).mark(), mark -> new ArrayList<>())
                    .add(panel);
        }
        for (PatternFit each : fit.fits()) {
            for (CutPiece piece : each.pieces()) {
                List<Wanted> alike = wanted.computeIfAbsent(shape(piece), s -> new ArrayList<>());
                panels.get(each.pattern().mark()).forEach(panel -> alike.add(new Wanted(piece, panel)));
                kindOf.put(piece.mark(), mark(alike));
            }
        }
    }

    private static String shape(CutPiece piece) {
        StringBuilder shape = new StringBuilder();
        for (Vector2D corner : piece.blank().corners()) {
            shape.append(Math.round(corner.getX() / SAME_MM))
                    .append(' ')
                    .append(Math.round(corner.getY() / SAME_MM))
                    .append(' ');
        }
        piece.grainRad().ifPresent(rad -> shape.append(Math.round(rad / SAME_MM)));
        return shape.toString();
    }

    private static String mark(List<Wanted> alike) {
        return alike.get(0).piece().mark();
    }

    List<Piece> pieces() {
        boolean mayMirror = fit.patterns().cover().treatment().reversible();
        List<Piece> pieces = new ArrayList<>();
        for (List<Wanted> alike : wanted.values()) {
            CutPiece first = alike.get(0).piece();
            pieces.add(new Piece(first.mark(), first.blank(), alike.size(), mayMirror, first.grainRad()));
        }
        return pieces;
    }

    /** For each batch of panels, how many of each of the pieces they take. */
    List<List<Integer>> counts(List<List<Panel>> batches) {
        Map<Integer, Integer> batchOf = new TreeMap<>();
        for (int batch = 0; batch < batches.size(); batch++) {
            for (Panel panel : batches.get(batch)) {
                batchOf.put(panel.index(), batch);
            }
        }
        List<int[]> counts = new ArrayList<>();
        batches.forEach(batch -> counts.add(new int[wanted.size()]));
        int kind = 0;
        for (List<Wanted> alike : wanted.values()) {
            for (Wanted each : alike) {
                counts.get(batchOf.get(each.panel().index()))[kind]++;
            }
            kind++;
        }
        return counts.stream()
                .map(batch -> Arrays.stream(batch).boxed().toList())
                .toList();
    }

    /** Gives the places of each kind to its pieces, in the order of patterns and panels. */
    CoverPlan handOut(CutPlan plan) {
        Map<String, Iterator<Wanted>> waiting = new TreeMap<>();
        wanted.values().forEach(alike -> waiting.put(mark(alike), alike.iterator()));
        return handOut(plan, lots(plan, List.of()), waiting);
    }

    /**
     * Gives the places of each kind, as they lie along the stock, to its pieces in the order of the panels.
     *
     * @param groupOf for each sheet the groups of its parts, the first of which are handed out first; none if all are one
     */
    CoverPlan handOutAlong(CutPlan plan, List<List<Integer>> groupOf) {
        int[] turn = new int[order.size()];
        for (int i = 0; i < turn.length; i++) {
            turn[order.get(i).index()] = i;
        }
        Map<String, Iterator<Wanted>> waiting = new TreeMap<>();
        wanted.values().forEach(alike -> {
            List<Wanted> inTurn = new ArrayList<>(alike);
            inTurn.sort(Comparator.comparingInt(each -> turn[each.panel().index()]));
            waiting.put(mark(alike), inTurn.iterator());
        });
        List<Lot> lots = lots(plan, groupOf);
        lots.sort(
                Comparator.comparingInt(Lot::group).thenComparingInt(Lot::sheet).thenComparingDouble(Lot::beginMm));
        return handOut(plan, lots, waiting);
    }

    private static List<Lot> lots(CutPlan plan, List<List<Integer>> groupOf) {
        List<Lot> lots = new ArrayList<>();
        for (int sheet = 0; sheet < plan.sheets().size(); sheet++) {
            List<Placed> parts = plan.sheets().get(sheet).parts();
            for (int part = 0; part < parts.size(); part++) {
                int group = groupOf.isEmpty() ? 0 : groupOf.get(sheet).get(part);
                lots.add(new Lot(sheet, part, group, -parts.get(part).outline().reach(LEFT)));
            }
        }
        return lots;
    }

    private CoverPlan handOut(CutPlan plan, List<Lot> lots, Map<String, Iterator<Wanted>> waiting) {
        List<Wanted[]> theirs = new ArrayList<>();
        plan.sheets().forEach(sheet -> theirs.add(new Wanted[sheet.parts().size()]));
        for (Lot lot : lots) {
            String mark = plan.sheets().get(lot.sheet()).parts().get(lot.part()).mark();
            theirs.get(lot.sheet())[lot.part()] = waiting.get(kindOf.get(mark)).next();
        }
        List<CutSheet> sheets = new ArrayList<>();
        List<List<Panel>> panels = new ArrayList<>();
        for (int sheet = 0; sheet < theirs.size(); sheet++) {
            List<Wanted> here = List.of(theirs.get(sheet));
            sheets.add(marked(plan.sheets().get(sheet), here));
            panels.add(here.stream().map(Wanted::panel).toList());
        }
        return new CoverPlan(fit, new CutPlan(sheets, plan.goal()), panels);
    }

    private static CutSheet marked(CutSheet sheet, List<Wanted> wanted) {
        List<Placed> parts = new ArrayList<>();
        for (int part = 0; part < wanted.size(); part++) {
            Placed placed = sheet.parts().get(part);
            parts.add(new Placed(
                    wanted.get(part).piece().mark(),
                    placed.xMm(),
                    placed.yMm(),
                    placed.turnRad(),
                    placed.mirrored(),
                    placed.outline()));
        }
        return new CutSheet(sheet.stock(), sheet.lengthMm(), sheet.widthMm(), parts, sheet.offcuts());
    }
}
