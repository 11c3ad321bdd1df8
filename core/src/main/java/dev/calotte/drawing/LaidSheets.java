package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.dome.Panel;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.stock.Roll;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The sheets of a plan with their pieces from left to right, those together that are laid alike. */
final class LaidSheets {

    private final CoverPlan plan;
    private final PieceMarks marks;
    private final Map<String, PatternFit> fitOf = new TreeMap<>();

    LaidSheets(CoverPlan plan) {
        this.plan = plan;
        this.marks = new PieceMarks(plan.fit().patterns().parts());
        plan.fit().fits().forEach(fit -> fit.pieces().forEach(piece -> fitOf.put(piece.mark(), fit)));
    }

    /** A sheet, or what is taken from a roll. */
    record LaidSheet(int number, CutSheet cut, List<LaidPiece> pieces) {

        /** The same for sheets that differ in the marks of their pieces alone; each roll is by itself. */
        private List<Object> layout() {
            String places = pieces.stream().map(LaidPiece::place).collect(Collectors.joining(", "));
            return List.of(cut.stock(), cut.stock() instanceof Roll ? number : 0, places);
        }
    }

    /** In the order of the first of each. */
    List<List<LaidSheet>> alike() {
        Map<List<Object>, List<LaidSheet>> alike = new LinkedHashMap<>();
        for (int i = 0; i < plan.plan().sheets().size(); i++) {
            LaidSheet sheet = sheet(i);
            alike.computeIfAbsent(sheet.layout(), layout -> new ArrayList<>()).add(sheet);
        }
        return List.copyOf(alike.values());
    }

    private LaidSheet sheet(int index) {
        CutSheet cut = plan.plan().sheets().get(index);
        List<LaidPiece> pieces = new ArrayList<>();
        for (int part = 0; part < cut.parts().size(); part++) {
            pieces.add(piece(cut.parts().get(part), plan.panels().get(index).get(part)));
        }
        pieces.sort(LaidPiece.ALONG);
        return new LaidSheet(index + 1, cut, pieces);
    }

    private LaidPiece piece(Placed placed, Panel panel) {
        PatternFit fit = fitOf.get(placed.mark());
        String suffix = placed.mark().substring(fit.pattern().mark().length());
        return new LaidPiece(placed, fit.pattern().kind(), marks.of(panel) + suffix);
    }
}
