package dev.calotte.cli;

import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.cli.brief.BriefText;
import dev.calotte.cli.check.CheckResult;
import dev.calotte.cli.check.MadeAgain;
import dev.calotte.cli.folder.Origin;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Makes a result again and compares: what no geometry can tell (a drawing, a page of a template, a sentence of the book) is
 * told by the bytes, which are always the same for a brief.
 *
 * @param folder the result
 * @param origin what it was made of
 * @param progress counts the documents
 */
record Remaking(Path folder, Origin origin, Progress progress) {

    private static final String RECORD = "dome.json";

    /** What was found before, and what differs from the brief's files. */
    CheckResult compare(BriefText brief, CheckResult result) {
        Optional<Finding> other = otherOrigin(brief);
        if (other.isPresent()) {
            return result.withAgain(0, List.of(other.get()));
        }
        progress.begin("Computing the dome ...");
        Design design = Design.of(brief.project(), origin.steps());
        progress.end();
        try {
            MadeAgain again = MadeAgain.beside(folder);
            new DesignFiles(design, brief, origin.steps(), progress).fill(again);
            return result.withAgain(again.names().size(), again.findings());
        } catch (IOException e) {
            throw unread(e);
        } catch (UncheckedIOException e) {
            throw unread(e.getCause());
        } finally {
            progress.end();
        }
    }

    private Optional<Finding> otherOrigin(BriefText brief) {
        if (!origin.version().equals(Calotte.version())) {
            return Optional.of(new Finding(
                    Fault.DIFFERENT,
                    RECORD,
                    "made.version",
                    "it was made by " + origin.version() + " and this is " + Calotte.version()
                            + ", so the files cannot be compared.",
                    "Compare with the version that made it, or make it again."));
        }
        return origin.briefSha256().equals(brief.sha256())
                ? Optional.empty()
                : Optional.of(new Finding(
                        Fault.DIFFERENT,
                        RECORD,
                        "brief.sha256",
                        "it was made of another brief than the one given.",
                        "Give the brief as it was, or make the result again."));
    }

    private CalotteException unread(IOException e) {
        return new CalotteException(
                Code.FILE,
                "",
                folder + " cannot be read (" + e.getClass().getSimpleName() + ").",
                "See that you may read all of its files.");
    }
}
