package dev.calotte.drawing;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Strut;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * In which order a dome is put together: row by row of its panels from the base up. A strut comes with the lowest row of
 * its panels, so that every panel of a step finds its three sides; one without a panel comes with its own row.
 */
public final class BuildingSteps {

    private BuildingSteps() {}

    /**
     * What is added in one go.
     *
     * @param row the row of panels, from 1 at the crown
     * @param struts the struts that are new
     * @param panels the panels that are new
     */
    public record Step(int row, List<Strut> struts, List<Panel> panels) {

        /**
         * Copies the lists.
         *
         * @param row the row of panels
         * @param struts the struts that are new
         * @param panels the panels that are new
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
     * @return the steps, that at the base first
     */
    public static List<Step> of(Dome dome) {
        int[] rows = new int[dome.struts().size()];
        dome.struts().forEach(strut -> rows[strut.index()] = -Math.max(1, strut.row()));
        SortedMap<Integer, List<Panel>> panels = new TreeMap<>();
        for (Panel panel : dome.panels()) {
            panels.computeIfAbsent(panel.row(), row -> new ArrayList<>()).add(panel);
            panel.struts().forEach(strut -> rows[strut] = Math.max(rows[strut], panel.row()));
        }
        int lowest = Math.max(
                panels.lastKey(), Arrays.stream(rows).map(Math::abs).max().orElse(1));
        List<Step> steps = new ArrayList<>();
        for (int row = lowest; row >= 1; row--) {
            int here = row;
            List<Strut> struts = dome.struts().stream()
                    .filter(strut -> Math.abs(rows[strut.index()]) == here)
                    .toList();
            List<Panel> closed = panels.getOrDefault(row, List.of());
            if (!struts.isEmpty() || !closed.isEmpty()) {
                steps.add(new Step(row, struts, closed));
            }
        }
        return List.copyOf(steps);
    }
}
