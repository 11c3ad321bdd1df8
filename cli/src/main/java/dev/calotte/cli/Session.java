package dev.calotte.cli;

import dev.calotte.cli.brief.BriefText;
import dev.calotte.cli.brief.Project;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/** Reads a brief, computes it and hands it on; what goes wrong with the input is explained and ends in exit code 2. */
final class Session {

    private final Path path;
    private final PrintWriter err;
    private final Progress progress;

    /** What goes wrong is told where errors go, after what was said of the progress is taken away. */
    Session(Path path, PrintWriter err, Progress progress) {
        this.path = path;
        this.err = err;
        this.progress = progress;
    }

    /** The work is done with a design whose covers are laid with so many steps, and the brief that it comes from. */
    int run(int steps, BiConsumer<Design, BriefText> work) {
        return understand(brief -> {
            progress.begin("Computing the dome ...");
            Design design = Design.of(brief.project(), steps);
            progress.end();
            work.accept(design, brief);
        });
    }

    /** The work is done with what the brief asks for. */
    int read(Consumer<Project> work) {
        return understand(brief -> work.accept(brief.project()));
    }

    /** The work is done with the text of the brief. */
    int understand(Consumer<BriefText> work) {
        Optional<BriefText> brief = Optional.empty();
        try {
            brief = Optional.of(BriefText.read(path));
            work.accept(brief.get());
            return 0;
        } catch (CalotteException e) {
            progress.end();
            for (Problem problem : e.problems()) {
                explain(brief, problem).forEach(err::println);
            }
            err.flush();
            return Calotte.PROBLEM;
        }
    }

    /** Without a text there is no line to show: the file itself is the trouble. */
    private static List<String> explain(Optional<BriefText> brief, Problem problem) {
        String where = problem.where().isEmpty() ? "" : problem.where() + "  ";
        return brief.map(text -> text.explain(problem)).orElse(List.of(where + problem.what(), "  " + problem.mend()));
    }
}
