package dev.calotte.cli;

import dev.calotte.cli.brief.BriefText;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.Section;
import dev.calotte.cli.folder.ResultFolder;
import dev.calotte.cli.report.BookMatter;
import dev.calotte.cli.report.DomeJson;
import dev.calotte.cli.report.Tables;
import dev.calotte.document.Document;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import dev.calotte.export.Rendition;
import dev.calotte.nest.Layout;
import dev.calotte.output.Contents;
import dev.calotte.output.CutCheck;
import dev.calotte.output.Documents;
import dev.calotte.threads.Crew;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
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

    private static final String DOME = "dome.json";

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
            if (design.project().output().wants(Section.TABLES)) {
                addTables(design, folder);
            }
            addDocuments(design, text.source(), folder);
            // last, because it names all others
            List<String> names = Stream.concat(folder.names().stream(), Stream.of(DOME))
                    .sorted()
                    .toList();
            folder.add(DOME, stream -> DomeJson.write(design, new DomeJson.Origin(text.sha256(), names), stream));
            written.addAll(names);
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

    private static void addTables(Design design, ResultFolder folder) throws IOException {
        for (Map.Entry<String, String> table : Tables.of(design).entrySet()) {
            byte[] bytes = table.getValue().getBytes(StandardCharsets.UTF_8);
            folder.add("tables/" + table.getKey(), stream -> stream.write(bytes));
        }
    }

    private void addDocuments(Design design, String source, ResultFolder folder) {
        Exporters exporters = Exporters.installed();
        Contents contents = contents(design, source);
        if (design.project().output().wants(Section.DXF)
                || design.project().output().wants(Section.SVG)) {
            CutCheck.check(contents, design.project().output().finish().contours());
        }
        List<Callable<Integer>> work = new ArrayList<>();
        for (Document document : Documents.of(contents)) {
            for (Exporter exporter : exporters.accepting(document)) {
                if (wants(design, exporter)) {
                    work.add(() -> add(
                            exporter.renditions(
                                    document, design.project().output().finish()),
                            folder));
                }
            }
        }
        Crew.everyCore().all(work);
    }

    private Contents contents(Design design, String source) {
        Project project = design.project();
        Contents contents = Contents.of(design.subject())
                .withCovers(
                        design.covers().stream().map(CoverDesign::fit).toList(),
                        design.covers().stream()
                                .map(CoverDesign::plan)
                                .flatMap(Optional::stream)
                                .toList())
                .withKerf(project.output().kerfMm())
                .with(project.extras());
        return project.output().wants(Section.BOOK) && hasPictures(design)
                ? contents.with(BookMatter.of(design, source, spec.root().version()[0]))
                : contents;
    }

    private int add(List<Rendition> files, ResultFolder folder) {
        try {
            for (Rendition file : files) {
                folder.add(file.path(), file.content());
            }
            progress.run();
            return files.size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean hasPictures(Design design) {
        return design.dome().panels().size() <= Documents.MOST_PANELS_IN_A_PICTURE;
    }

    private static boolean wants(Design design, Exporter exporter) {
        return design.project().output().files().stream()
                .anyMatch(section -> section.name().toLowerCase(Locale.ROOT).equals(exporter.format()));
    }
}
