package dev.calotte.drawing;

import dev.calotte.assembly.PieceLabels;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * One flat pattern for each kind of panel at full size, seen from outside: the triangle between the hub centres,
 * without gaps or allowances, its longest side along x, with the mark of the kind, its count, and along each side the mark
 * of the struts below it. Beside it stands a reference of 100 mm to measure by.
 *
 * <pre>{@code
 * List<Drawing> patterns = PanelPatterns.of(parts, UnitSystem.METRIC);
 * }</pre>
 */
public final class PanelPatterns {

    private static final double MARGIN = 10;

    private PanelPatterns() {}

    /**
     * Draws the patterns.
     *
     * @param parts the parts of the dome
     * @param units how lengths are written for people
     * @return a document {@code panels/MARK} for each kind of panel, in the order of the kinds
     */
    public static List<Drawing> of(Parts parts, UnitSystem units) {
        return parts.panelKinds().stream()
                .map(kind -> drawing(parts, kind, units))
                .toList();
    }

    private static Drawing drawing(Parts parts, PanelKind kind, UnitSystem units) {
        Triangle t = kind.triangle();
        double width = Math.max(t.c(), Reference.LENGTH) + 2 * MARGIN;
        double height = 3 * MARGIN + t.altitude(2);
        return new Drawing(
                "panels/" + kind.mark(),
                "Panel " + kind.mark() + ", cut " + kind.count() + ", net size without allowances",
                width,
                height,
                List.of(part(parts, kind, units), Reference.at(MARGIN)));
    }

    private static Part part(Parts parts, PanelKind kind, UnitSystem units) {
        Polyline outline = outline(kind);
        ConvexPolygon net =
                ConvexPolygon.of(outline.x(0), outline.y(0), outline.x(1), outline.y(1), outline.x(2), outline.y(2));
        return Lettering.on(
                new Part(kind.mark(), description(kind, units), List.of(outline)),
                List.of(net),
                PieceLabels.ofKind(net, kind.mark(), kind.count(), strutMarks(parts, kind)));
    }

    /** The struts below the sides of the outline, in its order. */
    private static List<String> strutMarks(Parts parts, PanelKind kind) {
        boolean right = kind.hand() == Hand.RIGHT;
        return Stream.of(2, right ? 1 : 0, right ? 0 : 1)
                .map(side -> parts.strutKind(kind.struts().get(side)).mark())
                .toList();
    }

    /** The triangle from its lower left corner; counter-clockwise a left panel's long side is followed by its short one. */
    private static Polyline outline(PanelKind kind) {
        Triangle t = kind.triangle();
        double left = kind.hand() == Hand.RIGHT ? t.a() : t.b();
        double right = kind.hand() == Hand.RIGHT ? t.b() : t.a();
        double apex = (t.c() + (left - right) * (left + right) / t.c()) / 2;
        double base = 2 * MARGIN;
        return Polyline.closed(
                Operation.CUT_OUTER, MARGIN, base, MARGIN + t.c(), base, MARGIN + apex, base + t.altitude(2));
    }

    private static String description(PanelKind kind, UnitSystem units) {
        Triangle t = kind.triangle();
        String hand = kind.hand() == Hand.NONE ? "" : kind.hand().name().toLowerCase(Locale.ROOT) + " hand, ";
        return hand + kind.count() + " pieces, sides " + units.length(t.a(), 1) + ", " + units.length(t.b(), 1) + ", "
                + units.length(t.c(), 1) + ", narrowest width " + units.length(t.narrowestWidth(), 1);
    }
}
