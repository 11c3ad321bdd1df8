package dev.calotte.dxf;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Reads pairs of a group code and a value, one after the other, from a file of bounded length. */
final class TagReader {

    private static final long MOST_BYTES = 1L << 25;
    private static final int LONGEST_LINE = 4096;
    private static final int FARTHEST = 1_000_000_000;
    private static final String BINARY = "AutoCAD Binary DXF";

    private final InputStream in;
    private final StringBuilder text = new StringBuilder();
    private long bytes;
    private long line;
    private int ahead = -2;
    private Optional<String> comment = Optional.empty();

    /**
     * A group code and its value.
     *
     * @param code the group code
     * @param value the value without spaces around it
     * @param line where the value stands
     */
    record Tag(int code, String value, long line) {

        boolean begins(String record) {
            return code == 0 && value.equals(record);
        }

        double number() throws DxfFormatException {
            boolean plain = value.length() <= 40 && value.chars().allMatch(c -> "0123456789+-.eE".indexOf(c) >= 0);
            try {
                double number = plain ? Double.parseDouble(value) : Double.NaN;
                if (Math.abs(number) <= FARTHEST) {
                    return number;
                }
            } catch (NumberFormatException noNumber) {
                throw wrong("the value of code " + code + " is no number");
            }
            throw wrong("the value of code " + code + " is no number, or too large a one");
        }

        int whole() throws DxfFormatException {
            try {
                return Integer.parseInt(value);
            } catch (NumberFormatException noNumber) {
                throw wrong("the value of code " + code + " is no whole number");
            }
        }

        DxfFormatException wrong(String reason) {
            return new DxfFormatException(line, reason);
        }
    }

    TagReader(InputStream in) {
        this.in = new BufferedInputStream(in);
    }

    /** The next tag that is no comment. */
    Tag next() throws IOException {
        Tag tag = pair();
        while (tag.code() == 999) {
            comment = comment.isPresent() ? comment : Optional.of(tag.value());
            tag = pair();
        }
        return tag;
    }

    /** The first comment that was passed over. */
    Optional<String> firstComment() {
        return comment;
    }

    private Tag pair() throws IOException {
        String code = line();
        if (line == 1 && code.startsWith(BINARY)) {
            throw new DxfFormatException(line, "this is a binary file; save it as ASCII");
        }
        int number;
        try {
            number = Integer.parseInt(code);
        } catch (NumberFormatException noNumber) {
            throw new DxfFormatException(line, "a group code should stand here, which is a whole number");
        }
        String value = line();
        return new Tag(number, value, line);
    }

    /** A line without the spaces around it. */
    private String line() throws IOException {
        line++;
        text.setLength(0);
        int c = read();
        if (c < 0) {
            throw new DxfFormatException(line, "the file ends before its EOF");
        }
        while (c >= 0 && c != '\n' && c != '\r') {
            if (text.length() == LONGEST_LINE) {
                throw new DxfFormatException(line, "the line is longer than " + LONGEST_LINE + " characters");
            }
            text.append((char) c);
            c = read();
        }
        if (c == '\r') {
            ahead = read();
            ahead = ahead == '\n' ? -2 : ahead;
        }
        return text.toString().trim();
    }

    private int read() throws IOException {
        if (ahead != -2) {
            int c = ahead;
            ahead = -2;
            return c;
        }
        bytes++;
        if (bytes > MOST_BYTES) {
            throw new DxfFormatException(line, "the file is larger than " + (MOST_BYTES >> 20) + " MiB");
        }
        return in.read();
    }
}
