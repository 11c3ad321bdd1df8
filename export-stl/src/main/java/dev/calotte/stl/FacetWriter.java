package dev.calotte.stl;

import dev.calotte.threads.Crew;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Puts a surface into bytes. */
final class FacetWriter {

    private static final int HEADER = 80;
    private static final int FACET = 50;
    private static final int PLACE = 3 * Float.BYTES;
    /** Facets that are packed and written at once: systems keep half a megabyte more quickly than ten times a tenth of it. */
    private static final int PIECE = 10_000;

    private static final VarHandle FLOAT = MethodHandles.byteArrayViewVarHandle(float[].class, ByteOrder.LITTLE_ENDIAN);

    private final OutputStream out;

    FacetWriter(OutputStream out) {
        this.out = out;
    }

    void write(String part, Surface surface) throws IOException {
        out.write(ByteBuffer.allocate(HEADER + Integer.BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(header(part, surface.extent()))
                .putInt(surface.size())
                .array());
        int pieces = (surface.size() + PIECE - 1) / PIECE;
        Crew.forMany(surface.size()).inTurn(pieces, piece -> packed(surface, piece), out::write);
        out.flush();
    }

    /** ASCII, filled up with NUL. It must not begin with "solid", by which readers know the text variant. */
    private static byte[] header(String part, String size) {
        String before = "units=mm part=";
        String after = " size=" + size + " by=calotte";
        String name = part.replaceAll("[^!-~]", "_");
        int room = HEADER - before.length() - after.length();
        String end = name.substring(Math.max(0, name.length() - room));
        byte[] header = new byte[HEADER];
        byte[] text = (before + end + after).getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(text, 0, header, 0, text.length);
        return header;
    }

    /** The attribute at the end of each facet stays 0. */
    private static byte[] packed(Surface surface, int piece) {
        int from = piece * PIECE;
        int count = Math.min(PIECE, surface.size() - from);
        byte[] bytes = new byte[count * FACET];
        Cross cross = new Cross();
        for (int i = 0; i < count; i++) {
            put(surface, from + i, cross, bytes, i * FACET);
        }
        return bytes;
    }

    private static void put(Surface surface, int facet, Cross cross, byte[] bytes, int at) {
        Place normal = surface.normal(facet, cross);
        put(normal.x(), normal.y(), normal.z(), bytes, at);
        for (int k = 0; k < 3; k++) {
            put(surface.at(facet, k, 0), surface.at(facet, k, 1), surface.at(facet, k, 2), bytes, at + (k + 1) * PLACE);
        }
    }

    private static void put(float x, float y, float z, byte[] bytes, int at) {
        FLOAT.set(bytes, at, x);
        FLOAT.set(bytes, at + Float.BYTES, y);
        FLOAT.set(bytes, at + 2 * Float.BYTES, z);
    }
}
