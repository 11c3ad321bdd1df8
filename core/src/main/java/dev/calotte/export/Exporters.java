package dev.calotte.export;

import dev.calotte.document.Document;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** The exporters that are installed. */
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
     * All exporters.
     *
     * @return by format; unmodifiable
     */
    public List<Exporter> all() {
        return all;
    }
}
