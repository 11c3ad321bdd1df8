package dev.calotte.cli.folder;

import dev.calotte.export.Rendition;
import java.io.IOException;
import java.util.List;

/** Takes the files of a result, in any order; several threads may hand them in at once. */
public interface FileSink {

    /**
     * Takes a file.
     *
     * @param name its place in the folder, parts separated by {@code /}
     * @param content writes it; called once, before this returns
     * @throws IOException if it cannot be taken
     */
    void add(String name, Rendition.Content content) throws IOException;

    /**
     * The files taken so far.
     *
     * @return their names, sorted; unmodifiable
     */
    List<String> names();
}
