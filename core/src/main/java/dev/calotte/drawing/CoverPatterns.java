package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.PatternFit;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * One drawing for each piece that is cut for a cover, at full size and seen from outside: the cut outline with its
 * notches, holes, the mark of the kind with its count, the net shape for reference with a dot at each of its corners where seams stop, and an arrow where the
 * piece has a direction. Where edges are bevelled the outline is that of the outer face, and that of the inner one is a
 * reference. Beside it stands a reference of 100 mm.
 *
 * <pre>{@code
 * List<Drawing> patterns = CoverPatterns.of(fit, UnitSystem.METRIC);
 * }</pre>
 */
public final class CoverPatterns {

    private static final double MARGIN = 10;

    private final CoverFit fit;
    private final UnitSystem units;

    private CoverPatterns(CoverFit fit, UnitSystem units) {
        this.fit = fit;
        this.units = units;
    }

    /**
     * Draws the pieces of a cover.
     *
     * @param fit the cover with what is cut for it
     * @param units how lengths are written for people
     * @return a document {@code panels/COVER-MARK} for each piece, in the order of the patterns
     */
    public static List<Drawing> of(CoverFit fit, UnitSystem units) {
        CoverPatterns patterns = new CoverPatterns(fit, units);
        return fit.fits().stream()
                .flatMap(each -> each.pieces().stream().map(piece -> patterns.drawing(each, piece)))
                .toList();
    }

    private Drawing drawing(PatternFit each, CutPiece piece) {
        Polygon drawn = drawn(piece);
        Vector2D least = new Vector2D(-drawn.reach(new Vector2D(-1, 0)), -drawn.reach(new Vector2D(0, -1)));
        Vector2D shift = new Vector2D(MARGIN, 2 * MARGIN).subtract(least);
        double width = Math.max(drawn.extent(new Vector2D(1, 0)), Reference.LENGTH) + 2 * MARGIN;
        double height = drawn.extent(new Vector2D(0, 1)) + 3 * MARGIN;
        String cover = fit.patterns().cover().name();
        return new Drawing(
                "panels/" + cover + "-" + piece.mark(),
                "Cover " + cover + ", " + piece.mark() + ", cut "
                        + each.pattern().count() + ", with allowances",
                width,
                height,
                List.of(
                        new PieceShapes(fit.patterns().cover(), Pose.shifted(shift), true)
                                .part(
                                        new Part(piece.mark(), description(each, piece), List.of()),
                                        each.pattern(),
                                        piece,
                                        PieceLabels.ofKind(
                                                piece.net(),
                                                piece.mark(),
                                                each.pattern().count(),
                                                List.of())),
                        Reference.at(MARGIN)));
    }

    /** What needs room: gaps and hub reliefs leave the net shape larger than what is cut. */
    private static Polygon drawn(CutPiece piece) {
        List<Vector2D> corners = new ArrayList<>(piece.blank().corners());
        corners.addAll(piece.net().corners());
        return ConvexPolygon.round(corners);
    }

    private String description(PatternFit each, CutPiece piece) {
        Pattern pattern = each.pattern();
        String hand = switch (pattern.kind().hand()) {
            case NONE -> "";
            default -> pattern.kind().hand().name().toLowerCase(Locale.ROOT) + " hand, ";
        };
        String part = each.pieces().size() > 1 ? "part of " + pattern.mark() + ", " : "";
        return part + hand + pattern.count() + " pieces, narrowest width "
                + units.length(piece.net().narrowestWidth(), 1) + " net, "
                + units.length(piece.blank().narrowestWidth(), 1) + " cut";
    }
}
