package dev.calotte.choose;

import dev.calotte.dome.Panel;
import dev.calotte.nest.CutPlan;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Piece;
import dev.calotte.nest.Placed;
import dev.calotte.nest.SheetPlan;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

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
        boolean mayMirror = fit.patterns().cover().treatment().reversible();
        List<Piece> pieces = fit.fits().stream()
                .flatMap(each -> each.pieces().stream()
                        .map(piece -> piece(piece, each.pattern().count(), mayMirror)))
                .toList();
        CutPlan plan = SheetPlan.of(pieces, fit.stocks(), layout);
        return Optional.of(new CoverPlan(fit, plan, handOut(fit, plan)));
    }

    private static Piece piece(CutPiece piece, int count, boolean mayMirror) {
        return new Piece(piece.mark(), piece.blank(), count, mayMirror, piece.grainRad());
    }

    /** Gives the parts of each mark to its panels in the order of the dome. */
    private static List<List<Panel>> handOut(CoverFit fit, CutPlan plan) {
        Map<String, Iterator<Panel>> waiting = new TreeMap<>();
        for (PatternFit each : fit.fits()) {
            List<Panel> panels = panels(fit, each.pattern());
            each.pieces().forEach(piece -> waiting.put(piece.mark(), panels.iterator()));
        }
        List<List<Panel>> handed = new ArrayList<>();
        for (CutSheet sheet : plan.sheets()) {
            handed.add(sheet.parts().stream()
                    .map(Placed::mark)
                    .map(mark -> waiting.get(mark).next())
                    .toList());
        }
        return handed;
    }

    private static List<Panel> panels(CoverFit fit, Pattern pattern) {
        return fit.patterns().parts().dome().panels().stream()
                .filter(panel -> fit.patterns().of(panel).mark().equals(pattern.mark()))
                .toList();
    }
}
