package dev.calotte.cli.check;

import dev.calotte.check.Fault;
import dev.calotte.check.Finding;
import dev.calotte.cli.folder.FileSink;
import dev.calotte.cli.folder.Manifest;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;

/** Compares a result with the files of the same brief, made again, while they are made; nothing is written. */
public final class MadeAgain implements FileSink {

    private static final String BODIES = "(?s).*\\.(stl|3mf)";

    private final ResultFiles files;
    private final ConcurrentSkipListMap<String, List<Finding>> seen = new ConcurrentSkipListMap<>();

    private MadeAgain(ResultFiles files) {
        this.files = files;
    }

    /**
     * Nothing compared yet.
     *
     * @param folder the result
     * @return takes the files made again
     * @throws IOException if the folder cannot be read
     */
    public static MadeAgain beside(Path folder) throws IOException {
        return new MadeAgain(ResultFiles.in(folder));
    }

    @Override
    public void add(String name, Rendition.Content content) throws IOException {
        if (!files.has(name)) {
            seen.put(name, List.of(ManifestCheck.missing(name)));
            return;
        }
        try (InputStream there = files.open(name);
                Likeness likeness = new Likeness(there)) {
            content.writeTo(likeness);
            seen.put(name, likeness.isWhole() ? List.of() : List.of(different(name, likeness)));
        }
    }

    @Override
    public List<String> names() {
        return List.copyOf(seen.keySet());
    }

    private static Finding different(String name, Likeness likeness) {
        String place = name.matches(BODIES) ? "byte " + likeness.bytes() : "line " + likeness.lines();
        return new Finding(
                Fault.CHANGED,
                name,
                place,
                "from here on it is not what its brief gives.",
                "Make the result again from its brief.");
    }

    /**
     * What differs, once all files have been taken.
     *
     * @return files that are missing, foreign, or not as they are when made again, by their names
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        seen.values().forEach(findings::addAll);
        Set<String> foreign = new TreeSet<>(files.names());
        foreign.removeAll(seen.keySet());
        foreign.remove(Manifest.NAME);
        foreign.forEach(name -> findings.add(ManifestCheck.foreign(name)));
        return findings;
    }
}
