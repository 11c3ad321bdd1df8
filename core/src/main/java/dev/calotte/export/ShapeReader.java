package dev.calotte.export;

import dev.calotte.document.Shape;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Reads the lines of files in one format, those of our own cut files and of others. A reader keeps no state between calls.
 * A module offers it twice, as an {@link Exporter} is.
 *
 * <pre>{@code
 * try (InputStream in = Files.newInputStream(Path.of("sheets/glazing-01.dxf"))) {
 *     List<Shape> lines = ShapeReader.installed("dxf").orElseThrow().read(in);
 * }
 * }</pre>
 */
public interface ShapeReader {

    /**
     * The format, which is also the ending of its files.
     *
     * @return a word of lower-case letters, for example {@code dxf}
     */
    String format();

    /**
     * Reads a file with all that it says about its lines.
     *
     * @param in its bytes
     * @return its title and its lines
     * @throws IOException if the file cannot be understood; the message says where, and why
     */
    Reading reading(InputStream in) throws IOException;

    /**
     * Reads a file.
     *
     * @param in its bytes
     * @return all lines of it, open and closed, in millimetres, each with the operation that its layer is named after, else
     *     {@code CUT_OUTER}
     * @throws IOException if the file cannot be understood; the message says where, and why
     */
    default List<Shape> read(InputStream in) throws IOException {
        return reading(in).shapes();
    }

    /**
     * Finds the reader of a format on the module path or class path.
     *
     * @param format the ending of its files
     * @return the reader; nothing if none is installed
     */
    static Optional<ShapeReader> installed(String format) {
        return ServiceLoader.load(ShapeReader.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(reader -> reader.format().equals(format))
                .findFirst();
    }
}
