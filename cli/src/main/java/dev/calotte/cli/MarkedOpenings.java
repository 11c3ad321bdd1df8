package dev.calotte.cli;

import dev.calotte.assembly.PanelMarks;
import dev.calotte.cli.brief.OpeningRequest;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Panel;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Turns the marks of a brief's openings into panels of its dome. */
final class MarkedOpenings {

    private final PanelMarks marks;
    private final List<Problem> problems = new ArrayList<>();
    /** The mark's place in the brief by which each panel was taken. */
    private final Map<Integer, String> taken = new TreeMap<>();

    private MarkedOpenings(Parts whole) {
        this.marks = new PanelMarks(whole);
    }

    /** The dome with its openings; the exception carries every mark that cannot be. */
    static Dome cut(Parts whole, List<OpeningRequest> requests) {
        if (requests.isEmpty()) {
            return whole.dome();
        }
        MarkedOpenings marked = new MarkedOpenings(whole);
        List<Opening> openings = new ArrayList<>();
        for (int i = 0; i < requests.size(); i++) {
            OpeningRequest request = requests.get(i);
            List<Integer> panels = marked.panels("openings[" + i + "].remove", request.marks());
            if (!panels.isEmpty()) {
                openings.add(new Opening(request.name(), panels, request.removesStruts()));
            }
        }
        if (!marked.problems.isEmpty()) {
            throw new CalotteException(marked.problems);
        }
        return whole.dome().withOpenings(openings);
    }

    private List<Integer> panels(String where, List<String> wanted) {
        List<Integer> panels = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            String place = where + "[" + i + "]";
            Optional<Panel> panel = marks.find(wanted.get(i));
            if (panel.isEmpty()) {
                problems.add(marks.unknown(wanted.get(i), place));
            } else if (isNew(panel.get().index(), wanted.get(i), place)) {
                panels.add(panel.get().index());
            }
        }
        return panels;
    }

    private boolean isNew(int panel, String mark, String place) {
        String before = taken.putIfAbsent(panel, place);
        if (before != null) {
            problems.add(new Problem(
                    Code.CONFLICT, place, mark + " is removed by " + before + " already.", "Remove each panel once."));
        }
        return before == null;
    }
}
