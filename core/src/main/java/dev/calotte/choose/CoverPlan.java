package dev.calotte.choose;

import dev.calotte.dome.Panel;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Piece;
import dev.calotte.nest.SheetPlan;
import java.util.List;
import java.util.Optional;

/**
 * How the pieces of a cover are laid on its stock.
 *
 * <pre>{@code
 * Optional<CoverPlan> plan = CoverPlan.of(fit, Layout.quick(5));
 * }</pre>
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
        AlikePieces alike = new AlikePieces(fit, fit.patterns().parts().dome().panels());
        CutPlan plan = SheetPlan.of(alike.pieces(), fit.stocks(), layout);
        return Optional.of(alike.handOut(plan));
    }

    /**
     * The same plan, in which those of interchangeable pieces that lie first along the stock are for the panels that are
     * wanted first.
     *
     * @param order all panels of the dome in the order in which they are wanted
     * @return the plan with its places handed out anew
     */
    public CoverPlan handedOut(List<Panel> order) {
        return new AlikePieces(fit, order).handOutAlong(plan, List.of());
    }

    /** What is laid for a cover, pieces with equal blanks as one kind. */
    static List<Piece> pieces(CoverFit fit) {
        return new AlikePieces(fit, fit.patterns().parts().dome().panels()).pieces();
    }
}
