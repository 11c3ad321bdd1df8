package dev.calotte.dxf;

import dev.calotte.units.TextBuffer;
import java.io.IOException;
import java.io.OutputStream;

/** Writes pairs of a group code and a value, each on a line of its own. */
final class TagWriter {

    private static final String LINE_END = "\r\n";
    private static final int FULL = 1 << 13;

    private final OutputStream out;
    private final TextBuffer pending = new TextBuffer(FULL + 512);

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
        if (pending.size() >= FULL) {
            drain();
        }
    }

    private void drain() throws IOException {
        pending.drainTo(out);
    }
}
