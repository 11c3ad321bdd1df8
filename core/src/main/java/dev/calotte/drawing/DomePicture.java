package dev.calotte.drawing;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import dev.calotte.parts.Hand;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * The dome as it is seen from outside, a little above the horizon: panels in the colours of their kinds with the mark
 * of the kind where it fits, a legend of all kinds, the start ray and a scale bar. Twins share a colour and differ by
 * their hatch. Panels are drawn from the far side to the near one, those that face away not at all; of an opening only
 * the struts that it left are seen.
 *
 * <pre>{@code
 * Picture picture = DomePicture.of("Shelter", parts, UnitSystem.METRIC);
 * }</pre>
 */
public final class DomePicture {

    private static final double DOME_WIDTH = 160;
    private static final double MARGIN = 12;
    private static final double MARK_HEIGHT = 3.5;
    private static final double TITLE_HEIGHT = 5;
    private static final double SMALL_HEIGHT = 2.5;
    private static final double FOOT_MM = 304.8;
    private static final double LEGEND_ROW = 8;
    private static final double LEGEND_COLUMN = 46;
    private static final int LEGEND_COLUMNS = 4;
    /** A capital letter of an upright sans-serif is about this wide for its height. */
    private static final double LETTER_WIDTH = 0.85;

    private final Parts parts;
    private final Dome dome;
    private final PieceMarks marks;
    private final UnitSystem units;
    private final Camera camera = Camera.from(20, 22);
    private final double perMm;
    private final double left;
    private final double bottom;
    private final double top;
    private final List<Item> items = new ArrayList<>();

    private DomePicture(Parts parts, UnitSystem units) {
        this.parts = parts;
        this.units = units;
        this.dome = parts.dome();
        this.marks = new PieceMarks(parts);
        List<Vector3D> points = dome.hubs().stream().map(h -> h.position()).toList();
        double low = points.stream().mapToDouble(camera::upwards).min().orElseThrow();
        double high = points.stream().mapToDouble(camera::upwards).max().orElseThrow();
        double west = points.stream().mapToDouble(camera::across).min().orElseThrow();
        double east = points.stream().mapToDouble(camera::across).max().orElseThrow();
        this.perMm = DOME_WIDTH / (east - west);
        this.left = MARGIN + LEGEND_COLUMNS * LEGEND_COLUMN / 2 - perMm * (east + west) / 2;
        this.bottom = legendHeight() + 3 * MARGIN - perMm * low;
        this.top = bottom + perMm * high;
    }

    /**
     * Draws the dome.
     *
     * @param title what to call it
     * @param parts the parts of the dome
     * @param units what the scale bar is measured in
     * @return the document {@code drawings/view}
     */
    public static Picture of(String title, Parts parts, UnitSystem units) {
        DomePicture picture = new DomePicture(parts, units);
        picture.addStartRay();
        picture.addPanels();
        picture.addBareStruts();
        picture.addLegend();
        picture.addScaleBar();
        double width = 2 * MARGIN + LEGEND_COLUMNS * LEGEND_COLUMN;
        double height = picture.top + 2 * MARGIN;
        picture.items.add(new Label(title, MARGIN, height - MARGIN, TITLE_HEIGHT, Anchor.START));
        return new Picture("drawings/view", title, width, height, picture.items);
    }

    private double legendHeight() {
        int rows = (parts.panelKinds().size() + LEGEND_COLUMNS - 1) / LEGEND_COLUMNS;
        return LEGEND_ROW * rows;
    }

    private void addPanels() {
        List<Panel> seen = dome.panels().stream()
                .filter(this::facesTheEye)
                .sorted(Comparator.comparingDouble((Panel p) -> camera.towards(centre(p))))
                .toList();
        seen.forEach(this::addPanel);
    }

    /** Struts that openings left without a panel, on the side of the eye. */
    private void addBareStruts() {
        for (Strut strut : BareStruts.of(dome)) {
            Vector3D from = dome.hubs().get(strut.from()).position();
            Vector3D to = dome.hubs().get(strut.to()).position();
            if (camera.towards(from.add(to)) > 0) {
                items.add(new Line(x(from), y(from), x(to), y(to), Weight.STRONG, false));
            }
        }
    }

    private boolean facesTheEye(Panel panel) {
        return turn(corners(panel)) > 0;
    }

    private List<Vector3D> corners(Panel panel) {
        return panel.hubs().stream().map(h -> dome.hubs().get(h).position()).toList();
    }

    /** Twice the area that a triangle has on paper, below 0 if it is seen from behind. */
    private double turn(List<Vector3D> corners) {
        double x = x(corners.get(0));
        double y = y(corners.get(0));
        return (x(corners.get(1)) - x) * (y(corners.get(2)) - y) - (x(corners.get(2)) - x) * (y(corners.get(1)) - y);
    }

    private Vector3D centre(Panel panel) {
        List<Vector3D> c = corners(panel);
        return c.get(0).add(c.get(1)).add(c.get(2)).scalarMultiply(1.0 / 3);
    }

    private void addPanel(Panel panel) {
        PanelKind kind = parts.kindOf(panel);
        List<Vector3D> corners = corners(panel);
        List<Double> xy =
                corners.stream().flatMap(c -> List.of(x(c), y(c)).stream()).toList();
        items.add(new Facet(xy, kind.number(), hatch(kind), Weight.STRONG, marks.of(panel)));
        addMark(kind.mark(), corners);
    }

    /** Puts the mark in the middle of the circle inside the triangle, if that is larger than the one round the mark. */
    private void addMark(String mark, List<Vector3D> corners) {
        double round = 0;
        double middleX = 0;
        double middleY = 0;
        for (int k = 0; k < 3; k++) {
            Vector3D p = corners.get((k + 1) % 3);
            Vector3D q = corners.get((k + 2) % 3);
            double side = Math.sqrt(square(x(q) - x(p)) + square(y(q) - y(p)));
            round += side;
            middleX += side * x(corners.get(k));
            middleY += side * y(corners.get(k));
        }
        double needed = Math.sqrt(square(LETTER_WIDTH * MARK_HEIGHT * mark.length()) + square(MARK_HEIGHT)) / 2;
        if (turn(corners) / round >= needed) {
            items.add(new Label(mark, middleX / round, middleY / round, MARK_HEIGHT, Anchor.MIDDLE));
        }
    }

    private static double square(double value) {
        return value * value;
    }

    private static Hatch hatch(PanelKind kind) {
        return kind.hand() == Hand.LEFT ? Hatch.RISING : kind.hand() == Hand.RIGHT ? Hatch.FALLING : Hatch.NONE;
    }

    private void addLegend() {
        List<PanelKind> kinds = parts.panelKinds();
        for (int i = 0; i < kinds.size(); i++) {
            PanelKind kind = kinds.get(i);
            double x = MARGIN + LEGEND_COLUMN * (i % LEGEND_COLUMNS);
            int row = i / LEGEND_COLUMNS;
            double y = MARGIN + legendHeight() - LEGEND_ROW * row;
            List<Double> box = List.of(x, y - 2, x + 6, y - 2, x + 6, y + 2, x, y + 2);
            items.add(new Facet(box, kind.number(), hatch(kind), Weight.FINE, kind.mark()));
            String text = kind.mark() + "  " + kind.count() + " panels";
            items.add(new Label(text, x + 8, y, MARK_HEIGHT, Anchor.START));
        }
    }

    /** An arrow on the floor where counting begins. */
    private void addStartRay() {
        double floor =
                dome.hubs().stream().mapToDouble(h -> h.position().getZ()).min().orElseThrow();
        Vector3D from = new Vector3D(0.5 * dome.radiusMm(), 0, floor);
        Vector3D to = new Vector3D(1.12 * dome.radiusMm(), 0, floor);
        Vector3D barb = new Vector3D(-0.05 * dome.radiusMm(), 0.025 * dome.radiusMm(), 0);
        addLine(from, to);
        addLine(to, to.add(barb));
        addLine(to, to.add(new Vector3D(barb.getX(), -barb.getY(), 0)));
        items.add(new Label("start ray", x(to), y(to) - 4, SMALL_HEIGHT, Anchor.MIDDLE));
    }

    private void addLine(Vector3D from, Vector3D to) {
        items.add(new Line(x(from), y(from), x(to), y(to), Weight.FINE, false));
    }

    private void addScaleBar() {
        double length = barMm();
        double right = MARGIN + LEGEND_COLUMNS * LEGEND_COLUMN;
        double y = legendHeight() + 1.8 * MARGIN;
        double from = right - perMm * length;
        items.add(new Line(from, y, right, y, Weight.STRONG, false));
        items.add(new Line(from, y - 1, from, y + 1, Weight.STRONG, false));
        items.add(new Line(right, y - 1, right, y + 1, Weight.STRONG, false));
        String text = units == UnitSystem.METRIC && length >= 1000
                ? Math.round(length / 1000) + " m"
                : units.length(length, 0);
        items.add(new Label(text, right, y + 4, SMALL_HEIGHT, Anchor.END));
    }

    /** A power of ten, of millimetres or feet, that is at most half the radius. */
    private double barMm() {
        double length = units == UnitSystem.METRIC ? 1 : FOOT_MM;
        while (10 * length <= dome.radiusMm() / 2) {
            length *= 10;
        }
        return length;
    }

    private double x(Vector3D point) {
        return left + perMm * camera.across(point);
    }

    private double y(Vector3D point) {
        return bottom + perMm * camera.upwards(point);
    }
}
