package dev.calotte.cli.brief;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.testing.ReadOrRefused;
import java.nio.charset.StandardCharsets;

/** What a fuzzer calls: the reader of briefs, and what it says of the problems that it finds. */
public final class BriefFuzz {

    private BriefFuzz() {}

    /** Reads any bytes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(BriefFuzz::read, bytes);
    }

    static void read(byte[] bytes) {
        BriefText brief = BriefText.of("b.yaml", new String(bytes, StandardCharsets.UTF_8));
        try {
            brief.project();
        } catch (CalotteException refused) {
            for (Problem problem : refused.problems()) {
                if (problem.what().isBlank()
                        || problem.mend().isBlank()
                        || brief.explain(problem).size() < 2) {
                    throw new AssertionError("a problem is not explained: " + problem, refused);
                }
            }
            throw refused;
        }
    }
}
