package dev.calotte.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The {@code calotte} command. */
@Command(
        name = "calotte",
        description = "Geodesic domes from the material at hand: geometry, parts, and files ready to cut.",
        mixinStandardHelpOptions = true,
        versionProvider = Calotte.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ShowCommand.class,
            MakeCommand.class,
            CompareCommand.class,
            CheckCommand.class,
            CompletionCommand.class
        },
        footer = {
            "",
            "Examples:",
            "  calotte show orchard-house.yaml",
            "  calotte make orchard-house.yaml",
            "  calotte check orchard-house",
            "",
            "Exit codes: 0 done; 1 a fault of the program; 2 a problem in the brief or the command line;",
            "3 check found something wrong.",
            "Geometry only: loads, joints and foundations are not checked."
        })
public final class Calotte implements Runnable {

    static final int FAULT = 1;
    static final int PROBLEM = 2;
    static final int FOUND = 3;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /** Made by the command line parser. */
    public Calotte() {}

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param arguments what stands behind the command's name
     */
    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    /**
     * Runs the command.
     *
     * @param arguments what stands behind the command's name
     * @return the exit code: 0 done, 1 a fault of the program, 2 a problem in the brief or the command line, 3
     *     the check of a result found something wrong
     */
    public static int run(String... arguments) {
        return commandLine().execute(arguments);
    }

    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Calotte());
        line.setExecutionExceptionHandler((e, failed, parsed) -> {
            failed.getErr().println("A fault of the program, not of your brief: " + e);
            e.printStackTrace(failed.getErr());
            return FAULT;
        });
        return line;
    }

    /** Without a subcommand there is nothing to run. */
    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "Say what to do: show, make, compare or check.");
    }

    /** The program and its version, from the jar's manifest. */
    static String version() {
        String version = Calotte.class.getPackage().getImplementationVersion();
        return "calotte " + (version == null ? "(not packaged)" : version);
    }

    /** Tells the version to the command line. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {version()};
        }
    }
}
