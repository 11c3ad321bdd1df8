package dev.calotte.drawing;

import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Panel;
import dev.calotte.drawing.BuildingSteps.Step;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/** A small view of a dome as far as it is built: what is new in the colours of its kinds, what stood before white. */
final class GrownDome {

    /** The grey of the side that is turned away. */
    private static final int INSIDE = 8;

    /** A dome of more panels is not drawn: in a view of this size none could be told from the next. */
    private static final int MOST_PANELS = 1000;

    private static final double ELEVATION = 24;
    private static final double BEARING = 20;

    private final Subject subject;
    private final View view;

    GrownDome(Subject subject) {
        this.subject = subject;
        this.view = new View(subject.dome(), Camera.from(BEARING, ELEVATION));
    }

    void draw(Paper paper, Box room, Step step) {
        if (subject.dome().panels().size() > MOST_PANELS) {
            return;
        }
        boolean hangs = step.liftMm().isPresent();
        Box extent = view.extent();
        double perMm = Math.min(room.width() / extent.width(), room.height() / extent.height());
        double left = room.right() - perMm * extent.right();
        OnPaper place = new OnPaper(new Vector2D(left, room.low() - perMm * extent.low()), new DrawnScale(1 / perMm));
        for (Panel panel : view.panels()) {
            if (hangs ? panel.row() <= step.row() : panel.row() >= step.row()) {
                List<Vector2D> corners = place.of(view.corners(panel));
                boolean outside = view.showsOutside(panel);
                Weight weight = panel.row() == step.row() ? Weight.FINE : Weight.PALE;
                paper.add(
                        outside && panel.row() == step.row()
                                ? KindLook.facet(corners, subject.parts().kindOf(panel), weight, "")
                                : new Facet(KindLook.xy(corners), outside ? 0 : INSIDE, Hatch.NONE, weight, ""));
            }
        }
    }
}
