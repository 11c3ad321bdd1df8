package dev.calotte.dxf;

import dev.calotte.testing.ReadOrRefused;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** What a fuzzer calls: both readers of DXF. */
public final class DxfFuzz {

    private DxfFuzz() {}

    /** Reads any bytes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        ReadOrRefused.check(DxfFuzz::read, bytes);
    }

    static void read(byte[] bytes) throws IOException {
        try {
            new DxfShapeReader().reading(new ByteArrayInputStream(bytes));
        } finally {
            new DxfWireReader().read(new ByteArrayInputStream(bytes));
        }
    }
}
