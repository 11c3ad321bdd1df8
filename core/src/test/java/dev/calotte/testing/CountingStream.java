package dev.calotte.testing;

import java.io.OutputStream;

/** Counts bytes and forgets them. */
public final class CountingStream extends OutputStream {

    private long count;
    private int largest;

    @Override
    public void write(int b) {
        count++;
    }

    @Override
    public void write(byte[] bytes, int offset, int length) {
        count += length;
        largest = Math.max(largest, length);
    }

    /** How many bytes came. */
    public long count() {
        return count;
    }

    /** The most bytes that came at once. */
    public int largest() {
        return largest;
    }
}
