package dev.calotte.export;

import dev.calotte.document.Document;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import java.util.stream.Collectors;

/**
 * The exporters that are installed: those whose modules are on the class path or module path.
 *
 * <pre>{@code
 * Exporters.installed().write(FrameWires.of("Shelter", parts), Path.of("shelter.dxf"));
 * }</pre>
 */
public final class Exporters {

    private final List<Exporter> all;

    /**
     * Gathers exporters.
     *
     * @param all the exporters, in any order
     * @throws IllegalArgumentException if two claim the same format
     */
    public Exporters(List<Exporter> all) {
        this.all = all.stream().sorted(Comparator.comparing(Exporter::format)).toList();
        for (int i = 1; i < this.all.size(); i++) {
            Exporter one = this.all.get(i - 1);
            Exporter other = this.all.get(i);
            if (one.format().equals(other.format())) {
                throw new IllegalArgumentException(one.getClass().getName() + " and "
                        + other.getClass().getName() + " both claim the format " + one.format());
            }
        }
    }

    /**
     * Finds the exporters on the module path or class path.
     *
     * @return the exporters found, by format
     */
    public static Exporters installed() {
        return new Exporters(ServiceLoader.load(Exporter.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList());
    }

    /**
     * The exporters that can write a document.
     *
     * @param document a document
     * @return by format, possibly none; unmodifiable
     */
    public List<Exporter> accepting(Document document) {
        return all.stream().filter(e -> e.accepts(document)).toList();
    }

    /**
     * The exporter of a format.
     *
     * @param format the word that names it, for example {@code dxf}
     * @return the exporter
     * @throws IllegalArgumentException if none is there; the message says which are
     */
    public Exporter of(String format) {
        return all.stream()
                .filter(e -> e.format().equals(format))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no exporter of the format " + format
                        + " is installed, only: " + names() + ". Put its module on the class path or module path."));
    }

    private String names() {
        return all.isEmpty() ? "none" : all.stream().map(Exporter::format).collect(Collectors.joining(", "));
    }

    /**
     * Writes a document that is one file, in the format that the ending of the file's name says, the usual dialect and
     * finish. Folders that are missing are made, a file that is there already is replaced.
     *
     * @param document a document
     * @param file where to write
     * @throws IOException if the file cannot be written; what was written of it by then stays
     * @throws IllegalArgumentException if no exporter of that format is there, or it refuses the document; then nothing is
     *     written unless the document holds what the format cannot say
     */
    public void write(Document document, Path file) throws IOException {
        Exporter exporter = of(ending(file));
        if (!exporter.accepts(document)) {
            throw new IllegalArgumentException("the exporter of the format " + exporter.format() + " does not write a "
                    + document.getClass().getSimpleName());
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        try (OutputStream out = Files.newOutputStream(file)) {
            exporter.write(document, out);
        }
    }

    private static String ending(Path file) {
        String path = file.toString();
        return path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    /**
     * All exporters.
     *
     * @return by format; unmodifiable
     */
    public List<Exporter> all() {
        return all;
    }
}
