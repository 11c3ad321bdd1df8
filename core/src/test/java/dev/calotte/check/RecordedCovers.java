package dev.calotte.check;

import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.geometry.Polygon;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Covers whose records and drawings are checked, laid without much search. */
final class RecordedCovers {

    static final double SPACING_MM = 6;
    static final double MARGIN_MM = 5;

    static final Cover NET = Cover.of("net");

    /** Bevelled boards on top of the frame, screwed. */
    static final Cover BOARDS = Cover.of("boards")
            .with(new Sheeting(4, 12, true))
            .with(new Fasteners(4, 15, 200))
            .with(new Treatment(false, true, Splitting.NEVER, false));

    /** Cloth with seams, allowances and notches by which neighbours are told; it may lie face down. */
    static final Cover CLOTH =
            Cover.of("cloth").with(Allowances.of(12, 40)).with(new Treatment(true, false, Splitting.SEAM, true));

    private static final Stock SHEET = new Sheet(2500, 1250, MARGIN_MM, Terms.OPEN);
    private static final Stock ROLL = new Roll(700, MARGIN_MM, OptionalDouble.empty(), Terms.OPEN);

    /** A hollow piece of sheet, many of it. */
    private static final Stock HOLLOW = new Outline(
            "offcut",
            Polygon.of(0, 0, 3000, 0, 3000, 3000, 1500, 1500, 0, 3000),
            MARGIN_MM,
            new Terms(OptionalDouble.of(1), OptionalDouble.empty(), OptionalInt.of(100)));

    static final CoverPlan BOARDS_PLAN = plan(CheckedDomes.ICOSAHEDRON, BOARDS, SHEET);
    static final CoverPlan CLOTH_PLAN = plan(CheckedDomes.ICOSAHEDRON, CLOTH, ROLL);
    static final CoverPlan HOLLOW_PLAN = plan(CheckedDomes.OCTAHEDRON, NET, HOLLOW);
    static final CoverPlan HANDED_PLAN =
            plan(CheckedDomes.CLASS_THREE, NET, new Sheet(3000, 2000, MARGIN_MM, Terms.OPEN));

    private RecordedCovers() {}

    private static CoverPlan plan(Parts parts, Cover cover, Stock stock) {
        return CoverPlan.of(CoverFit.of(Patterns.of(parts, cover), List.of(stock)), new Layout(SPACING_MM, 0, 1))
                .orElseThrow();
    }

    static RecordedCover of(CoverPlan plan) {
        return Records.cover(plan, SPACING_MM);
    }

    static RecordedCover unplanned(Parts parts, Cover cover) {
        return Records.cover(CoverFit.of(Patterns.of(parts, cover), List.of()));
    }

    static RecordedCover with(RecordedCover cover, List<RecordedCover.Piece> pieces) {
        return new RecordedCover(cover.name(), cover.plane(), cover.spacing(), pieces, cover.sheets(), cover.planned());
    }

    /** With one piece changed in shape. */
    static RecordedCover.Piece piece(RecordedCover.Piece piece, Ring net, Ring outline, int count) {
        return new RecordedCover.Piece(
                piece.mark(),
                piece.panelKind(),
                count,
                net,
                outline,
                piece.drawn(),
                piece.outer(),
                piece.holes(),
                piece.allowances(),
                piece.parts());
    }
}
