package dev.calotte.cli;

import dev.calotte.cli.brief.Seen;
import dev.calotte.cli.check.CheckResult;
import dev.calotte.cli.check.ResultCheck;
import dev.calotte.cli.report.CheckPage;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calotte check}: whether what was written still belongs together. */
@Command(
        name = "check",
        description = "Reads what make has written back, puts the dome together again and says what does not agree.",
        mixinStandardHelpOptions = true,
        footer = {"", "Examples:", "  calotte check orchard", "  calotte check orchard --quiet"})
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DIR", description = "A folder that make has written.")
    private Path folder;

    @Option(
            names = {"-q", "--quiet"},
            description = "Say nothing if all of it agrees.")
    private boolean quiet;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        try {
            CheckResult result = ResultCheck.of(folder);
            if (!quiet || !result.findings().isEmpty()) {
                CheckPage.of(result).forEach(line -> out.println(Seen.printable(line)));
            }
            out.flush();
            return result.findings().isEmpty() ? 0 : Calotte.FOUND;
        } catch (CalotteException e) {
            for (Problem problem : e.problems()) {
                err.println(Seen.printable(problem.what()));
                err.println(Seen.printable("  " + problem.mend()));
            }
            err.flush();
            return Calotte.PROBLEM;
        }
    }
}
