package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Panel;
import dev.calotte.drawing.SizeChoice.Attempt;
import java.util.List;

/**
 * The dome from above, spread out so that every panel shows with its mark, and the hubs of the base ring round it. What
 * hangs far below the middle, as of a whole sphere, has a drawing of its own from below.
 */
final class PlanDrawing {

    private final Subject subject;
    private final Spread spread;
    private final PieceMarks marks;
    private final BaseRing ring;

    private PlanDrawing(Subject subject, Spread spread) {
        this.subject = subject;
        this.spread = spread;
        this.marks = subject.marks();
        this.ring = new BaseRing(spread, marks);
    }

    static List<Draft> of(Subject subject) {
        return Spread.of(subject.dome()).stream()
                .map(spread -> new PlanDrawing(subject, spread))
                .map(plan -> SizeChoice.smallest(PaperSize.of(subject.units()), plan::on))
                .toList();
    }

    private Attempt on(PaperSize size) {
        boolean below = spread.side() == Spread.Side.LOWER;
        Paper paper = new Paper(size, below ? "Plan of the lower part, from below" : "Plan from above");
        paper.note("Spread out flat, so that every panel shows; counted "
                + (below ? "clockwise, since it is seen from below." : "counter-clockwise from the start ray."));
        Legend.add(paper, subject.parts());
        ScaleBar bar = ScaleBar.on(paper, subject.units());
        double reach = spread.reachMm(spread.panels());
        Roundel roundel = Roundel.of(paper, reach, ring.beside(), subject.units());
        DrawnScale scale = roundel.place().scale();
        bar.draw(scale, ", along every line from the middle");
        int misfits = addPanels(paper, roundel);
        ring.add(paper, roundel.place());
        roundel.addArrow(paper);
        String name = "drawings/plan" + (below ? "-below" : "");
        String what = below ? "plan from below" : "plan";
        return new Attempt(
                paper.draft(name, what, "scale " + scale.text(), roundel.lowest()),
                misfits + Crowding.count(paper.labels()));
    }

    private int addPanels(Paper paper, Roundel roundel) {
        OnPaper place = roundel.place();
        Leaders leaders = new Leaders();
        for (Panel panel : spread.panels()) {
            String mark = marks.of(panel);
            paper.add(KindLook.facet(
                    place.of(spread.corners(panel)), subject.parts().kindOf(panel), Weight.STRONG, mark));
        }
        for (Panel panel : spread.panels()) {
            leaders.mark(paper, marks.of(panel), Letters.SMALL, place.of(spread.corners(panel)));
        }
        new PlanOpenings(spread, place).add(paper, leaders);
        leaders.draw(paper, roundel.between(paper, leaders.widthMm() + 2));
        return leaders.count();
    }
}
