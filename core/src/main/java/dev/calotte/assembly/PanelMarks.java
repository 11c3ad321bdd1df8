package dev.calotte.assembly;

import dev.calotte.dome.Panel;
import dev.calotte.parts.Parts;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds panels of a dome without openings by their marks, and says what is wrong with a mark that none has. */
public final class PanelMarks {

    private static final String WHERE_TO_LOOK =
            "Marks of single panels stand in dome.json of make, for the dome without openings.";

    private final Map<String, Panel> byMark = new TreeMap<>();
    private final Map<String, String> byPlace = new TreeMap<>();
    private final List<Panel> panels;

    /**
     * Lists the marks.
     *
     * @param parts the parts of the dome, taken without its openings
     */
    public PanelMarks(Parts parts) {
        PieceMarks marks = new PieceMarks(parts.whole());
        this.panels = parts.whole().dome().panels();
        for (Panel panel : panels) {
            String mark = marks.of(panel);
            byMark.put(mark, panel);
            byPlace.put(mark.substring(mark.indexOf('-')), mark);
        }
    }

    /**
     * The panel that a mark belongs to.
     *
     * @param mark for example {@code P4L-3.07}
     * @return the panel, if there is one
     */
    public Optional<Panel> find(String mark) {
        return Optional.ofNullable(byMark.get(mark));
    }

    /**
     * Why no panel has a mark, and which mark was probably meant.
     *
     * @param mark a mark that {@link #find} does not know
     * @param where the place of the mark in the words of the brief
     * @return the problem
     */
    public Problem unknown(String mark, String where) {
        boolean otherSort = mark.matches("[SH][0-9].*");
        String what =
                otherSort ? mark + " is no panel; only panels are removed." : "no panel has the mark " + mark + ".";
        return new Problem(Code.WRONG_VALUE, where, what, otherSort ? WHERE_TO_LOOK : mend(mark));
    }

    private String mend(String mark) {
        int dash = mark.indexOf('-');
        String there = dash < 0 ? null : byPlace.get(mark.substring(dash));
        if (there != null) {
            return "The panel in that row and place is " + there + ".";
        }
        Optional<Integer> row = row(mark);
        int rows = panels.get(panels.size() - 1).row();
        if (row.isEmpty() || row.get() < 1 || row.get() > rows) {
            return "The rows of panels are 1 to " + rows + ". " + WHERE_TO_LOOK;
        }
        long places = panels.stream().filter(p -> p.row() == row.get()).count();
        return "Row " + row.get() + " has the places 01 to " + (places < 10 ? "0" : "") + places + ". " + WHERE_TO_LOOK;
    }

    private static Optional<Integer> row(String mark) {
        int dash = mark.indexOf('-');
        int point = mark.indexOf('.', dash + 1);
        String digits = dash < 0 || point < 0 ? "" : mark.substring(dash + 1, point);
        return digits.matches("[0-9]{1,6}") ? Optional.of(Integer.valueOf(digits)) : Optional.empty();
    }
}
