package dev.calotte.cli;

import dev.calotte.cli.brief.BriefText;
import dev.calotte.cli.brief.Project;
import dev.calotte.cli.brief.Section;
import dev.calotte.cli.folder.FileSink;
import dev.calotte.cli.folder.Origin;
import dev.calotte.cli.report.BookMatter;
import dev.calotte.cli.report.DomeJson;
import dev.calotte.cli.report.Tables;
import dev.calotte.document.Document;
import dev.calotte.export.Exporter;
import dev.calotte.export.Exporters;
import dev.calotte.export.Rendition;
import dev.calotte.output.Contents;
import dev.calotte.output.CutCheck;
import dev.calotte.output.Documents;
import dev.calotte.threads.Crew;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/**
 * All files of a design.
 *
 * @param design what was computed
 * @param brief what it was computed from
 * @param steps how much work was spent on laying parts on stock
 * @param progress runs after each document
 */
record DesignFiles(Design design, BriefText brief, int steps, Runnable progress) {

    private static final String DOME = "dome.json";

    /** Hands them over, shared by all cores; the record comes last, because it names all others. */
    void fill(FileSink sink) throws IOException {
        if (design.project().output().wants(Section.TABLES)) {
            addTables(sink);
        }
        addDocuments(sink);
        List<String> names =
                Stream.concat(sink.names().stream(), Stream.of(DOME)).sorted().toList();
        Origin origin = new Origin(brief.sha256(), Calotte.version(), steps, names);
        sink.add(DOME, stream -> DomeJson.write(design, origin, stream));
    }

    private void addTables(FileSink sink) throws IOException {
        for (Map.Entry<String, String> table : Tables.of(design).entrySet()) {
            byte[] bytes = table.getValue().getBytes(StandardCharsets.UTF_8);
            sink.add("tables/" + table.getKey(), stream -> stream.write(bytes));
        }
    }

    private void addDocuments(FileSink sink) {
        Exporters exporters = Exporters.installed();
        Contents contents = contents();
        if (design.project().output().wants(Section.DXF)
                || design.project().output().wants(Section.SVG)) {
            CutCheck.check(contents, design.project().output().finish().contours());
        }
        List<Callable<Integer>> work = new ArrayList<>();
        for (Document document : Documents.of(contents)) {
            for (Exporter exporter : exporters.accepting(document)) {
                if (wants(exporter)) {
                    work.add(() -> add(
                            exporter.renditions(
                                    document, design.project().output().finish()),
                            sink));
                }
            }
        }
        Crew.everyCore().all(work);
    }

    private Contents contents() {
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
        return project.output().wants(Section.BOOK) && hasPictures()
                ? contents.with(BookMatter.of(design, brief.source(), Calotte.version()))
                : contents;
    }

    private int add(List<Rendition> files, FileSink sink) {
        try {
            for (Rendition file : files) {
                sink.add(file.path(), file.content());
            }
            progress.run();
            return files.size();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean hasPictures() {
        return design.dome().panels().size() <= Documents.MOST_PANELS_IN_A_PICTURE;
    }

    private boolean wants(Exporter exporter) {
        return design.project().output().files().stream()
                .anyMatch(section -> section.name().toLowerCase(Locale.ROOT).equals(exporter.format()));
    }
}
