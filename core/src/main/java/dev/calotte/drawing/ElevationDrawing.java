package dev.calotte.drawing;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.drawing.SizeChoice.Attempt;
import dev.calotte.parts.PanelKind;
import dev.calotte.units.Angle;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The dome from the side, from the first opening or else from the start ray: what is nearer covers what is further away,
 * through openings the inside shows. Kinds have their marks; the heights of the rows of hubs stand beside it.
 */
final class ElevationDrawing {

    /** A sliver of a panel, in square millimetres of paper, that needs no mark. */
    private static final double SLIVER = 2;

    /** The height of the strip with the start ray. */
    private static final double COMPASS = 30;

    private final Subject subject;
    private final Dome dome;
    private final double bearingRad;
    private final View view;
    private final RowHeights heights;
    private final List<Strut> bare;

    private ElevationDrawing(Subject subject) {
        this.subject = subject;
        this.dome = subject.dome();
        this.bearingRad = Bearing.ofDoorRad(dome);
        this.view = new View(dome, Camera.from(Angle.degrees(bearingRad), 0));
        this.heights = RowHeights.of(subject);
        this.bare = BareStruts.of(dome);
    }

    static Draft of(Subject subject) {
        ElevationDrawing drawing = new ElevationDrawing(subject);
        List<PaperSize> sizes =
                PaperSize.of(subject.units()).stream().map(PaperSize::onItsSide).toList();
        return SizeChoice.smallest(sizes, drawing::on);
    }

    private Attempt on(PaperSize size) {
        Paper paper = new Paper(size, "Elevation");
        paper.note(from());
        Legend.add(paper, subject.parts());
        Box strip = paper.strip(COMPASS);
        ScaleBar bar = new ScaleBar(
                paper, new Box(strip.left(), strip.low(), strip.right(), strip.low() + 9), subject.units());
        addCompass(paper, new Vector2D(strip.right() - COMPASS, strip.middleY()));
        Beside beside = new Beside(Leaders.OUT + markWidth(), heights.widthMm());
        Placed placed = placed(paper.room(), beside);
        Box figure = placed.figure;
        paper.line(figure.left(), figure.low(), figure.right(), figure.low(), Weight.FINE);
        Leaders leaders = draw(paper, placed.place);
        leaders.draw(paper, placed.figure);
        heights.draw(paper, placed.figure.right() + markWidth() + 3, placed.figure, placed.place.scale());
        bar.draw(placed.place.scale(), "");
        String scale = "scale " + placed.place.scale().text();
        int tooMany = leaders.misfits(placed.figure)
                + (heights.heightMm() > placed.figure.height() ? 1 : 0)
                + (placed.place.scale().ratio() > 1e6 ? 1 : 0);
        return new Attempt(
                paper.draft("drawings/elevation", "elevation", scale, placed.figure.low() - Leaders.PITCH),
                tooMany + Crowding.count(paper.labels()));
    }

    /** The dome from above as a circle, the eye below it. */
    private void addCompass(Paper paper, Vector2D middle) {
        double turn = -Math.PI / 2 - bearingRad;
        Vector2D out = new Vector2D(StrictMath.cos(turn), StrictMath.sin(turn));
        paper.add(new Disc(middle.getX(), middle.getY(), 3, 0, Weight.FINE, "the dome from above"));
        StartArrow.add(paper, middle.add(3, out), out);
        paper.text("from above:", middle.getX() - 22, middle.getY(), Letters.SMALL, Anchor.END);
    }

    /** What stands left and right of the figure, and further right its heights. */
    private record Beside(double marks, double heights) {}

    /** Where the figure stands, and what it takes with the lines to the marks beside it. */
    private record Placed(OnPaper place, Box figure) {}

    private double markWidth() {
        return 2
                + subject.parts().panelKinds().stream()
                        .mapToDouble(kind -> Letters.widthMm(kind.mark(), Letters.SMALL))
                        .max()
                        .orElse(0);
    }

    private Placed placed(Box room, Beside beside) {
        Box extent = view.extent();
        double tall = extent.height() + subject.riserMm();
        double across = Math.max(1, room.width() - 2 * beside.marks - beside.heights - Leaders.OUT);
        double up = Math.max(1, room.height() - Leaders.PITCH);
        DrawnScale wide = DrawnScale.fitting(extent.width(), across, subject.units());
        DrawnScale high = DrawnScale.fitting(tall, up, subject.units());
        DrawnScale scale = wide.ratio() > high.ratio() ? wide : high;
        double left = room.left() + beside.marks + (across - scale.onPaper(extent.width())) / 2;
        double ground = room.high() - scale.onPaper(tall);
        Vector2D corner = new Vector2D(left, ground + scale.onPaper(subject.riserMm()));
        Vector2D origin = corner.subtract(1 / scale.ratio(), new Vector2D(extent.left(), extent.low()));
        double right = left + scale.onPaper(extent.width());
        return new Placed(
                new OnPaper(origin, scale), new Box(left - Leaders.OUT, ground, right + Leaders.OUT, room.high()));
    }

    private Leaders draw(Paper paper, OnPaper place) {
        Leaders leaders = new Leaders();
        addWall(paper, place);
        addStruts(paper, place, false);
        addPanels(paper, place, leaders);
        addStruts(paper, place, true);
        return leaders;
    }

    private void addWall(Paper paper, OnPaper place) {
        WallBays.of(dome, subject.riserMm()).stream()
                .sorted(Comparator.comparingDouble(
                        bay -> view.towards(bay.get(0).add(bay.get(1)))))
                .map(bay -> place.of(bay.stream().map(view::at).toList()))
                .filter(bay -> Math.abs(bay.get(0).getX() - bay.get(1).getX()) > 0.01)
                .forEach(bay -> paper.add(new Facet(KindLook.xy(bay), 0, Hatch.NONE, Weight.FINE, "wall")));
    }

    private String from() {
        return dome.openings().isEmpty()
                ? "Seen from the start ray."
                : "Seen from the opening " + dome.openings().get(0).name() + ", " + Angle.text(bearingRad, 1)
                        + " counter-clockwise from the start ray.";
    }

    private void addPanels(Paper paper, OnPaper place, Leaders leaders) {
        for (Panel panel : view.panels()) {
            List<Vector2D> corners = place.of(view.corners(panel));
            String mark = subject.marks().of(panel);
            if (view.showsOutside(panel)) {
                paper.add(KindLook.facet(corners, subject.parts().kindOf(panel), Weight.STRONG, mark));
            } else {
                paper.add(new Facet(KindLook.xy(corners), 0, Hatch.NONE, Weight.PALE, mark + ", inside"));
            }
        }
        for (Panel panel : view.panels()) {
            List<Vector2D> corners = place.of(view.corners(panel));
            PanelKind kind = subject.parts().kindOf(panel);
            if (MarkSpot.cross(corners.get(0), corners.get(1), corners.get(2)) > 2 * SLIVER) {
                leaders.mark(paper, kind.mark(), Letters.MARK, corners);
            }
        }
    }

    private void addStruts(Paper paper, OnPaper place, boolean near) {
        for (Strut strut : bare) {
            if (view.isNear(strut) == near) {
                Vector2D from = place.of(view.hub(strut.from()));
                Vector2D to = place.of(view.hub(strut.to()));
                paper.line(from.getX(), from.getY(), to.getX(), to.getY(), near ? Weight.STRONG : Weight.FINE);
            }
        }
    }
}
