package dev.calotte.cli;

import dev.calotte.cli.brief.BriefText;
import dev.calotte.cli.folder.ResultFolder;
import dev.calotte.nest.Layout;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calotte make}: all files of a dome. */
@Command(
        name = "make",
        description = "Writes everything for the dome of a brief into a folder, all of it or nothing.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  calotte make orchard-house.yaml",
            "  calotte make orchard-house.yaml --out orchard --steps 20000",
            "  calotte make orchard-house.yaml --out orchard --verbose"
        })
final class MakeCommand implements Callable<Integer> {

    @Parameters(paramLabel = "BRIEF", description = "The brief, a YAML file.")
    private Path brief;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "The folder to write; replaced if it holds an earlier result. Without it, a folder here with"
                    + " the brief's name.")
    private Path out;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "" + Layout.QUICK,
            description =
                    "How much work is spent on laying parts on sheets and rolls (${DEFAULT-VALUE}); a million steps"
                            + " take about a minute. The same number always gives the same plan.")
    private int steps;

    @ArgGroup
    private Volume volume = new Volume();

    @Spec
    private CommandSpec spec;

    private Progress progress;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        progress = volume.isQuiet() ? Progress.unseen(err) : Progress.onTerminal(err, "Documents written:");
        int code = new Session(brief, err, progress).run(steps, this::write);
        spec.commandLine().getOut().flush();
        return code;
    }

    private void write(Design design, BriefText text) {
        Path target = out == null ? Path.of(nameOf(brief)) : out;
        List<String> written = new ArrayList<>();
        ResultFolder.write(target, folder -> {
            new DesignFiles(design, text, steps, progress).fill(folder);
            written.addAll(folder.names());
        });
        progress.end();
        report(target, written);
    }

    private void report(Path target, List<String> written) {
        PrintWriter page = spec.commandLine().getOut();
        if (volume.isVerbose()) {
            written.forEach(name -> page.println("  " + name));
        }
        if (!volume.isQuiet()) {
            page.println("Written to " + target);
        }
    }

    private static String nameOf(Path brief) {
        String name = String.valueOf(brief.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name + "-files";
    }
}
