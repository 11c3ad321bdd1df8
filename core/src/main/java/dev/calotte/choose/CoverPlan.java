package dev.calotte.choose;

import dev.calotte.dome.Panel;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Piece;
import dev.calotte.nest.Placed;
import dev.calotte.nest.SheetPlan;
import dev.calotte.pattern.CutPiece;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * How the pieces of a cover are laid on its stock.
 *
 * @param fit the cover and what is cut for it
 * @param plan what lies where, and how good that is
 * @param panels for each sheet of the plan, for each part on it, the panel that it is for
 */
public record CoverPlan(CoverFit fit, CutPlan plan, List<List<Panel>> panels) {

    /**
     * Copies the lists.
     *
     * @param fit the cover
     * @param plan what lies where
     * @param panels what each part is for
     */
    public CoverPlan {
        panels = panels.stream().map(List::copyOf).toList();
    }

    /**
     * Lays the pieces of a cover.
     *
     * @param fit the cover and what is cut for it
     * @param layout how far pieces stay apart, and how long a better plan is looked for
     * @return the plan; nothing if the cover has no stock or a piece does not fit it
     */
    public static Optional<CoverPlan> of(CoverFit fit, Layout layout) {
        if (fit.stocks().isEmpty() || !fit.misfits().isEmpty()) {
            return Optional.empty();
        }
        Alike alike = new Alike(fit);
        CutPlan plan = SheetPlan.of(alike.pieces(), fit.stocks(), layout);
        return Optional.of(alike.handOut(plan));
    }

    /** What is laid for a cover, pieces with equal blanks as one kind. */
    static List<Piece> pieces(CoverFit fit) {
        return new Alike(fit).pieces();
    }

    /** The pieces by their blanks: pieces that differ in holes or notches only are laid as one kind. */
    private static final class Alike {

        private static final double SAME_MM = 1e-6;

        private final CoverFit fit;
        private final Map<String, List<Wanted>> wanted = new LinkedHashMap<>();

        /** A piece for a panel. */
        private record Wanted(CutPiece piece, Panel panel) {}

        Alike(CoverFit fit) {
            this.fit = fit;
            Map<String, List<Panel>> panels = new TreeMap<>();
            for (Panel panel : fit.patterns().parts().dome().panels()) {
                panels.computeIfAbsent(fit.patterns().of(panel).mark(), mark -> new ArrayList<>())
                        .add(panel);
            }
            for (PatternFit each : fit.fits()) {
                for (CutPiece piece : each.pieces()) {
                    List<Wanted> alike = wanted.computeIfAbsent(shape(piece), s -> new ArrayList<>());
                    panels.get(each.pattern().mark()).forEach(panel -> alike.add(new Wanted(piece, panel)));
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

        List<Piece> pieces() {
            boolean mayMirror = fit.patterns().cover().treatment().reversible();
            List<Piece> pieces = new ArrayList<>();
            for (List<Wanted> alike : wanted.values()) {
                CutPiece first = alike.get(0).piece();
                pieces.add(new Piece(first.mark(), first.blank(), alike.size(), mayMirror, first.grainRad()));
            }
            return pieces;
        }

        /** Gives the places of each kind to its pieces, in the order of patterns and panels. */
        CoverPlan handOut(CutPlan plan) {
            Map<String, Iterator<Wanted>> waiting = new TreeMap<>();
            wanted.values().forEach(alike -> waiting.put(alike.get(0).piece().mark(), alike.iterator()));
            List<CutSheet> sheets = new ArrayList<>();
            List<List<Panel>> panels = new ArrayList<>();
            for (CutSheet sheet : plan.sheets()) {
                List<Placed> parts = new ArrayList<>();
                List<Panel> theirs = new ArrayList<>();
                for (Placed placed : sheet.parts()) {
                    Wanted next = waiting.get(placed.mark()).next();
                    parts.add(new Placed(
                            next.piece().mark(),
                            placed.xMm(),
                            placed.yMm(),
                            placed.turnRad(),
                            placed.mirrored(),
                            placed.outline()));
                    theirs.add(next.panel());
                }
                sheets.add(new CutSheet(sheet.stock(), sheet.lengthMm(), sheet.widthMm(), parts, sheet.offcuts()));
                panels.add(theirs);
            }
            return new CoverPlan(fit, new CutPlan(sheets, plan.goal()), panels);
        }
    }
}
