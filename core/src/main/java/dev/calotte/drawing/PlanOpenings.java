package dev.calotte.drawing;

import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** Openings on a plan: the struts that stay in them, and the name of each. */
final class PlanOpenings {

    private final Spread spread;
    private final OnPaper place;

    PlanOpenings(Spread spread, OnPaper place) {
        this.spread = spread;
        this.place = place;
    }

    void add(Paper paper, Leaders leaders) {
        BareStruts.of(spread.dome()).forEach(strut -> line(paper, strut));
        spread.dome().openings().forEach(opening -> name(paper, leaders, opening));
    }

    /** A strut in an opening between two panels that this view shows is in this view, too. */
    private void line(Paper paper, Strut strut) {
        if (spread.shows(strut)) {
            Vector2D from = place.of(spread.hub(strut.from()));
            Vector2D to = place.of(spread.hub(strut.to()));
            paper.line(from.getX(), from.getY(), to.getX(), to.getY(), Weight.STRONG);
        }
    }

    /** In the first of its triangles that has room for it, else beside the figure. */
    private void name(Paper paper, Leaders leaders, Opening opening) {
        Dome whole = spread.dome().whole();
        List<List<Vector2D>> gone = opening.panels().stream()
                .map(whole.panels()::get)
                .filter(panel -> spread.shows(whole, panel))
                .map(panel -> corners(whole, panel))
                .toList();
        if (gone.isEmpty()) {
            return;
        }
        Optional<Vector2D> spot = gone.stream()
                .flatMap(corners -> MarkSpot.in(corners, Letters.capitals(opening.name(), Letters.SMALL)).stream())
                .findFirst();
        spot.ifPresentOrElse(
                at -> paper.add(Letters.middle(opening.name(), at.getX(), at.getY(), Letters.SMALL)),
                () -> leaders.add(opening.name(), MarkSpot.middle(gone.get(0))));
    }

    private List<Vector2D> corners(Dome whole, Panel panel) {
        return place.of(panel.hubs().stream()
                .map(hub -> spread.at(whole.hubs().get(hub).position()))
                .toList());
    }
}
