package dev.calotte.stl;

import dev.calotte.testing.ReadOrRefused;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** What a fuzzer calls: the reader of STL. */
public final class StlFuzz {

    private StlFuzz() {}

    /** Reads any bytes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(StlFuzz::read, bytes);
    }

    static void read(byte[] bytes) throws IOException {
        new StlSolidReader().read(new ByteArrayInputStream(bytes));
    }
}
