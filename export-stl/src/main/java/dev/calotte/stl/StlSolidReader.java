package dev.calotte.stl;

import dev.calotte.export.Facets;
import dev.calotte.export.SolidReader;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Reads STL files, binary and ASCII, those of {@link StlExporter} and others. Normals and attributes are passed over;
 * coordinates are taken for millimetres. The title is what the header or the word {@code solid} is followed by, without the
 * characters outside of ASCII.
 *
 * <p>A file that begins with {@code solid} and whose first 512 bytes hold neither NUL nor other control characters is ASCII,
 * since there are binary files that begin so, too. Refused: files that end early or go on after what they announce, more
 * than two million facets, and numbers that single precision cannot hold.
 */
public final class StlSolidReader implements SolidReader {

    /** Of a file of 100 MB. */
    static final int MOST_FACETS = 2_000_000;

    private static final int LOOKED_AT = 512;

    /** A reader. */
    public StlSolidReader() {}

    @Override
    public String format() {
        return "stl";
    }

    @Override
    public Facets read(InputStream in) throws IOException {
        BufferedInputStream file = new BufferedInputStream(in);
        file.mark(LOOKED_AT);
        byte[] begin = file.readNBytes(LOOKED_AT);
        file.reset();
        return isText(begin) ? new AsciiReader(file).read() : new BinaryReader(file).read();
    }

    private static boolean isText(byte[] begin) {
        String word = "solid";
        int i = 0;
        while (i < word.length() && i < begin.length && begin[i] == word.charAt(i)) {
            i++;
        }
        boolean text = i == word.length();
        for (byte b : begin) {
            text &= b < 0 || b >= ' ' || b == '\t' || b == '\n' || b == '\r';
        }
        return text;
    }
}
