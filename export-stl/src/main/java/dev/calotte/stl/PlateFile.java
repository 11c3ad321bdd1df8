package dev.calotte.stl;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.CheckedOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A 3MF file (3MF Core Specification 1.3, 2021) with all bodies of a plate: one package of three parts. The parts are
 * stored, not deflated, for what deflating gives differs between Java versions, and carry the first day that the
 * format knows.
 */
final class PlateFile {

    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    private static final String TYPES = HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>"
            + "</Types>\n";

    private static final String RELATIONS = HEAD
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"model\" Target=\"/3D/3dmodel.model\""
            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>"
            + "</Relationships>\n";

    private final String title;
    private final List<Printed> bodies;

    PlateFile(String title, List<Printed> bodies) {
        this.title = title;
        this.bodies = bodies;
    }

    /** Writes a part of the package. */
    private interface Part {

        void writeTo(Writer out) throws IOException;
    }

    void write(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        zip.setMethod(ZipOutputStream.STORED);
        add(zip, "[Content_Types].xml", text -> text.write(TYPES));
        add(zip, "_rels/.rels", text -> text.write(RELATIONS));
        add(zip, "3D/3dmodel.model", text -> new PlateModel(text).write(title, bodies));
        zip.finish();
        zip.flush();
    }

    /** A stored part tells its size and sum before it begins, so it is written twice. */
    private static void add(ZipOutputStream zip, String name, Part part) throws IOException {
        CountedOutput counted = new CountedOutput();
        CheckedOutputStream checked = new CheckedOutputStream(counted, new CRC32());
        write(part, checked);
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(firstDay());
        entry.setSize(counted.count());
        entry.setCrc(checked.getChecksum().getValue());
        zip.putNextEntry(entry);
        write(part, zip);
        zip.closeEntry();
    }

    /** Noon of the first day that the format knows; at its first second Java adds another time that tells the time zone. */
    private static long firstDay() {
        return new GregorianCalendar(1980, Calendar.JANUARY, 1, 12, 0).getTimeInMillis();
    }

    private static void write(Part part, OutputStream out) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        part.writeTo(text);
        text.flush();
    }

    /** Counts bytes and keeps none. */
    private static final class CountedOutput extends OutputStream {

        private long count;

        @Override
        public void write(int b) {
            count++;
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            count += length;
        }

        long count() {
            return count;
        }
    }
}
