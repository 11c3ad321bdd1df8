package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.ArrayList;
import java.util.List;

/** Reads the list {@code openings}. Whether there are such panels is known only when there is a dome. */
final class OpeningsReader {

    private enum Struts {
        KEEP,
        REMOVE
    }

    private static final String EXAMPLE = "Write for example { name: door, remove: [P1-5.01, P2-5.02] }.";

    private OpeningsReader() {}

    static List<OpeningRequest> read(Fields top) {
        List<OpeningRequest> openings = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Fields item : top.sections("openings")) {
            OpeningRequest opening = opening(item);
            if (item.has("name") && names.contains(opening.name())) {
                item.refuse(
                        "name",
                        new Refusal(
                                Code.CONFLICT,
                                "another opening is called " + Seen.text(opening.name()) + ".",
                                "Give each opening a name of its own."));
            }
            names.add(opening.name());
            openings.add(opening);
        }
        return openings;
    }

    private static OpeningRequest opening(Fields item) {
        item.require("name", EXAMPLE);
        item.require("remove", EXAMPLE);
        String name = item.read("name", "opening", Values::title);
        List<String> marks = item.list("remove", List.of(), Values::text);
        Struts struts = item.read("struts", Struts.KEEP, Words.of(Struts.values()));
        item.close();
        return new OpeningRequest(name, marks, struts == Struts.REMOVE);
    }
}
