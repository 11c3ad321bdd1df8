package dev.calotte.cli;

import dev.calotte.cli.report.ShowPage;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calotte show}: the dome in a page. */
@Command(
        name = "show",
        description = "Prints the dome of a brief in a page and writes nothing.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  calotte show orchard-house.yaml",
            "  calotte show orchard-house.yaml --steps 20000"
        })
final class ShowCommand implements Callable<Integer> {

    @Parameters(paramLabel = "BRIEF", description = "The brief, a YAML file.")
    private Path brief;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "0",
            description =
                    "How much work is spent on laying parts on sheets and rolls (${DEFAULT-VALUE}); a million steps"
                            + " take about a minute. The same number always gives the same plan.")
    private int steps;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int code = new Session(brief, err, Progress.onTerminal(err, ""))
                .run(steps, (design, text) -> ShowPage.of(design).forEach(out::println));
        out.flush();
        return code;
    }
}
