package dev.calotte.svg.read;

import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import dev.calotte.export.Reading;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Goes through the groups of a file. */
final class SvgFile {

    private final Elements elements;
    private final List<Reading.Line> lines = new ArrayList<>();
    private final Deque<Group> groups = new ArrayDeque<>();
    private Optional<String> title = Optional.empty();

    /** What holds for the lines of a group. */
    private record Group(Operation operation, Optional<String> mark) {}

    SvgFile(Elements elements) {
        this.elements = elements;
    }

    Reading reading() throws IOException {
        elements.begins();
        if (!elements.svgName().equals(Optional.of("svg"))) {
            throw elements.wrong("the file does not begin with an element svg of http://www.w3.org/2000/svg");
        }
        Shown.check(elements);
        Outlines outlines = new Outlines(elements, Sheet.of(elements));
        groups.push(new Group(Operation.CUT_OUTER, Optional.empty()));
        while (!groups.isEmpty()) {
            if (elements.begins()) {
                begin(outlines);
            } else {
                groups.pop();
            }
        }
        return new Reading(title, lines);
    }

    private void begin(Outlines outlines) throws IOException {
        switch (elements.svgName().orElse("desc")) {
            case "title" -> title();
            case "desc", "metadata", "defs" -> elements.skip();
            case "g" -> {
                Shown.check(elements);
                groups.push(new Group(operation(), group().mark()));
            }
            default -> {
                Shown.check(elements);
                for (Shape shape : outlines.of(group().operation())) {
                    lines.add(new Reading.Line(group().mark(), shape));
                }
            }
        }
    }

    private Group group() {
        return groups.getFirst();
    }

    private void title() throws IOException {
        String text = elements.text();
        if (groups.size() == 1) {
            title = Optional.of(text);
        } else {
            groups.push(new Group(groups.pop().operation(), Optional.of(text)));
        }
    }

    private Operation operation() {
        String label = elements.attribute("label").orElse("");
        String id = elements.attribute("id").orElse("");
        return Arrays.stream(Operation.values())
                .filter(operation ->
                        operation.name().equals(label) || operation.name().equals(id))
                .findFirst()
                .orElse(group().operation());
    }
}
