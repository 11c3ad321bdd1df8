package dev.calotte.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Puts a surface into bytes. */
final class FacetWriter {

    private static final int HEADER = 80;
    private static final int FACET = 50;
    private static final int BUFFERED = 256 * FACET;

    private final OutputStream out;
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFERED).order(ByteOrder.LITTLE_ENDIAN);

    FacetWriter(OutputStream out) {
        this.out = out;
    }

    void write(String part, Surface surface) throws IOException {
        buffer.put(header(part, surface.extent())).putInt(surface.size());
        for (int i = 0; i < surface.size(); i++) {
            if (buffer.remaining() < FACET) {
                drain();
            }
            put(surface.facet(i));
        }
        drain();
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

    private void put(Facet facet) {
        for (float axis : facet.normal()) {
            buffer.putFloat(axis + 0.0f);
        }
        put(facet.a());
        put(facet.b());
        put(facet.c());
        buffer.putShort((short) 0);
    }

    private void put(Place place) {
        buffer.putFloat(place.x()).putFloat(place.y()).putFloat(place.z());
    }

    private void drain() throws IOException {
        out.write(buffer.array(), 0, buffer.position());
        buffer.clear();
    }
}
