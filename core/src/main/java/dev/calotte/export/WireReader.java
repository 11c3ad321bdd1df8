package dev.calotte.export;

import dev.calotte.document.Wireframe;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/**
 * Reads points, lines and triangles in space from files in one format. A reader keeps no state between calls. A module
 * offers it twice, as an {@link Exporter} is.
 *
 * <pre>{@code
 * try (InputStream in = Files.newInputStream(Path.of("ridge.dxf"))) {
 *     List<Wireframe.Layer> layers = WireReader.installed("dxf").orElseThrow().read(in);
 * }
 * }</pre>
 */
public interface WireReader {

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
     * @return its layers in millimetres, in the order in which each first has an element; what is on one layer of the file but
     *     of several sorts becomes several layers of one name
     * @throws IOException if the file cannot be understood; the message says where, and why
     */
    List<Wireframe.Layer> read(InputStream in) throws IOException;

    /**
     * Finds the reader of a format on the module path or class path.
     *
     * @param format the ending of its files
     * @return the reader; nothing if none is installed
     */
    static Optional<WireReader> installed(String format) {
        return ServiceLoader.load(WireReader.class).stream()
                .map(ServiceLoader.Provider::get)
                .filter(reader -> reader.format().equals(format))
                .findFirst();
    }
}
