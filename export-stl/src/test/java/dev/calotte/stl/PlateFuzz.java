package dev.calotte.stl;

import dev.calotte.testing.ReadOrRefused;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** What a fuzzer calls: the reader of 3MF. */
public final class PlateFuzz {

    private PlateFuzz() {}

    /** Reads any bytes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(PlateFuzz::read, bytes);
    }

    static void read(byte[] bytes) throws IOException {
        new PlateSolidReader().bodies(new ByteArrayInputStream(bytes));
    }
}
