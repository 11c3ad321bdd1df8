package dev.calotte.cli.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Arrays;

/** Takes bytes and follows them in another stream, as long as both are alike. */
final class Likeness extends OutputStream {

    private final InputStream there;
    private final byte[] other = new byte[1 << 16];
    private boolean alike = true;
    private long bytes = 1;
    private long lines = 1;

    Likeness(InputStream there) {
        this.there = there;
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] taken, int from, int count) throws IOException {
        int done = 0;
        while (alike && done < count) {
            int step = Math.min(other.length, count - done);
            int read = there.readNBytes(other, 0, step);
            int same = Arrays.mismatch(taken, from + done, from + done + step, other, 0, read);
            alike = same < 0;
            pass(taken, from + done, alike ? step : same);
            done += step;
        }
    }

    private void pass(byte[] taken, int from, int count) {
        bytes += count;
        for (int i = from; i < from + count; i++) {
            if (taken[i] == '\n') {
                lines++;
            }
        }
    }

    /** Whether both were alike from the first byte to the last, now that all is taken. */
    boolean isWhole() throws IOException {
        alike = alike && there.read() < 0;
        return alike;
    }

    /** The first byte that differs, counted from one. */
    long bytes() {
        return bytes;
    }

    /** The line of the first byte that differs, counted from one. */
    long lines() {
        return lines;
    }
}
