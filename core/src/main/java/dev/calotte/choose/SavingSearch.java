package dev.calotte.choose;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.nest.Layout;
import dev.calotte.nest.SheetPlan;
import dev.calotte.parts.PanelKind;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Seams;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Looks for the seams of {@link SeamSaving}. */
final class SavingSearch {

    /** A seam costs work: less than this part of the stock is not worth it (common practice, no source). */
    private static final double LEAST_SAVING = 0.01;

    /** Kinds beyond these, which take the most material, are only divided together with all others. */
    private static final int MOST_KINDS = 5;

    private static final int MOST_TRIALS = 60;

    /** For each trial so many pieces are laid quickly; of more, fewer trials are made. */
    private static final int MANY = 100;

    /** Of a panel's height from its longest side; above the second lies as much as below. */
    private static final List<Double> SHARES = List.of(0.5, 1 - Math.sqrt(0.5), 1.0 / 3, 2.0 / 3);

    private static final int MOST_ACROSS = 3;
    private static final Vector2D UP = new Vector2D(0, 1);
    private static final Vector2D DOWN = new Vector2D(0, -1);

    private final CoverPlan fewest;
    private final Layout layout;
    private final Cover cover;
    private final List<Stock> stocks;
    private int trialsLeft;

    SavingSearch(CoverPlan fewest, Layout layout) {
        this.fewest = fewest;
        this.layout = layout;
        this.cover = fewest.fit().patterns().cover();
        this.stocks = fewest.fit().stocks();
        int panels = fewest.fit().patterns().parts().dome().panels().size();
        this.trialsLeft = Math.min(MOST_TRIALS, MOST_TRIALS * MANY / panels);
    }

    /** A way to divide panels: the height of the seam, if it can be there. */
    private interface Rule {
        double heightMm(Seams seams);
    }

    /** A cover and what a first plan of it spends. */
    private record Trial(CoverFit fit, double cost) {}

    SeamSaving best() {
        Spending spending = Spending.of(stocks, fewest.plan());
        Trial start = new Trial(fewest.fit(), glance(fewest.fit()));
        Trial best = beside(beside(start, true), false);
        Optional<CoverPlan> plan = best.equals(start) ? Optional.empty() : CoverPlan.of(best.fit(), layout);
        double before = spending.of(fewest.plan());
        double after = plan.map(p -> spending.of(p.plan())).orElse(before);
        return before - after < LEAST_SAVING * before
                ? new SeamSaving(fewest, spending.measure(), 0, 0)
                : new SeamSaving(
                        plan.orElseThrow(),
                        spending.measure(),
                        before - after,
                        best.fit().seamMm() - fewest.fit().seamMm());
    }

    private double glance(CoverFit fit) {
        try {
            return SheetPlan.glance(CoverPlan.pieces(fit), stocks, layout.spacingMm())
                    .goal()
                    .reached();
        } catch (CalotteException tooLittleStock) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** The best of a cover and what comes of dividing some more of its panels: all that are whole, or those of a kind. */
    private Trial beside(Trial from, boolean all) {
        Trial best = from;
        List<Predicate<PatternFit>> choices = new ArrayList<>();
        if (all) {
            choices.add(fit -> true);
        }
        for (PanelKind kind : kinds()) {
            choices.add(fit -> fit.pattern().kind().equals(kind));
        }
        for (Predicate<PatternFit> choice : choices) {
            for (Rule rule : rules()) {
                Optional<CoverFit> divided = divided(from.fit(), choice, rule);
                if (divided.isPresent() && trialsLeft > 0) {
                    trialsLeft--;
                    double cost = glance(divided.get());
                    best = cost < best.cost() ? new Trial(divided.get(), cost) : best;
                }
            }
        }
        return best;
    }

    private List<PanelKind> kinds() {
        return fewest.fit().patterns().parts().panelKinds().stream()
                .sorted(Comparator.comparingDouble(
                        kind -> -kind.count() * kind.triangle().area()))
                .limit(MOST_KINDS)
                .toList();
    }

    private List<Rule> rules() {
        List<Rule> rules = new ArrayList<>();
        for (double share : SHARES) {
            rules.add(seams -> share * seams.topMm());
        }
        double width = width();
        for (int across = 1; across <= MOST_ACROSS; across++) {
            double each = (width - (across - 1) * layout.spacingMm()) / across;
            rules.add(
                    seams -> each - cover.allowances().narrowMm() - blank(seams).reach(DOWN));
            rules.add(seams -> blank(seams).reach(UP) + cover.allowances().wideMm() - each);
        }
        return rules;
    }

    private static ConvexPolygon blank(Seams seams) {
        return seams.pattern().whole().blank();
    }

    /** Across the first sheet or roll, which the brief names first. */
    private double width() {
        Stock first = Fit.lasting(stocks).stream().findFirst().orElse(stocks.get(0));
        if (first instanceof Outline outline) {
            return outline.widthMm() - 2 * outline.marginMm();
        }
        return first instanceof Roll roll ? roll.usableWidthMm() : ((Sheet) first).usableWidthMm();
    }

    /** The cover with a seam in those of its whole panels that are chosen; nothing if none can have one there. */
    private Optional<CoverFit> divided(CoverFit from, Predicate<PatternFit> choice, Rule rule) {
        List<PatternFit> fits = new ArrayList<>();
        boolean any = false;
        for (PatternFit fit : from.fits()) {
            Optional<PatternFit> other =
                    fit.pieces().size() == 1 && choice.test(fit) ? divided(fit, rule) : Optional.empty();
            any |= other.isPresent();
            fits.add(other.orElse(fit));
        }
        return any ? Optional.of(new CoverFit(from.patterns(), stocks, fits)) : Optional.empty();
    }

    private Optional<PatternFit> divided(PatternFit fit, Rule rule) {
        Seams seams = new Seams(cover, fit.pattern());
        double height = rule.heightMm(seams);
        if (!(height >= SeamSearch.SLIVER_MM && height <= seams.topMm() - SeamSearch.SLIVER_MM)) {
            return Optional.empty();
        }
        try {
            List<CutPiece> parts = seams.at(List.of(height));
            boolean fitting =
                    parts.stream().allMatch(part -> Fit.of(part, stocks).fits());
            return fitting ? Optional.of(new PatternFit(fit.pattern(), fit.whole(), parts)) : Optional.empty();
        } catch (CalotteException | IllegalArgumentException noRoomForHolesOrNothingLeft) {
            return Optional.empty();
        }
    }
}
