package dev.calotte.drawing;

import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.drawing.BuildingSteps.Step;
import dev.calotte.drawing.SizeChoice.Attempt;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * A drawing for each step of the building: what is new with the marks of its kinds, what stands already beside it pale,
 * and the dome as it looks afterwards.
 */
final class StepDrawings {

    private static final double DOT = 0.8;

    /** How high the view of the dome is. */
    private static final double GROWN = 46;

    private final Subject subject;
    private final List<Spread> spreads;
    private final GrownDome grown;
    private final List<Step> steps;

    private StepDrawings(Subject subject) {
        this.subject = subject;
        this.spreads = Spread.of(subject.dome());
        this.grown = new GrownDome(subject);
        this.steps = BuildingSteps.of(subject.dome(), subject.assembly().raise());
    }

    static List<Draft> of(Subject subject) {
        StepDrawings drawings = new StepDrawings(subject);
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < drawings.steps.size(); i++) {
            int step = i;
            drafts.add(SizeChoice.smallest(PaperSize.of(subject.units()), size -> drawings.on(size, step)));
        }
        return drafts;
    }

    private Attempt on(PaperSize size, int index) {
        Step step = steps.get(index);
        StepWords words = new StepWords(subject.parts(), step);
        Paper paper = new Paper(size, "Step " + (index + 1) + " of " + steps.size() + ": row " + step.row());
        words.lines(subject.units()).forEach(paper::note);
        if (step.liftMm().isPresent() && index == steps.size() - 1) {
            paper.note("Let it down on the marks of its base hubs, and fix them before anything else.");
        }
        Box strip = paper.strip(GROWN);
        ScaleBar bar = new ScaleBar(
                paper, new Box(strip.left(), strip.low(), strip.right(), strip.low() + 9), subject.units());
        Spread spread = spread(step);
        List<Strut> standing = standing(index);
        Roundel roundel = Roundel.of(paper, reach(spread, step, standing), new Roundel.Beside(2, 2), subject.units());
        standing.forEach(strut -> add(paper, spread, roundel, strut, Weight.PALE));
        int misfits = addNew(paper, spread, roundel, step);
        roundel.addArrow(paper);
        grown.draw(paper, new Box(strip.middleX(), strip.low() + 1, strip.right(), strip.high() - 1), step);
        DrawnScale scale = roundel.place().scale();
        bar.draw(scale, ", along lines from the middle");
        String number = index < 9 ? "0" + (index + 1) : "" + (index + 1);
        String what = "step " + (index + 1) + ", row " + step.row();
        Draft draft = paper.draft("drawings/step-" + number, what, "scale " + scale.text(), roundel.lowest());
        return new Attempt(draft.saying(words.title()), misfits + Crowding.count(paper.labels()));
    }

    /** The view in which most of the step's pieces lie. */
    private Spread spread(Step step) {
        if (spreads.size() == 1) {
            return spreads.get(0);
        }
        double height = step.struts().stream()
                .mapToDouble(s -> subject.dome().hubs().get(s.from()).position().getZ()
                        + subject.dome().hubs().get(s.to()).position().getZ())
                .sum();
        return spreads.get(height >= 0 ? 0 : 1);
    }

    /** What stands between the hubs of the step before: only that touches what is new. */
    private List<Strut> standing(int index) {
        if (index == 0) {
            return List.of();
        }
        SortedSet<Integer> hubs = new TreeSet<>();
        steps.get(index - 1).struts().forEach(strut -> hubs.addAll(List.of(strut.from(), strut.to())));
        return steps.subList(0, index).stream()
                .flatMap(step -> step.struts().stream())
                .filter(strut -> hubs.contains(strut.from()) && hubs.contains(strut.to()))
                .toList();
    }

    private static double reach(Spread spread, Step step, List<Strut> standing) {
        SortedSet<Integer> hubs = new TreeSet<>();
        for (List<Strut> struts : List.of(step.struts(), standing)) {
            struts.forEach(strut -> hubs.addAll(List.of(strut.from(), strut.to())));
        }
        step.panels().forEach(panel -> hubs.addAll(panel.hubs()));
        return hubs.stream().mapToDouble(h -> spread.hub(h).getNorm()).max().orElseThrow();
    }

    private int addNew(Paper paper, Spread spread, Roundel roundel, Step step) {
        OnPaper place = roundel.place();
        for (Panel panel : step.panels()) {
            String mark = subject.marks().of(panel);
            paper.add(KindLook.facet(
                    place.of(spread.corners(panel)), subject.parts().kindOf(panel), Weight.NONE, mark));
        }
        int tight = 0;
        SortedSet<Integer> hubs = new TreeSet<>();
        for (Strut strut : step.struts()) {
            tight += addMarked(paper, place.of(spread.hub(strut.from())), place.of(spread.hub(strut.to())), strut);
            hubs.addAll(List.of(strut.from(), strut.to()));
        }
        for (int hub : hubs) {
            Vector2D at = place.of(spread.hub(hub));
            String mark = subject.marks().of(subject.dome().hubs().get(hub));
            paper.add(new Disc(at.getX(), at.getY(), DOT, 0, Weight.FINE, mark));
        }
        Leaders leaders = new Leaders();
        for (Panel panel : step.panels()) {
            String mark = subject.parts().kindOf(panel).mark();
            leaders.mark(paper, mark, Letters.MARK, place.of(spread.corners(panel)));
        }
        leaders.draw(paper, roundel.between(paper, leaders.widthMm() + 2));
        return tight + leaders.count();
    }

    private static void add(Paper paper, Spread spread, Roundel roundel, Strut strut, Weight weight) {
        Vector2D from = roundel.place().of(spread.hub(strut.from()));
        Vector2D to = roundel.place().of(spread.hub(strut.to()));
        paper.line(from.getX(), from.getY(), to.getX(), to.getY(), weight);
    }

    /** A strut, broken in its middle for its mark; 1 if there is no room for that. */
    private int addMarked(Paper paper, Vector2D from, Vector2D to, Strut strut) {
        Vector2D middle = from.add(to).scalarMultiply(0.5);
        Label label = Letters.middle(subject.parts().kindOf(strut).mark(), middle.getX(), middle.getY(), Letters.SMALL);
        Box box = Letters.box(label);
        Vector2D half = to.subtract(middle);
        double part = Math.min(
                Math.abs(half.getX()) * box.height() > Math.abs(half.getY()) * box.width()
                        ? box.width() / 2 / Math.abs(half.getX())
                        : box.height() / 2 / Math.abs(half.getY()),
                1);
        Vector2D gap = half.scalarMultiply(part);
        Vector2D before = middle.subtract(gap);
        Vector2D after = middle.add(gap);
        paper.line(from.getX(), from.getY(), before.getX(), before.getY(), Weight.STRONG);
        paper.line(after.getX(), after.getY(), to.getX(), to.getY(), Weight.STRONG);
        paper.add(label);
        return (1 - part) * half.getNorm() < 2 * DOT ? 1 : 0;
    }
}
