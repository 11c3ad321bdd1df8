package dev.calotte.cli;

import dev.calotte.cli.brief.Seen;
import dev.calotte.cli.check.CheckResult;
import dev.calotte.cli.check.ResultCheck;
import dev.calotte.cli.folder.Origin;
import dev.calotte.cli.report.CheckPage;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
        footer = {
            "",
            "Examples:",
            "  calotte check orchard-house",
            "  calotte check orchard-house --brief orchard-house.yaml",
            "  calotte check orchard-house --quiet"
        })
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DIR", description = "A folder that make has written.")
    private Path folder;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description =
                    "The brief that it was made of: all of it is made again, as it was, and every file is compared"
                            + " to the last byte.")
    private Path brief;

    @Option(
            names = {"-q", "--quiet"},
            description = "Say nothing if all of it agrees.")
    private boolean quiet;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        try {
            CheckResult result = ResultCheck.of(folder);
            return brief == null || result.origin().isEmpty()
                    ? report(result)
                    : again(result, result.origin().get());
        } catch (CalotteException e) {
            for (Problem problem : e.problems()) {
                err.println(Seen.printable(problem.what()));
                err.println(Seen.printable("  " + problem.mend()));
            }
            err.flush();
            return Calotte.PROBLEM;
        }
    }

    private int report(CheckResult result) {
        PrintWriter out = spec.commandLine().getOut();
        if (!quiet || !result.findings().isEmpty()) {
            CheckPage.of(result).forEach(line -> out.println(Seen.printable(line)));
        }
        out.flush();
        return result.findings().isEmpty() ? 0 : Calotte.FOUND;
    }

    private int again(CheckResult result, Origin origin) {
        PrintWriter err = spec.commandLine().getErr();
        Progress progress = quiet ? Progress.unseen(err) : Progress.onTerminal(err, "Documents compared:");
        Remaking remaking = new Remaking(folder, origin, progress);
        List<CheckResult> compared = new ArrayList<>();
        int code = new Session(brief, err, progress).understand(text -> compared.add(remaking.compare(text, result)));
        return code == 0 ? report(compared.get(0)) : code;
    }
}
