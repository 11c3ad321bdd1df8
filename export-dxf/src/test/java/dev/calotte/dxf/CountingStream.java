package dev.calotte.dxf;

import java.io.OutputStream;

/** Counts bytes and forgets them. */
final class CountingStream extends OutputStream {

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

    long count() {
        return count;
    }

    /** The most bytes that came at once. */
    int largest() {
        return largest;
    }
}
