package dev.calotte.stl;

import dev.calotte.export.Facets;
import dev.calotte.export.SolidReader;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Reads the bodies of 3MF files (3MF Core Specification 1.3, 2021), those of {@link StlExporter} and others, in whatever unit,
 * as millimetres. Facets of which corners share one place in single precision are left out.
 *
 * <p>Refused: files that unpack to more than 60 times their size or to more than 256 MiB, more than two million vertices or
 * facets, document types and entities, objects that are put together from others, and items that are turned, mirrored or
 * scaled.
 */
public final class PlateSolidReader implements SolidReader {

    private static final String MODEL = "3D/3dmodel.model";
    private static final int MOST_PARTS = 1000;

    /** A reader. */
    public PlateSolidReader() {}

    @Override
    public String format() {
        return "3mf";
    }

    /** All bodies of a file as one; the title is that of the file. */
    @Override
    public Facets read(InputStream in) throws IOException {
        PlateReading reading = reading(in);
        Numbers numbers = new Numbers();
        for (Body body : reading.bodies()) {
            for (int i = 0; i < 9 * body.facets().size(); i++) {
                numbers.add(body.facets().at(i / 9, i / 3 % 3, i % 3));
            }
        }
        return new Facets(reading.title(), numbers.all());
    }

    @Override
    public List<Body> bodies(InputStream in) throws IOException {
        return reading(in).bodies();
    }

    private static PlateReading reading(InputStream in) throws IOException {
        Unpacked.Source source = new Unpacked.Source(new BufferedInputStream(in));
        try {
            ZipInputStream zip = new ZipInputStream(source);
            ZipEntry part = zip.getNextEntry();
            for (int i = 0; part != null && i < MOST_PARTS; i++) {
                Unpacked unpacked = new Unpacked(zip, source);
                if (part.getName().equals(MODEL)) {
                    PlateReading reading = PlateReading.of(unpacked);
                    // its sum is looked at when it ends
                    unpacked.drain();
                    return reading;
                }
                unpacked.drain();
                part = zip.getNextEntry();
            }
        } catch (EOFException e) {
            throw new IOException("the file ends early", e);
        } catch (IllegalArgumentException e) {
            throw new IOException("the name of a part is in no known encoding", e);
        }
        throw new IOException("there is no part " + MODEL + " in it");
    }
}
