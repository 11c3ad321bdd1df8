package dev.calotte.parts;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.geometry.Groups;
import dev.calotte.geometry.Triangle;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The rails of all panels' frames, by panel kind, edge, tilts and corners. In a dome with openings rails keep the numbers
 * and the tilts of the whole dome.
 */
final class RailSorting {

    private final Ends.Mitred section;
    private final StrutSorting struts;
    private final List<PanelKind> panels;
    private final Groups tilts;
    private final Map<Shape, Integer> counts = new TreeMap<>(Shape.ORDER);

    /** The panel kind from 0, and of this edge, the one before and the one after the number of the length and the tilt. */
    private record Shape(int panel, int own, int before, int after, int tilt, int tiltBefore, int tiltAfter) {

        static final Comparator<Shape> ORDER = Comparator.comparingInt(Shape::own)
                .thenComparingInt(Shape::panel)
                .thenComparingInt(Shape::before)
                .thenComparingInt(Shape::after)
                .thenComparingInt(Shape::tilt)
                .thenComparingInt(Shape::tiltBefore)
                .thenComparingInt(Shape::tiltAfter);
    }

    RailSorting(Ends.Mitred section, Dome opened, StrutSorting struts, PanelSorting panels) {
        this.section = section;
        this.struts = struts;
        this.panels = panels.kinds;
        Dome dome = opened.whole();
        boolean[] stays = new boolean[dome.panels().size()];
        opened.panels().forEach(panel -> stays[opened.wholePanel(panel.index())] = true);
        this.tilts = Groups.of(
                dome.struts().stream()
                        .mapToDouble(strut -> (Math.PI - strut.dihedralRad().orElse(Math.PI)) / 2)
                        .toArray(),
                StrutSorting.SAME);
        for (Panel panel : dome.panels()) {
            for (int edge = 0; edge < 3; edge++) {
                counts.merge(
                        shape(panels.kindOf[panel.index()], panel.struts(), edge),
                        stays[panel.index()] ? 1 : 0,
                        Integer::sum);
            }
        }
    }

    private Shape shape(int panel, List<Integer> around, int edge) {
        int own = around.get(edge);
        int before = around.get((edge + 2) % 3);
        int after = around.get((edge + 1) % 3);
        return new Shape(
                panel,
                struts.lengthNumber(own),
                struts.lengthNumber(before),
                struts.lengthNumber(after),
                tilts.of(own),
                tilts.of(before),
                tilts.of(after));
    }

    List<RailKind> kinds() {
        List<RailKind> kinds = new ArrayList<>();
        counts.forEach((shape, count) -> kinds.add(kind(kinds.size() + 1, shape, count)));
        kinds.removeIf(kind -> kind.count() == 0);
        return List.copyOf(kinds);
    }

    private RailKind kind(int number, Shape shape, int count) {
        StrutKind edge = struts.firstOf(shape.own);
        Triangle corners = new Triangle(
                edge.lengthMm(),
                struts.firstOf(shape.after).lengthMm(),
                struts.firstOf(shape.before).lengthMm());
        double tilt = tilts.value(shape.tilt);
        RailCorner start = new RailCorner(corners.angleRad(1), tilt, tilts.value(shape.tiltBefore));
        RailCorner end = new RailCorner(corners.angleRad(2), tilt, tilts.value(shape.tiltAfter));
        double[] starts = insetsMm(start);
        double[] ends = insetsMm(end);
        List<Double> arrises = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            arrises.add(edge.lengthMm() - starts[i] - ends[i]);
        }
        String panel = panels.get(shape.panel).mark();
        return new RailKind(
                number,
                panel,
                edge.mark(),
                tilt,
                arrises,
                edge.lengthMm() - least(starts) - least(ends),
                checked(arrises, edge, panel),
                start.end(),
                end.end(),
                count);
    }

    /** At the four arrises, in the order of {@link RailKind#arrisesMm()}. */
    private double[] insetsMm(RailCorner corner) {
        double width = section.widthMm();
        double depth = section.depthMm();
        return new double[] {
            corner.insetMm(0, 0), corner.insetMm(width, 0), corner.insetMm(0, depth), corner.insetMm(width, depth)
        };
    }

    private static double least(double[] values) {
        return Math.min(Math.min(values[0], values[1]), Math.min(values[2], values[3]));
    }

    private static double checked(List<Double> arrises, StrutKind edge, String panel) {
        double shortest =
                arrises.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        if (shortest <= 0) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "frame.ends",
                    String.format(
                            Locale.ROOT,
                            "rails of that section leave nothing of the inner edge on %s of panel %s (%.1f mm).",
                            edge.mark(),
                            panel,
                            edge.lengthMm()),
                    "Use rails of a smaller section, or a larger dome or a lower breakdown.");
        }
        return shortest;
    }
}
