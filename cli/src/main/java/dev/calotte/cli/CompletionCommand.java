package dev.calotte.cli;

import java.io.PrintWriter;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code calotte completion}: what a shell needs to complete commands and options. */
@Command(
        name = "completion",
        description = "Prints a script by which bash and zsh complete commands, options and file names.",
        mixinStandardHelpOptions = true,
        footer = {"", "For this shell only:", "  source <(calotte completion)"})
final class CompletionCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(AutoComplete.bash("calotte", spec.root().commandLine()));
        out.flush();
    }
}
