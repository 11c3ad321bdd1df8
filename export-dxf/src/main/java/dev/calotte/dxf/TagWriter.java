package dev.calotte.dxf;

import dev.calotte.units.TextBuffer;
import java.io.IOException;
import java.io.OutputStream;

/** Writes pairs of a group code and a value, each on a line of its own. */
final class TagWriter {

    private static final String LINE_END = "\r\n";
    /** As long as most files are. */
    private static final int SHORT = 1 << 14;

    /** What stands round x and y of a place in the plane. */
    private static final TextBuffer BEFORE_X = words("10", "");

    private static final TextBuffer BEFORE_Y = words("", "20", "");
    private static final TextBuffer BEHIND_Y = words("", "30", "0.0", "");

    private final OutputStream out;
    private final TextBuffer pending = new TextBuffer(SHORT);

    TagWriter(OutputStream out) {
        this.out = out;
    }

    /** Writes a text, which must be ASCII without line ends. */
    void text(int code, String value) throws IOException {
        code(code).add(value);
        end();
    }

    void whole(int code, int value) throws IOException {
        code(code).addWhole(value);
        end();
    }

    void number(int code, double value) throws IOException {
        Decimals.add(code(code), value);
        end();
    }

    /** Writes an angle in degrees, or a bulge. */
    void fine(int code, double value) throws IOException {
        Decimals.addFine(code(code), value);
        end();
    }

    /** Writes x, y and z under a code, ten more and twenty more. */
    void place(int code, double x, double y, double z) throws IOException {
        number(code, x);
        number(code + 10, y);
        number(code + 20, z);
    }

    /** The same as a place with code 10 and no height. */
    void flat(double x, double y) throws IOException {
        pending.add(BEFORE_X);
        Decimals.add(pending, x);
        pending.add(BEFORE_Y);
        Decimals.add(pending, y);
        add(BEHIND_Y);
    }

    /** Writes tags that were put into words before. */
    void add(TextBuffer words) throws IOException {
        pending.add(words);
        pending.drainIfFull(out);
    }

    /** Lines of a file; the last is not ended. */
    static TextBuffer words(String... lines) {
        return new TextBuffer(64).add(String.join(LINE_END, lines));
    }

    /** Hands everything on to the stream. */
    void flush() throws IOException {
        drain();
        out.flush();
    }

    private TextBuffer code(int code) {
        return pending.addWhole(code).add(LINE_END);
    }

    private void end() throws IOException {
        pending.add(LINE_END);
        pending.drainIfFull(out);
    }

    private void drain() throws IOException {
        pending.drainTo(out);
    }
}
