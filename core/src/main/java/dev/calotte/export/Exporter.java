package dev.calotte.export;

import dev.calotte.document.Document;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Writes documents in one format. An exporter keeps no state between calls and may be used by several threads. The same
 * document gives the same bytes on every machine, in every locale and time zone.
 *
 * <p>A module offers its exporter twice, with {@code provides} in its module descriptor and in
 * {@code META-INF/services}, so that it is found on the module path and on the class path.
 */
public interface Exporter {

    /**
     * The format, as a rule also the folder and the ending of its files.
     *
     * @return a word of lower-case letters, for example {@code dxf}; unique among the installed exporters
     */
    String format();

    /**
     * Whether this exporter can write a document, as one file or as several.
     *
     * @param document a document
     * @return true if {@link #renditions} takes it
     */
    boolean accepts(Document document);

    /**
     * The dialects of the format, if there are several.
     *
     * @return their names, the usual one first; words of lower-case letters; none if there is only one way to write
     */
    default List<String> dialects() {
        return List.of();
    }

    /**
     * The files that a document becomes: as a rule one, {@code <format>/<name>.<format>}.
     *
     * @param document a document that this exporter accepts
     * @param finish how files are finished
     * @return the files, each with its own path; they may be written in any order, by several threads
     */
    default List<Rendition> renditions(Document document, Finish finish) {
        String path = format() + "/" + document.name() + "." + format();
        return List.of(new Rendition(path, out -> write(document, out)));
    }

    /**
     * Writes a document that is one file in the usual dialect and finish. The stream is flushed and left open.
     *
     * @param document a document that this exporter accepts
     * @param out where to write
     * @throws IOException if the stream does not take the bytes
     * @throws IllegalArgumentException if the document is not accepted, becomes several files or holds what the format
     *     cannot say
     */
    void write(Document document, OutputStream out) throws IOException;
}
