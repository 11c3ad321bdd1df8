package dev.calotte.drawing;

import dev.calotte.assembly.Raise;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * In which order a dome is put together: row by row of its panels, from the base up or from the crown down. A strut comes
 * with the first row of its panels that is reached, so that every panel of a step finds its three sides; one without a
 * panel comes with its own row.
 *
 * <pre>{@code
 * for (BuildingSteps.Step step : BuildingSteps.of(dome, Raise.BASE)) {
 *     int lifted = step.panels().size();
 * }
 * }</pre>
 */
public final class BuildingSteps {

    private BuildingSteps() {}

    /**
     * What is added in one go.
     *
     * @param row the row of panels, from 1 at the crown
     * @param struts the struts that are new
     * @param panels the panels that are new
     * @param liftMm raised from the crown: how far what is there is lifted at least, so that the row finds room below it,
     *     0 for the crown itself; raised from the base: nothing
     */
    public record Step(int row, List<Strut> struts, List<Panel> panels, OptionalDouble liftMm) {

        /**
         * Copies the lists.
         *
         * @param row the row of panels
         * @param struts the struts that are new
         * @param panels the panels that are new
         * @param liftMm how far what is there is lifted
         */
        public Step {
            struts = List.copyOf(struts);
            panels = List.copyOf(panels);
        }
    }

    /**
     * The steps of a dome; each strut and panel is in exactly one.
     *
     * @param dome the dome
     * @param raise from which end it is raised
     * @return the steps, the first first
     */
    public static List<Step> of(Dome dome, Raise raise) {
        int[] rows = rows(dome, raise);
        SortedMap<Integer, List<Strut>> struts = new TreeMap<>();
        dome.struts()
                .forEach(strut -> struts.computeIfAbsent(rows[strut.index()], row -> new ArrayList<>())
                        .add(strut));
        SortedMap<Integer, List<Panel>> panels = new TreeMap<>();
        dome.panels()
                .forEach(panel -> panels.computeIfAbsent(panel.row(), row -> new ArrayList<>())
                        .add(panel));
        int lowest = Math.max(panels.lastKey(), struts.lastKey());
        List<Step> steps = new ArrayList<>();
        OptionalDouble reached = OptionalDouble.empty();
        for (int row : order(lowest, raise)) {
            List<Strut> here = struts.getOrDefault(row, List.of());
            List<Panel> closed = panels.getOrDefault(row, List.of());
            if (!here.isEmpty() || !closed.isEmpty()) {
                double low = Math.min(reached.orElse(Double.POSITIVE_INFINITY), lowest(dome, here));
                double lift = reached.isPresent() ? reached.getAsDouble() - low : 0;
                reached = OptionalDouble.of(low);
                boolean hangs = raise == Raise.CROWN;
                steps.add(new Step(row, here, closed, hangs ? OptionalDouble.of(lift) : OptionalDouble.empty()));
            }
        }
        return List.copyOf(steps);
    }

    private static int[] order(int lowest, Raise raise) {
        return IntStream.rangeClosed(1, lowest)
                .map(row -> raise == Raise.BASE ? lowest + 1 - row : row)
                .toArray();
    }

    /** The row that each strut comes with. */
    private static int[] rows(Dome dome, Raise raise) {
        int[] rows = new int[dome.struts().size()];
        for (Panel panel : dome.panels()) {
            for (int strut : panel.struts()) {
                boolean first = rows[strut] == 0 || (raise == Raise.BASE) == (panel.row() > rows[strut]);
                rows[strut] = first ? panel.row() : rows[strut];
            }
        }
        dome.struts().stream()
                .filter(strut -> rows[strut.index()] == 0)
                .forEach(strut -> rows[strut.index()] = Math.max(1, strut.row()));
        return rows;
    }

    /** How low struts reach. */
    private static double lowest(Dome dome, List<Strut> struts) {
        return struts.stream()
                .flatMapToInt(strut -> IntStream.of(strut.from(), strut.to()))
                .mapToDouble(hub -> dome.hubs().get(hub).position().getZ())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
