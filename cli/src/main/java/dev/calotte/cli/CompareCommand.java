package dev.calotte.cli;

import dev.calotte.cli.brief.Project;
import dev.calotte.cli.report.CompareCsv;
import dev.calotte.cli.report.CompareJson;
import dev.calotte.cli.report.ComparePage;
import dev.calotte.compare.Candidate;
import dev.calotte.compare.Candidates;
import dev.calotte.compare.Column;
import dev.calotte.compare.Comparison;
import dev.calotte.compare.Effort;
import dev.calotte.compare.Reach;
import dev.calotte.compare.Request;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import dev.calotte.threads.Crew;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code calotte compare}: the domes that could stand in a brief's place. */
@Command(
        name = "compare",
        description = "Ranks the domes that could stand in the place of a brief's own, and writes nothing.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "Examples:",
            "  calotte compare orchard-house.yaml",
            "  calotte compare orchard-house.yaml --solid octahedron --top 5",
            "  calotte compare orchard-house.yaml --same stock --csv"
        })
final class CompareCommand implements Callable<Integer> {

    @Parameters(paramLabel = "BRIEF", description = "The brief, a YAML file.")
    private Path brief;

    @Option(
            names = "--same",
            paramLabel = "WHAT",
            defaultValue = "brief",
            converter = Choices.Sames.class,
            description = "What all domes have in common: brief (what the brief sizes its dome by, the default), stock"
                    + " (each as large as a cover's stock allows), floor-diameter, floor-area, height, radius or"
                    + " longest-strut.")
    private Same same;

    @Option(
            names = "--cover",
            paramLabel = "NAME",
            description = "Whose stock, with --same stock: the first's if absent.")
    private String cover;

    @Option(
            names = "--sort",
            paramLabel = "COLUMN",
            converter = Choices.Columns.class,
            description =
                    "What to sort by: near, price, per-room, mass, stock, used, bars, kinds, panels, struts, hubs, joints,"
                            + " width, apart, base, radius, floor, height or room. If absent: per-room;"
                            + " without stock and prices bars or kinds.")
    private Column sort;

    @Option(
            names = "--top",
            paramLabel = "N",
            defaultValue = "20",
            description = "How many rows to print (${DEFAULT-VALUE}); --csv and --json hold all.")
    private int top;

    @Option(
            names = "--at-most",
            paramLabel = "N",
            defaultValue = "100",
            description = "How many domes to compare (${DEFAULT-VALUE}), those nearest to the brief's own.")
    private int atMost;

    @Option(
            names = "--reach",
            paramLabel = "N",
            defaultValue = "1",
            description = "How many breakdowns and rows to either side to look at (${DEFAULT-VALUE}).")
    private int reach;

    @Option(
            names = "--solid",
            paramLabel = "SOLID",
            split = ",",
            converter = Choices.Solids.class,
            description = "Only these solids.")
    private List<Solid> solids = List.of(Solid.values());

    @Option(
            names = "--class",
            paramLabel = "N",
            split = ",",
            converter = Choices.Classes.class,
            description = "Only breakdowns of these classes: 1, 2, 3.")
    private List<Integer> classes = List.of(1, 2, 3);

    @Option(
            names = "--spacing",
            paramLabel = "SPACING",
            split = ",",
            converter = Choices.Spacings.class,
            description = "Only these spacings.")
    private List<Spacing> spacings = List.of(Spacing.values());

    @Option(
            names = "--up",
            paramLabel = "UP",
            split = ",",
            converter = Choices.Ups.class,
            description = "Only with these up.")
    private List<Up> ups = List.of(Up.values());

    @Option(
            names = "--plans",
            paramLabel = "N",
            defaultValue = "40",
            description = "For how many domes parts are laid on the stock (${DEFAULT-VALUE}): the best and the first."
                    + " What others take is estimated.")
    private int plans;

    @Option(
            names = "--steps",
            paramLabel = "N",
            defaultValue = "0",
            description = "How much work is spent on each of these plans (${DEFAULT-VALUE}); see make --help.")
    private int steps;

    /** How the result is written. */
    private static final class Format {

        @Option(names = "--csv", description = "Write all rows as comma-separated values, once all are known.")
        private boolean csv;

        @Option(names = "--json", description = "Write everything as JSON.")
        private boolean json;
    }

    @ArgGroup
    private Format format = new Format();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Choices.check(spec, "--top", top, 1, Reach.MOST);
        Choices.check(spec, "--at-most", atMost, 1, Reach.MOST);
        Choices.check(spec, "--reach", reach, 0, Reach.WIDEST);
        Choices.check(spec, "--plans", plans, 1, Reach.MOST);
        Choices.check(spec, "--steps", steps, 0, Integer.MAX_VALUE);
        PrintWriter err = spec.commandLine().getErr();
        Progress progress = Progress.onTerminal(err, "Comparing domes, steps done:");
        int code = new Session(brief, err, progress).read(project -> compare(project, progress));
        spec.commandLine().getOut().flush();
        return code;
    }

    private void compare(Project project, Progress progress) {
        RivalsRequest own = new RivalsRequest(project);
        Request request = own.of(same, Optional.ofNullable(cover));
        List<Candidate> candidates =
                Candidates.of(own.dome(), new Reach(reach, atMost, solids, classes, spacings, ups));
        Effort effort = new Effort(plans, steps, Crew.everyCore().threads());
        Comparison comparison = Comparison.of(request, candidates, Optional.ofNullable(sort), effort, progress);
        progress.end();
        print(new Rivals(project, request.common(), comparison));
    }

    private void print(Rivals rivals) {
        PrintWriter out = spec.commandLine().getOut();
        if (format.json) {
            CompareJson.write(rivals, out);
        } else if (format.csv) {
            out.print(CompareCsv.of(rivals));
        } else {
            ComparePage.of(rivals, top).forEach(out::println);
        }
    }
}
