package dev.calotte.svg.read;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Refuses whatever moves, hides or cuts off lines. */
final class Shown {

    private static final List<String> MOVING = List.of("transform", "clip-path", "mask", "filter");

    private static final Pattern HIDDEN = Pattern.compile("none|hidden|collapse");
    private static final Pattern CHANGING =
            Pattern.compile("(display|visibility)\\s*:\\s*(none|hidden|collapse)|(transform|clip-path|mask|filter)\\s*:"
                    + "\\s*(?!none)\\S");

    private Shown() {}

    /** Looks at the element that has just begun. */
    static void check(Elements elements) throws IOException {
        for (String name : MOVING) {
            Optional<String> value = elements.attribute(name);
            if (value.isPresent() && !value.get().strip().equals("none")) {
                throw elements.wrong("the attribute " + name + " is not followed; apply it to the lines and remove it");
            }
        }
        boolean hidden = elements.attribute("display").filter(Shown::hides).isPresent()
                || elements.attribute("visibility").filter(Shown::hides).isPresent();
        if (hidden || elements.attribute("style").filter(Shown::changes).isPresent()) {
            throw elements.wrong("a style hides or moves lines; remove either the style or the lines");
        }
    }

    private static boolean hides(String value) {
        return HIDDEN.matcher(value.strip()).matches();
    }

    private static boolean changes(String style) {
        return CHANGING.matcher(style).find();
    }
}
