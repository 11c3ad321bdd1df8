package dev.calotte.stl;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/** A part of a package as it is unpacked, which ends with an error where it becomes out of all proportion. */
final class Unpacked extends InputStream {

    private static final long MOST_BYTES = 1L << 28;
    private static final long FREE_BYTES = 1L << 16;
    private static final long MOST_TIMES = 60;

    private final InputStream in;
    private final Source source;

    Unpacked(InputStream in, Source source) {
        this.in = in;
        this.source = source;
    }

    /** The package, which knows how much was taken out of it and what became of that. */
    static final class Source extends FilterInputStream {

        private long packed;
        private long unpacked;

        Source(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int next = super.read();
            packed += next < 0 ? 0 : 1;
            return next;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            packed += Math.max(read, 0);
            return read;
        }

        private void unpack(int bytes) throws IOException {
            unpacked += bytes;
            if (unpacked > MOST_BYTES) {
                throw new IOException("it unpacks to more than " + (MOST_BYTES >> 20) + " MiB");
            }
            if (unpacked > FREE_BYTES + MOST_TIMES * packed) {
                throw new IOException("it unpacks to more than " + MOST_TIMES + " times its size");
            }
        }
    }

    @Override
    public int read() throws IOException {
        int next = in.read();
        source.unpack(next < 0 ? 0 : 1);
        return next;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int read = in.read(buffer, offset, length);
        source.unpack(Math.max(read, 0));
        return read;
    }

    void drain() throws IOException {
        transferTo(OutputStream.nullOutputStream());
    }
}
