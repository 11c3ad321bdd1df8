package dev.calotte.check;

import dev.calotte.check.RecordedCover.Hole;
import dev.calotte.check.RecordedCover.Part;
import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedCover.Sheet;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.Kerf;
import dev.calotte.problem.CalotteException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What the record says that a drawing shows.
 *
 * @param cuts what is cut out of it
 * @param border the border of the stock, if it shows one; without it the piece may lie anywhere
 * @param kerfMm how wide a cut is: outlines are drawn by half of it further outside, holes smaller
 * @param once whether edges that two pieces share are cut once, so that outlines are open
 * @param withinMm how far the decimals of the file may put a corner from its place
 */
public record ExpectedDrawing(List<Cut> cuts, Optional<Ring> border, double kerfMm, boolean once, double withinMm) {

    /** No stock is so large. */
    static final Ring EVERYWHERE = Ring.of(List.of(-1e9, -1e9, 1e9, -1e9, 1e9, 1e9, -1e9, 1e9));

    /**
     * Copies the list.
     *
     * @param cuts what is cut out of it
     * @param border the border of the stock
     * @param kerfMm how wide a cut is
     * @param once whether shared edges are cut once
     * @param withinMm how exact the file is
     */
    public ExpectedDrawing {
        cuts = List.copyOf(cuts);
    }

    /**
     * What is cut out.
     *
     * @param mark the mark that stands on it
     * @param outline its outline
     * @param holes what is drilled
     */
    public record Cut(String mark, Ring outline, List<Hole> holes) {

        /**
         * Copies the list.
         *
         * @param mark the mark that stands on it
         * @param outline its outline
         * @param holes what is drilled
         */
        public Cut {
            holes = List.copyOf(holes);
        }
    }

    /**
     * A piece alone.
     *
     * @param piece what is cut
     * @param withinMm how exact the file is
     * @return its drawing
     */
    public static ExpectedDrawing of(Piece piece, double withinMm) {
        Ring drawn = piece.outer().orElse(piece.drawn());
        return new ExpectedDrawing(
                List.of(new Cut(piece.mark(), drawn, piece.holes())), Optional.empty(), 0, false, withinMm);
    }

    /**
     * A panel that is nothing but the triangle between its hubs.
     *
     * @param kind the kind of panels
     * @param withinMm how exact the file is
     * @return its drawing
     */
    public static ExpectedDrawing of(RecordedDome.PanelKind kind, double withinMm) {
        double a = kind.sides().get(0);
        double b = kind.sides().get(1);
        double c = kind.sides().get(2);
        boolean right = kind.hand().equals("right");
        double left = right ? a : b;
        double other = right ? b : a;
        double apex = (c + (left - other) * (left + other) / c) / 2;
        double height = Math.sqrt(Math.max(0, left * left - apex * apex));
        Ring outline = Ring.of(List.of(0.0, 0.0, c, 0.0, apex, height));
        return new ExpectedDrawing(
                List.of(new Cut(kind.mark(), outline, List.of())), Optional.empty(), 0, false, withinMm);
    }

    /**
     * Stock with what lies on it; parts of patterns that are not known are left out.
     *
     * @param cover the cover
     * @param sheet one of its sheets
     * @param withinMm how exact the file is
     * @return its drawing
     */
    public static ExpectedDrawing of(RecordedCover cover, Sheet sheet, double withinMm) {
        Map<String, Piece> pieces = new TreeMap<>();
        cover.pieces().forEach(piece -> pieces.put(piece.mark(), piece));
        List<Cut> cuts = new ArrayList<>();
        for (Part part : sheet.parts()) {
            Piece piece = pieces.get(part.mark());
            if (piece != null) {
                cuts.add(cut(piece, part));
            }
        }
        return new ExpectedDrawing(cuts, Optional.of(sheet.border()), 0, false, withinMm);
    }

    private static Cut cut(Piece piece, Part part) {
        Laid laid = Laid.of(part);
        List<Hole> holes = new ArrayList<>();
        for (Hole hole : piece.holes()) {
            Vector2D at = laid.at(new Vector2D(hole.x(), hole.y()));
            holes.add(new Hole(at.getX(), at.getY(), hole.diameter()));
        }
        return new Cut(part.panel() + piece.suffix(), laid.at(piece.outer().orElse(piece.drawn())), holes);
    }

    /**
     * What a file shows in another format than one whose pieces the record does not hold.
     *
     * @param shapes what is shown there
     * @param withinMm how exact the less exact of both files is
     * @return the same outlines, at the same places
     */
    public static ExpectedDrawing like(List<Shape> shapes, double withinMm) {
        SeenDrawing seen = new SeenDrawing(shapes);
        List<Cut> cuts = new ArrayList<>();
        for (Ring ring : seen.outlines(Operation.CUT_OUTER, withinMm)) {
            cuts.add(new Cut("outline " + (cuts.size() + 1), ring, List.of()));
        }
        return new ExpectedDrawing(cuts, Optional.of(EVERYWHERE), 0, false, withinMm);
    }

    /**
     * The same as it is drawn for a cutter.
     *
     * @param widthMm how wide a cut is, 0 or more
     * @param sharedOnce whether edges that two pieces share are cut once
     * @return a copy
     */
    public ExpectedDrawing withCutter(double widthMm, boolean sharedOnce) {
        return new ExpectedDrawing(cuts, border, widthMm, sharedOnce, withinMm);
    }

    /**
     * The same in a file that is as exact as that.
     *
     * @param mm how far its decimals may put a corner from its place
     * @return a copy
     */
    public ExpectedDrawing within(double mm) {
        return new ExpectedDrawing(cuts, border, kerfMm, once, mm);
    }

    /** What is cut, as the tool is led. */
    List<Cut> led() {
        return kerfMm > 0 ? cuts.stream().map(this::led).toList() : cuts;
    }

    private Cut led(Cut cut) {
        Ring left = cut.outline.area() < 0 ? cut.outline.reversed() : cut.outline;
        double[] xy = left.corners().stream()
                .flatMapToDouble(c -> DoubleStream.of(c.getX(), c.getY()))
                .toArray();
        List<Shape> shapes = List.of(Polyline.closed(Operation.CUT_OUTER, xy));
        Drawing net = new Drawing("", "", 0, 0, List.of(new Drawing.Part(cut.mark, "", shapes)));
        List<Hole> holes = cut.holes.stream()
                .map(hole -> new Hole(hole.x(), hole.y(), hole.diameter() - kerfMm))
                .toList();
        return new Cut(cut.mark, led(net).orElse(cut.outline), holes);
    }

    /** None of an outline that crosses itself, which no tool is led round. */
    private Optional<Ring> led(Drawing net) {
        try {
            return Optional.of(Ring.of(
                    (Polyline) new Kerf(kerfMm).of(net).parts().get(0).shapes().get(0)));
        } catch (CalotteException crossing) {
            return Optional.empty();
        }
    }

    /** Holes as circles, to be compared with those of the file. */
    static Circle circle(Hole hole) {
        return new Circle(Operation.DRILL, hole.x(), hole.y(), hole.diameter() / 2);
    }
}
