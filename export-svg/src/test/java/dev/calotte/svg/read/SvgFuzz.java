package dev.calotte.svg.read;

import dev.calotte.testing.ReadOrRefused;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** What a fuzzer calls: the reader of SVG. */
public final class SvgFuzz {

    private SvgFuzz() {}

    /** Reads any bytes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(SvgFuzz::read, bytes);
    }

    static void read(byte[] bytes) throws IOException {
        new SvgShapeReader().reading(new ByteArrayInputStream(bytes));
    }
}
