package dev.calotte.units;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text on its way into a file, as the bytes of UTF-8. Words and numbers are added in place, so that a file of millions of
 * numbers makes nothing but its bytes. Numbers are those of {@link NumberText}.
 */
public final class TextBuffer {

    /** Nothing that is added in one go, words apart, is longer. */
    private static final int ROOM = 32;
    /** What is handed on at once: systems keep half a megabyte more quickly than ten times a tenth of it. */
    private static final int FULL = 1 << 19;

    private byte[] bytes;
    private int size;

    /**
     * An empty buffer, which grows as need be.
     *
     * @param capacity how many bytes it takes before it grows
     */
    public TextBuffer(int capacity) {
        this.bytes = new byte[capacity + ROOM];
    }

    /**
     * How much there is.
     *
     * @return the number of bytes
     */
    public int size() {
        return size;
    }

    /** Forgets everything. */
    public void clear() {
        size = 0;
    }

    /**
     * Hands everything on and forgets it.
     *
     * @param out where to write
     * @throws IOException if it does not take the bytes
     */
    public void drainTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
        size = 0;
    }

    /**
     * Hands everything on and forgets it, once there is so much that it pays: half a megabyte.
     *
     * @param out where to write
     * @throws IOException if it does not take the bytes
     */
    public void drainIfFull(OutputStream out) throws IOException {
        if (size >= FULL) {
            drainTo(out);
        }
    }

    /**
     * Adds a character.
     *
     * @param ascii a character of ASCII
     * @return this
     */
    public TextBuffer add(char ascii) {
        makeRoom(1);
        bytes[size++] = (byte) ascii;
        return this;
    }

    /**
     * Adds text.
     *
     * @param text any text without unpaired surrogates
     * @return this
     */
    public TextBuffer add(String text) {
        int length = text.length();
        makeRoom(length);
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c >= 0x80) {
                size -= i;
                return addBytes(text.getBytes(StandardCharsets.UTF_8));
            }
            bytes[size++] = (byte) c;
        }
        return this;
    }

    private TextBuffer addBytes(byte... encoded) {
        makeRoom(encoded.length);
        System.arraycopy(encoded, 0, bytes, size, encoded.length);
        size += encoded.length;
        return this;
    }

    /**
     * Adds what another buffer holds.
     *
     * @param other another buffer, which stays as it is
     * @return this
     */
    public TextBuffer add(TextBuffer other) {
        makeRoom(other.size);
        System.arraycopy(other.bytes, 0, bytes, size, other.size);
        size += other.size;
        return this;
    }

    /**
     * Adds a whole number.
     *
     * @param value any number
     * @return this
     */
    public TextBuffer addWhole(int value) {
        if (value < 0) {
            return add(Integer.toString(value));
        }
        digits(value, 0);
        return this;
    }

    /**
     * Adds a number without the zeros at the end of its fraction, some perhaps kept.
     *
     * @param value the number, finite
     * @param decimals how many digits after the point at most, from 1 to {@link NumberText#MOST_DECIMALS}
     * @param least how many at least; 0 leaves out the point, too
     * @return this
     * @throws IllegalArgumentException if the number is not finite
     */
    public TextBuffer addNumber(double value, int decimals, int least) {
        double scaled = Math.abs(value) * NumberText.power(decimals);
        if (!NumberText.isPlain(scaled)) {
            return addRare(value, decimals, least);
        }
        long rounded = (long) (scaled + 0.5);
        if (value < 0 && rounded > 0) {
            add('-');
        }
        int places = decimals;
        while (places > least && rounded % 10 == 0) {
            rounded /= 10;
            places--;
        }
        digits(rounded, places);
        return this;
    }

    /** A number that is nothing, huge, or so near to a half that only its exact value tells how it is rounded. */
    private TextBuffer addRare(double value, int decimals, int least) {
        add(NumberText.fixed(value, decimals));
        int places = decimals;
        while (places > least && bytes[size - 1] == '0') {
            size--;
            places--;
        }
        size -= places == 0 ? 1 : 0;
        return this;
    }

    /** Adds the digits of a number of at least 0, the last ones behind a point. */
    private void digits(long number, int places) {
        makeRoom(ROOM);
        int point = places > 0 ? 1 : 0;
        int start = size + Math.max(NumberText.digits(number), places + 1) + point;
        size = start;
        long left = number;
        for (int place = 0; place < places; place++) {
            bytes[--start] = (byte) ('0' + left % 10);
            left /= 10;
        }
        if (places > 0) {
            bytes[--start] = '.';
        }
        do {
            bytes[--start] = (byte) ('0' + left % 10);
            left /= 10;
        } while (left > 0);
    }

    private void makeRoom(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }

    /**
     * Whether two parts of the text are the same.
     *
     * @param one where the one begins
     * @param oneEnd where it ends
     * @param other where the other begins
     * @param otherEnd where it ends
     * @return true if they have the same bytes
     */
    public boolean repeats(int one, int oneEnd, int other, int otherEnd) {
        return Arrays.equals(bytes, one, oneEnd, bytes, other, otherEnd);
    }

    /**
     * Leaves off the end.
     *
     * @param end how many bytes stay
     */
    public void cut(int end) {
        size = Math.min(size, end);
    }

    @Override
    public String toString() {
        return new String(bytes, 0, size, StandardCharsets.UTF_8);
    }
}
