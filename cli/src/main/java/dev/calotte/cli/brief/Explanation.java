package dev.calotte.cli.brief;

import dev.calotte.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells of a problem in lines for a terminal.
 *
 * @param name the name of the brief
 * @param lines its lines
 * @param root its tree, if it has one
 */
record Explanation(String name, List<String> lines, Optional<Node> root) {

    private static final String INDENT = "  ";
    private static final int WIDEST = 72;
    private static final int BEFORE_CARET = 30;

    /** The problem with its place, the mend, and the line of the brief with a caret below the place. */
    List<String> of(Problem problem) {
        Optional<Place> spoken = Place.of(problem.where());
        Optional<Place> place = spoken.or(() -> root.flatMap(node -> find(node, problem.where(), Optional.empty())));
        List<String> told = new ArrayList<>();
        String at = place.map(p -> ":" + p.line() + ":" + p.column()).orElse("");
        String where = spoken.isPresent() || problem.where().isEmpty() ? "" : problem.where() + ": ";
        told.add(Seen.printable(name + at + INDENT + where + problem.what()));
        told.add(Seen.printable(INDENT + problem.mend()));
        place.filter(p -> p.line() <= lines.size()).ifPresent(p -> show(p, told));
        return List.copyOf(told);
    }

    private void show(Place place, List<String> told) {
        int[] line = Seen.printable(lines.get(place.line() - 1)).codePoints().toArray();
        int caret = Math.min(place.column() - 1, line.length);
        int from = line.length > WIDEST ? Math.max(0, caret - BEFORE_CARET) : 0;
        int to = Math.min(line.length, from + WIDEST);
        told.add((INDENT + INDENT + new String(line, from, to - from)).stripTrailing());
        told.add(INDENT + INDENT + " ".repeat(caret - from) + "^");
    }

    /** The place of the last key or item on a path that is there. */
    private static Optional<Place> find(Node node, String path, Optional<Place> best) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().stream()
                    .filter(entry -> leadsTo(path, entry.key()))
                    .findFirst()
                    .map(entry -> find(entry.value(), rest(path, entry.key()), Optional.of(entry.place())))
                    .orElse(best);
        }
        if (node instanceof Node.Sequence sequence) {
            for (int i = 0; i < sequence.items().size(); i++) {
                String step = "[" + i + "]";
                if (path.startsWith(step)) {
                    Node item = sequence.items().get(i);
                    return find(item, rest(path, step), Optional.of(item.place()));
                }
            }
        }
        return best;
    }

    private static boolean leadsTo(String path, String step) {
        return path.equals(step) || path.startsWith(step + ".") || path.startsWith(step + "[");
    }

    private static String rest(String path, String step) {
        String rest = path.substring(step.length());
        return rest.startsWith(".") ? rest.substring(1) : rest;
    }
}
