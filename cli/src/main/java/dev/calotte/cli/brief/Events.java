package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.Iterator;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What the YAML parser sees, one thing after the other; whatever it throws becomes a refusal. */
final class Events {

    private static final String TABS = "Indent with spaces, never with tabs.";
    private static final String LOOK =
            "Look at the indentation and the quotes here and above; a text that holds a colon"
                    + " and a space, or begins with one of * & ! # % @ ` [ {, goes in quotes.";

    private final Iterator<Event> events;

    Events(String text) {
        LoadSettings settings = LoadSettings.builder().setLabel("brief").build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    Event next() {
        try {
            return events.next();
        } catch (MarkedYamlEngineException e) {
            throw broken(e.getProblem()).at(place(e.getProblemMark()));
        } catch (RuntimeException e) {
            throw broken(String.valueOf(e.getMessage())).at(new Place(1, 1));
        }
    }

    private static Refusal broken(String problem) {
        if (problem.contains("TAB")) {
            return new Refusal(Code.UNREADABLE, "a tab stands where only spaces may.", TABS);
        }
        String oneLine = Seen.printable(problem.lines().findFirst().orElse(""));
        return new Refusal(Code.UNREADABLE, "this is not YAML: " + oneLine + ".", LOOK);
    }

    /** Where a mark points, counted from 1. */
    static Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1)).orElse(new Place(1, 1));
    }
}
