package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels;
import dev.calotte.assembly.PieceLabels.Face;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.dome.Panel;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Placed;
import dev.calotte.pattern.CutPiece;
import dev.calotte.stock.Outline;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

/**
 * One drawing for each sheet, and for what is taken from a roll, at full size: the border of the stock, and on it every
 * piece under the mark of the panel that it is for, with that mark, its row, the face that is up and the marks of its
 * neighbours written on it. The outline of the stock is the measure to check the scale by.
 *
 * <pre>{@code
 * for (Drawing sheet : CoverSheets.of(plan, UnitSystem.METRIC)) {
 *     Exporters.installed().write(sheet, Path.of(sheet.name() + ".svg"));
 * }
 * }</pre>
 */
public final class CoverSheets {

    private final CoverPlan plan;
    private final UnitSystem units;
    private final PieceMarks marks;
    private final PieceLabels labels;
    private final Map<String, PatternFit> fitOf = new TreeMap<>();
    private final Map<String, CutPiece> pieceOf = new TreeMap<>();

    private CoverSheets(CoverPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
        this.marks = new PieceMarks(plan.fit().patterns().parts());
        this.labels = new PieceLabels(plan.fit().patterns());
        for (PatternFit fit : plan.fit().fits()) {
            for (CutPiece piece : fit.pieces()) {
                fitOf.put(piece.mark(), fit);
                pieceOf.put(piece.mark(), piece);
            }
        }
    }

    /**
     * Draws the sheets of a cover.
     *
     * @param plan how its pieces are laid
     * @param units how lengths are written for people
     * @return a document {@code sheets/COVER-01} and so on, in the order of the plan
     */
    public static List<Drawing> of(CoverPlan plan, UnitSystem units) {
        CoverSheets sheets = new CoverSheets(plan, units);
        List<Drawing> drawings = new ArrayList<>();
        for (int sheet = 0; sheet < plan.plan().sheets().size(); sheet++) {
            drawings.add(sheets.drawing(sheet));
        }
        return List.copyOf(drawings);
    }

    private Drawing drawing(int number) {
        CutSheet sheet = plan.plan().sheets().get(number);
        String cover = plan.fit().patterns().cover().name();
        List<Part> parts = new ArrayList<>();
        for (int part = 0; part < sheet.parts().size(); part++) {
            parts.add(part(number, part));
        }
        Optional<Part> reference = Reference.on(parts, sheet.lengthMm(), sheet.widthMm());
        parts.add(border(sheet));
        reference.ifPresent(parts::add);
        return new Drawing(
                String.format(Locale.ROOT, "sheets/%s-%02d", cover, number + 1),
                "Cover " + cover + ", sheet " + (number + 1) + " of "
                        + plan.plan().sheets().size() + ", " + units.length(sheet.lengthMm()) + " by "
                        + units.length(sheet.widthMm()),
                sheet.lengthMm(),
                sheet.widthMm(),
                parts);
    }

    private static Part border(CutSheet sheet) {
        return new Part("SHEET", "The border of the stock", List.of(Polyline.closed(Operation.SHEET, corners(sheet))));
    }

    private static double[] corners(CutSheet sheet) {
        double length = sheet.lengthMm();
        double width = sheet.widthMm();
        return sheet.stock() instanceof Outline outline
                ? outline.border().corners().stream()
                        .flatMapToDouble(corner -> DoubleStream.of(corner.getX(), corner.getY()))
                        .toArray()
                : new double[] {0, 0, length, 0, length, width, 0, width};
    }

    private Part part(int sheet, int part) {
        Placed placed = plan.plan().sheets().get(sheet).parts().get(part);
        PatternFit fit = fitOf.get(placed.mark());
        Panel panel = plan.panels().get(sheet).get(part);
        String suffix = placed.mark().substring(fit.pattern().mark().length());
        CutPiece piece = pieceOf.get(placed.mark());
        return new PieceShapes(plan.fit().patterns().cover(), Pose.of(placed), false)
                .part(
                        new Part(
                                marks.of(panel) + suffix,
                                "Pattern " + placed.mark() + (placed.mirrored() ? ", face down" : ""),
                                List.of()),
                        fit.pattern(),
                        piece,
                        labels.of(panel, piece, placed.mirrored() ? Face.IN : Face.OUT));
    }
}
