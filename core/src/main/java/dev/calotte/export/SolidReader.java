package dev.calotte.export;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Reads the surfaces of solids from files in one format. A reader keeps no state between calls. A module offers it twice,
 * as an {@link Exporter} is.
 *
 * <pre>{@code
 * try (InputStream in = Files.newInputStream(Path.of("wedge.stl"))) {
 *     Facets facets = SolidReader.installed("stl").orElseThrow().read(in);
 * }
 * }</pre>
 */
public interface SolidReader {

    /**
     * The format, which is also the ending of its files.
     *
     * @return a word of lower-case letters, for example {@code stl}
     */
    String format();

    /**
     * Reads a file.
     *
     * @param in its bytes
     * @return its facets, in the order of the file; that they enclose a solid is not looked at
     * @throws IOException if the file cannot be understood; the message says where, and why
     */
    Facets read(InputStream in) throws IOException;

    /**
     * A body of a file that can hold several.
     *
     * @param name what the file calls it, possibly empty
     * @param count how often the file wants it to be made
     * @param facets its facets, where it lies by itself
     */
    record Body(String name, int count, Facets facets) {}

    /**
     * Reads a file body by body.
     *
     * @param in its bytes
     * @return its bodies, in the order of the file; one without a name if the format knows no bodies
     * @throws IOException if the file cannot be understood; the message says where, and why
     */
    default List<Body> bodies(InputStream in) throws IOException {
        return List.of(new Body("", 1, read(in)));
    }

    /**
     * Finds the reader of a format on the module path or class path.
     *
     * @param format the ending of its files
     * @return the reader; nothing if none is installed
     */
    static Optional<SolidReader> installed(String format) {
        return ServiceLoader.load(SolidReader.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(reader -> reader.format().equals(format))
                .findFirst();
    }
}
