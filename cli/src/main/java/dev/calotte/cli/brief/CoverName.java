package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.List;

/** Reads the name of a cover that decides the size. */
final class CoverName {

    private CoverName() {}

    /** The cover of that name, which has stock. */
    static Covering covering(Node node, List<Covering> covers) {
        String name = Values.text(node);
        List<String> known = covers.stream().map(c -> c.cover().name()).toList();
        if (!known.contains(name)) {
            throw Refusal.wrong(
                    Seen.text(name) + " is not a cover of this brief.",
                    known.isEmpty()
                            ? "Describe it below covers:."
                            : "The covers are " + Values.listed(known, "and") + ".");
        }
        Covering covering = covers.get(known.indexOf(name));
        if (covering.stocks().isEmpty()) {
            throw new Refusal(
                    Code.MISSING, name + " has no stock to be cut from.", "Write its stock, below covers: as well.");
        }
        return covering;
    }
}
