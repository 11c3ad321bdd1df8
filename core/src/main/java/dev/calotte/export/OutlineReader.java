package dev.calotte.export;

import dev.calotte.document.Shape;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Reads the lines of files in one format. A reader keeps no state between calls. A module offers it twice, as an
 * {@link Exporter} is.
 */
public interface OutlineReader {

    /**
     * The format, which is also the ending of its files.
     *
     * @return a word of lower-case letters, for example {@code dxf}
     */
    String format();

    /**
     * Reads a file.
     *
     * @param in its bytes
     * @return all lines of it, open and closed, in millimetres
     * @throws IOException if the file cannot be understood; the message says in which line, and why
     */
    List<Shape> read(InputStream in) throws IOException;

    /**
     * Finds the reader of a format on the module path or class path.
     *
     * @param format the ending of its files
     * @return the reader; nothing if none is installed
     */
    static Optional<OutlineReader> installed(String format) {
        return ServiceLoader.load(OutlineReader.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(reader -> reader.format().equals(format))
                .findFirst();
    }
}
