package dev.calotte.export;

import java.io.IOException;
import java.io.OutputStream;

/**
 * One of the files that a document becomes.
 *
 * @param path its place among all results, parts separated by {@code /}, for example {@code dxf/panels/P4L.dxf}
 * @param content writes it
 */
public record Rendition(String path, Content content) {

    /** Writes one file. */
    public interface Content {

        /**
         * Writes the file.
         *
         * @param out where to write; flushed and left open
         * @throws IOException if the stream does not take the bytes
         */
        void writeTo(OutputStream out) throws IOException;
    }
}
