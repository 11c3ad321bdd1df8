package dev.calotte.drawing;

import dev.calotte.assembly.Patch;
import dev.calotte.assembly.PatchKind;
import dev.calotte.assembly.Patches;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Panel;
import dev.calotte.drawing.SizeChoice.Attempt;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The dome spread out as in its plan, coloured by the patches that are made first: strong lines where patches are joined,
 * fine ones where panels are joined into a patch, in each panel its place in the order of joining, and in one panel of each
 * patch the mark of the patch as well. Neighbours differ in tone.
 */
final class PatchesDrawing {

    private final Subject subject;
    private final Patches patches;
    private final Spread spread;

    private final PatchTones tones;

    private PatchesDrawing(Subject subject, Patches patches, Spread spread) {
        this.subject = subject;
        this.patches = patches;
        this.spread = spread;
        this.tones = PatchTones.of(patches.patches());
    }

    static List<Draft> of(Subject subject) {
        Patches patches = subject.assembly().patches(subject.parts());
        return Spread.of(subject.dome()).stream()
                .map(spread -> new PatchesDrawing(subject, patches, spread))
                .map(plan -> SizeChoice.smallest(PaperSize.of(subject.units()), plan::on))
                .toList();
    }

    private Attempt on(PaperSize size) {
        boolean below = spread.side() == Spread.Side.LOWER;
        Paper paper = new Paper(size, below ? "Patches of the lower part, from below" : "Patches");
        paper.note(way() + " Make each first, in the order of the numbers in its panels: 2 is joined to 1, and so on."
                + " Join patches along the strong lines, from the crown outwards. Tones only tell neighbours"
                + " apart.");
        Legend.add(
                paper,
                patches.kinds().stream().map(PatchesDrawing::entry).toList(),
                patches.kinds().size() + " kinds of patches.");
        ScaleBar bar = ScaleBar.on(paper, subject.units());
        Roundel roundel = Roundel.of(paper, spread.reachMm(spread.panels()), new Roundel.Beside(1, 1), subject.units());
        DrawnScale scale = roundel.place().scale();
        bar.draw(scale, ", along every line from the middle");
        int misfits = addPanels(paper, roundel);
        roundel.addArrow(paper);
        return new Attempt(
                paper.draft(
                        "drawings/patches" + (below ? "-below" : ""),
                        below ? "patches from below" : "patches",
                        "scale " + scale.text(),
                        roundel.lowest()),
                misfits + Crowding.count(paper.labels()));
    }

    private String way() {
        return switch (patches.way()) {
            case STARS ->
                patches.areExactStars()
                        ? "Every panel belongs to the star round one hub."
                        : "Stars round hubs, and what lies between them.";
            case ROWS -> "Each row is a patch.";
            case SECTORS -> "Equal sectors, as the solid turns on itself.";
        };
    }

    private static Legend.Entry entry(PatchKind kind) {
        int panels = kind.panels().size();
        return new Legend.Entry(
                kind.mark(),
                kind.number(),
                KindLook.hatch(kind.hand()),
                kind.mark() + "  " + kind.count() + (kind.count() == 1 ? " patch of " : " patches of ") + panels
                        + (panels == 1 ? " panel" : " panels"));
    }

    private int addPanels(Paper paper, Roundel roundel) {
        OnPaper place = roundel.place();
        Set<Integer> shown = spread.panels().stream().map(Panel::index).collect(Collectors.toCollection(TreeSet::new));
        Leaders leaders = new Leaders();
        List<PatchMarks> marks = new ArrayList<>();
        for (Patch patch : patches.patches()) {
            PatchKind kind = patch.kind();
            PatchMarks ofThis = new PatchMarks(patch.mark());
            for (int i = 0; i < patch.panels().size(); i++) {
                Panel panel = patch.panels().get(i);
                if (shown.contains(panel.index())) {
                    List<Vector2D> corners = place.of(spread.corners(panel));
                    ofThis.add(i + 1, corners);
                    paper.add(new Facet(
                            KindLook.xy(corners),
                            kind.number(),
                            tones.of(patch),
                            KindLook.hatch(kind.hand()),
                            Weight.FINE,
                            patch.mark() + "." + (i + 1)));
                }
            }
            marks.add(ofThis);
        }
        addBorders(paper, place);
        marks.forEach(ofThis -> ofThis.draw(paper, leaders));
        leaders.draw(paper, roundel.between(paper, leaders.widthMm() + 2));
        return leaders.count();
    }

    /** Every strut with a patch on one side only, drawn once. */
    private void addBorders(Paper paper, OnPaper place) {
        Set<Integer> left = new TreeSet<>(borders());
        for (Panel panel : spread.panels()) {
            List<Vector2D> corners = place.of(spread.corners(panel));
            for (int side = 0; side < 3; side++) {
                if (left.remove(panel.struts().get(side))) {
                    Vector2D from = corners.get(side);
                    Vector2D to = corners.get((side + 1) % 3);
                    paper.line(from.getX(), from.getY(), to.getX(), to.getY(), Weight.STRONG);
                }
            }
        }
    }

    private Set<Integer> borders() {
        Set<Integer> borders = new TreeSet<>();
        for (Patch patch : patches.patches()) {
            Set<Integer> ofThis = new TreeSet<>();
            patch.panels().stream()
                    .flatMap(panel -> panel.struts().stream())
                    .filter(strut -> !ofThis.add(strut))
                    .toList()
                    .forEach(ofThis::remove);
            borders.addAll(ofThis);
        }
        return borders;
    }
}
