package dev.calotte.dxf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Writes pairs of a group code and a value, each on a line of its own. */
final class TagWriter {

    private static final String LINE_END = "\r\n";
    private static final int FULL = 1 << 13;

    private final OutputStream out;
    private final StringBuilder pending = new StringBuilder(FULL + 512);

    TagWriter(OutputStream out) {
        this.out = out;
    }

    /** Writes a text, which must be ASCII without line ends. */
    void text(int code, String value) throws IOException {
        code(code).append(value);
        end();
    }

    void whole(int code, int value) throws IOException {
        code(code).append(value);
        end();
    }

    void number(int code, double value) throws IOException {
        Decimals.append(code(code), value);
        end();
    }

    /** Writes an angle in degrees, or a bulge. */
    void fine(int code, double value) throws IOException {
        Decimals.appendFine(code(code), value);
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

    private StringBuilder code(int code) {
        return pending.append(code).append(LINE_END);
    }

    private void end() throws IOException {
        pending.append(LINE_END);
        if (pending.length() >= FULL) {
            drain();
        }
    }

    private void drain() throws IOException {
        out.write(pending.toString().getBytes(StandardCharsets.US_ASCII));
        pending.setLength(0);
    }
}
