package dev.calotte.cli.check;

import dev.calotte.check.BarCheck;
import dev.calotte.check.Closure;
import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.check.Findings;
import dev.calotte.check.Mismatch;
import dev.calotte.check.PlanCheck;
import dev.calotte.check.RecordCheck;
import dev.calotte.check.RecordedCover;
import dev.calotte.check.RecordedDome;
import dev.calotte.cli.folder.Manifest;
import dev.calotte.cli.folder.Origin;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads a folder of results back and says what is wrong with it. */
public final class ResultCheck {

    private static final String DOME = "dome.json";
    private static final String FORMAT = "calotte-dome/1";
    private static final long MOST_BYTES = 1L << 28;
    private static final int MOST_MANIFEST_BYTES = 1 << 26;
    private static final String AGAIN = "Make the result again from its brief.";

    private final ResultFiles files;
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final List<String> notRead = new ArrayList<>();
    private Mismatch mismatch = Mismatch.NONE;
    private String title = "";
    private Optional<Origin> origin = Optional.empty();
    private String pieces = "Nothing could be put together.";

    private ResultCheck(ResultFiles files) {
        this.files = files;
    }

    /**
     * Reads a folder.
     *
     * @param folder what {@code make} wrote
     * @return what was found
     * @throws CalotteException if it is no folder, or nothing says that it is a result of ours
     */
    public static CheckResult of(Path folder) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            throw refused(folder, "is no folder");
        }
        try {
            return new ResultCheck(ResultFiles.in(folder)).check(folder);
        } catch (IOException e) {
            throw refused(folder, "cannot be read (" + e.getClass().getSimpleName() + ")");
        }
    }

    private static CalotteException refused(Path folder, String why) {
        return new CalotteException(
                Code.FILE,
                "",
                folder + " " + why + ", so there is nothing to check.",
                "Give the folder that calotte make has written.");
    }

    private CheckResult check(Path folder) throws IOException {
        Optional<Json> record = record();
        boolean named = record.isPresent()
                && record.get().has("format")
                && record.get().at("format").value().equals(FORMAT);
        if (!named && !isListed()) {
            throw refused(folder, "holds no result of calotte make");
        }
        ManifestCheck manifest = new ManifestCheck(files);
        findings.addAll(manifest.check());
        if (record.isPresent() && !named) {
            add(new Findings(DOME, AGAIN), list -> list.add(Fault.DIFFERENT, "format", "it is not " + FORMAT + "."));
        }
        if (record.isPresent()) {
            understand(record.get(), manifest);
        }
        return new CheckResult(
                title, origin, files.names().size(), 0, pieces, mismatch, notRead, List.copyOf(findings));
    }

    private boolean isListed() throws IOException {
        return files.has(Manifest.NAME)
                && Manifest.parse(files.text(Manifest.NAME, MOST_MANIFEST_BYTES))
                        .filter(manifest -> manifest.sums().containsKey(DOME))
                        .isPresent();
    }

    private Optional<Json> record() throws IOException {
        if (!files.has(DOME)) {
            return Optional.empty();
        }
        try (InputStream in = files.open(DOME)) {
            if (files.size(DOME) > MOST_BYTES) {
                throw new RecordException("it is larger than " + MOST_BYTES / 1024 / 1024 + " MiB");
            }
            Json root = Json.read(in);
            root.has("format");
            return Optional.of(root);
        } catch (RecordException e) {
            unreadable(DOME, e);
            return Optional.empty();
        }
    }

    private void unreadable(String file, IOException e) {
        findings.add(new Finding(Fault.UNREADABLE, file, "", e.getMessage() + ".", AGAIN));
    }

    /** A check that can meet what it cannot read. */
    interface Step {
        void take(Findings list) throws IOException;
    }

    private void add(Findings list, Step step) {
        try {
            step.take(list);
        } catch (IOException e) {
            list.add(Fault.UNREADABLE, "", e.getMessage() + ".");
        }
        findings.addAll(list.list());
    }

    private void understand(Json root, ManifestCheck manifest) {
        add(new Findings(DOME, AGAIN), list -> {
            title = root.text("title");
            Origin seen = origin(root);
            origin = Optional.of(seen);
            findings.addAll(manifest.against(new TreeSet<>(seen.files())));
            DomeRecord record = new DomeRecord(root);
            RecordedDome dome = record.dome();
            List<RecordedCover> covers = record.covers();
            mismatch = RecordCheck.of(dome, list);
            bars(root, dome, list);
            if (list.list().stream().noneMatch(f -> f.what().startsWith("it names the vertices"))) {
                together(root, dome, covers, list);
            }
        });
    }

    private static Origin origin(Json root) throws RecordException {
        Json made = root.at("made");
        return new Origin(
                root.at("brief").text("sha256"), made.text("version"), made.whole("steps"), root.texts("files"));
    }

    private void together(Json root, RecordedDome dome, List<RecordedCover> covers, Findings list) throws IOException {
        for (RecordedCover cover : covers) {
            mismatch = mismatch.or(Closure.of(dome, cover, list));
            if (cover.planned()) {
                PlanCheck.of(dome, cover, list);
            }
        }
        NumbersCheck numbers = new NumbersCheck(root, dome, covers);
        add(new Findings(DOME, AGAIN), numbers::whole);
        add(new Findings(DOME, AGAIN), numbers::stock);
        pieces = dome.struts().size() + " struts, " + dome.panels().size() + " panels, "
                + dome.hubs().size() + " hubs and " + covers.size() + (covers.size() == 1 ? " cover" : " covers")
                + " put together.";
        new TablesCheck(files, root, dome, covers).check().forEach(findings::add);
        FilesCheck rest = new FilesCheck(files, root, dome, covers);
        rest.check().forEach(findings::add);
        notRead.addAll(rest.notRead());
    }

    private static void bars(Json root, RecordedDome dome, Findings list) throws RecordException {
        if (!root.has("bars")) {
            return;
        }
        List<BarCheck.Need> needs = new ArrayList<>();
        for (Json rail : root.listIfAny("rails")) {
            needs.add(new BarCheck.Need(rail.text("mark"), rail.number("longPoint"), rail.whole("count")));
        }
        if (needs.isEmpty()) {
            dome.strutKinds()
                    .forEach(kind -> needs.add(new BarCheck.Need(kind.mark(), kind.cutLength(), kind.count())));
        }
        List<BarCheck.Bar> bars = new ArrayList<>();
        for (Json bar : root.at("bars").list("bars")) {
            List<BarCheck.Cut> cuts = new ArrayList<>();
            for (Json cut : bar.list("cuts")) {
                cuts.add(new BarCheck.Cut(cut.text("mark"), cut.number("length")));
            }
            bars.add(new BarCheck.Bar(bar.number("length"), cuts, bar.number("left")));
        }
        BarCheck.of(needs, bars, list);
        BarCheck.offcut(root.at("bars").number("offcut"), bars, list);
    }
}
