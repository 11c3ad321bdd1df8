package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.StreamEndEvent;

/**
 * Builds the tree of a brief and refuses what YAML has beyond keys, lists and texts. Reading goes on after most
 * refusals, and stops at what would make the tree too deep, too large or meaningless.
 */
final class TreeReader {

    static final int DEEPEST = 20;
    static final int MOST_NODES = 10_000;

    private final Events events;
    private final Problems problems;
    private int nodes;

    private TreeReader(Events events, Problems problems) {
        this.events = events;
        this.problems = problems;
    }

    /** The tree, or nothing if the text is empty or reading had to stop. */
    static Optional<Node> read(String text, Problems problems) {
        try {
            return new TreeReader(new Events(text), problems).document();
        } catch (Refusal refusal) {
            problems.add(refusal.place().orElseThrow(), refusal);
            return Optional.empty();
        }
    }

    private Optional<Node> document() {
        events.next(); // the stream begins
        if (events.next() instanceof StreamEndEvent) {
            return Optional.empty();
        }
        Node root = node(events.next(), 1);
        events.next(); // the document ends
        Event after = events.next();
        if (!(after instanceof StreamEndEvent)) {
            refuse(after, "a second document begins here.", "Keep one brief in a file, and leave the --- out.");
        }
        return Optional.of(root);
    }

    private Node node(Event event, int depth) {
        Place place = Events.place(event.getStartMark());
        checkSize(place, depth);
        checkPlain(event);
        if (event instanceof ScalarEvent scalar) {
            return new Node.Text(place, scalar.getValue());
        }
        if (event instanceof AliasEvent) {
            return new Node.Refused(place);
        }
        return event instanceof MappingStartEvent ? mapping(place, depth) : sequence(place, depth);
    }

    private void checkSize(Place place, int depth) {
        if (++nodes > MOST_NODES) {
            throw tooLarge("the brief holds more than " + MOST_NODES + " values.", "Shorten it.", place);
        }
        if (depth > DEEPEST) {
            String what = "keys and lists are nested more than " + DEEPEST + " deep.";
            throw tooLarge(what, "No brief needs that: look for a bracket or an indentation too many.", place);
        }
    }

    private static Refusal tooLarge(String what, String mend, Place place) {
        return new Refusal(Code.TOO_LARGE, what, mend).at(place);
    }

    private void checkPlain(Event event) {
        if (event instanceof AliasEvent alias) {
            refuse(event, "*" + Seen.text(alias.getAlias().getValue()) + " is an alias.", "Write the value itself.");
        } else if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            String name = Seen.text(node.getAnchor().get().getValue());
            refuse(event, "&" + name + " is an anchor.", "Leave it out, and write every value where it belongs.");
        }
        tag(event)
                .ifPresent(tag -> refuse(
                        event,
                        "the tag " + Seen.text(tag.replace("tag:yaml.org,2002:", "!!")) + " is not part of a brief.",
                        "Leave it out; values are plain text."));
    }

    private static Optional<String> tag(Event event) {
        if (event instanceof ScalarEvent scalar) {
            return scalar.getTag();
        }
        return event instanceof CollectionStartEvent collection ? collection.getTag() : Optional.empty();
    }

    private Node sequence(Place place, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event event = events.next(); !(event instanceof SequenceEndEvent); event = events.next()) {
            items.add(node(event, depth + 1));
        }
        return new Node.Sequence(place, items);
    }

    private Node mapping(Place place, int depth) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (Event event = events.next(); !(event instanceof MappingEndEvent); event = events.next()) {
            Node key = node(event, depth + 1);
            Node value = node(events.next(), depth + 1);
            if (isKey(key)) {
                Node.Entry entry = new Node.Entry(key.place(), ((Node.Text) key).value(), value);
                Optional.ofNullable(entries.putIfAbsent(entry.key(), entry))
                        .ifPresent(first -> refuseAgain(entry, first));
            }
        }
        return new Node.Mapping(place, List.copyOf(entries.values()));
    }

    private boolean isKey(Node key) {
        if (key instanceof Node.Text text && !text.value().equals("<<")) {
            return true;
        }
        if (key instanceof Node.Text) {
            problems.add(key.place(), unreadable("<< is a merge key.", "Write the keys themselves."));
        } else if (!(key instanceof Node.Refused)) {
            problems.add(key.place(), unreadable("a key is a single word.", "Look for a bracket too many."));
        }
        return false;
    }

    private void refuseAgain(Node.Entry entry, Node.Entry first) {
        String key = Seen.text(entry.key());
        String what =
                "the key " + key + " is there already, in line " + first.place().line() + ".";
        problems.add(entry.place(), new Refusal(Code.CONFLICT, what, "Keep one of the two."));
    }

    private void refuse(Event event, String what, String mend) {
        problems.add(Events.place(event.getStartMark()), unreadable(what, mend));
    }

    private static Refusal unreadable(String what, String mend) {
        return new Refusal(Code.UNREADABLE, what, mend);
    }
}
