package dev.calotte.stl;

import dev.calotte.export.Facets;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Reads the binary variant: a header of 80 bytes, the number of facets, 50 bytes a facet, little-endian. */
final class BinaryReader {

    private static final int HEADER = 80;
    private static final int FACET = 50;
    private static final int NORMAL = 12;
    private static final int NUMBERS = 9;

    private final InputStream in;

    BinaryReader(InputStream in) {
        this.in = in;
    }

    Facets read() throws IOException {
        byte[] head = in.readNBytes(HEADER + Integer.BYTES);
        if (head.length < HEADER + Integer.BYTES) {
            throw new IOException("the file ends after " + head.length + " bytes, before its number of facets");
        }
        long announced = Integer.toUnsignedLong(buffer(head).getInt(HEADER));
        if (announced > StlSolidReader.MOST_FACETS) {
            throw new IOException("the file announces " + announced + " facets, more than the "
                    + StlSolidReader.MOST_FACETS + " that are read");
        }
        Numbers numbers = new Numbers();
        for (long facet = 0; facet < announced; facet++) {
            byte[] bytes = in.readNBytes(FACET);
            if (bytes.length < FACET) {
                throw new IOException("the file announces " + announced + " facets and ends in facet " + (facet + 1));
            }
            ByteBuffer corners = buffer(bytes).position(NORMAL);
            for (int i = 0; i < NUMBERS; i++) {
                add(numbers, corners.getFloat(), facet);
            }
        }
        if (in.read() >= 0) {
            throw new IOException("the file announces " + announced + " facets and goes on after them");
        }
        return new Facets(Numbers.printable(new String(head, 0, HEADER, StandardCharsets.US_ASCII)), numbers.all());
    }

    private static ByteBuffer buffer(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static void add(Numbers numbers, float value, long facet) throws IOException {
        if (!Float.isFinite(value)) {
            throw new IOException("facet " + (facet + 1) + ": a coordinate is no number");
        }
        numbers.add(value);
    }
}
