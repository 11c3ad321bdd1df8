package dev.calotte.svg.paper;

import dev.calotte.document.Picture.Label;
import dev.calotte.units.NumberText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * All pages of a template in one file, after ISO 32000-1 (PDF 1.7), sections 7.5 (structure), 8 (lines) and 9 (texts in
 * Helvetica, which every reader has). Streams are not compressed, since what a compressor makes differs between its
 * releases; there is no date and no name of a machine.
 */
public final class PdfFile {

    private static final double POINTS = 72 / 25.4;
    private static final int PLACES = 12;
    private static final int CATALOG = 1;
    private static final int PAGES = 2;
    private static final int FONT = 3;
    private static final int FIRST_PAGE = 4;

    private final OutputStream out;
    private final List<Long> offsets = new ArrayList<>();
    private long written;

    private PdfFile(OutputStream out) {
        this.out = out;
    }

    /**
     * Writes the file. The stream is flushed and left open.
     *
     * @param leaves the pages, each drawn as it is written
     * @param out where to write
     * @throws IOException if the stream does not take the bytes
     */
    public static void write(List<Leaf> leaves, OutputStream out) throws IOException {
        new PdfFile(out).write(leaves);
        out.flush();
    }

    private void write(List<Leaf> leaves) throws IOException {
        put("%PDF-1.4\n");
        object("<< /Type /Catalog /Pages " + PAGES + " 0 R >>");
        StringBuilder kids = new StringBuilder();
        for (int i = 0; i < leaves.size(); i++) {
            kids.append(' ').append(FIRST_PAGE + 2 * i).append(" 0 R");
        }
        object("<< /Type /Pages /Count " + leaves.size() + " /Kids [" + kids + " ] >>");
        object("<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>");
        for (Leaf leaf : leaves) {
            page(leaf.page());
        }
        end();
    }

    private void page(PaperPage page) throws IOException {
        object("<< /Type /Page /Parent " + PAGES + " 0 R /MediaBox [0 0 "
                + points(page.size().widthMm()) + " "
                + points(page.size().heightMm()) + "] /Resources << /Font << /F1 " + FONT + " 0 R >> >> /Contents "
                + (offsets.size() + 2) + " 0 R >>");
        String content = content(page);
        object("<< /Length " + content.length() + " >>\nstream\n" + content + "\nendstream");
    }

    private static String points(double mm) {
        return NumberText.trimmed(mm * POINTS, 4);
    }

    /** Millimetres from the lower left corner, as on the page itself. */
    private static String content(PaperPage page) {
        String scale = NumberText.trimmed(POINTS, PLACES);
        StringBuilder content = new StringBuilder(scale + " 0 0 " + scale + " 0 0 cm");
        for (Ink ink : page.inks()) {
            content.append('\n')
                    .append(NumberText.trimmed(ink.pen().widthMm(), 2))
                    .append(" w [");
            content.append(ink.pen().dashes()).append("] 0 d");
            ink.chains().forEach(chain -> draw(content, chain));
            content.append(" S");
        }
        page.words().forEach(label -> write(content, label));
        return content.toString();
    }

    private static void draw(StringBuilder content, double[] chain) {
        int end = Ink.isClosed(chain) ? chain.length - 2 : chain.length;
        for (int i = 0; i < end; i += 2) {
            content.append('\n').append(place(chain[i])).append(' ').append(place(chain[i + 1]));
            content.append(i == 0 ? " m" : " l");
        }
        content.append(end < chain.length ? " h" : "");
    }

    private static String place(double mm) {
        return NumberText.trimmed(mm, 4);
    }

    private static void write(StringBuilder content, Label label) {
        double width = Letters.widthMm(label.text(), label.heightMm());
        double left = switch (label.anchor()) {
            case START -> label.x();
            case MIDDLE -> label.x() - width / 2;
            case END -> label.x() - width;
        };
        content.append("\nBT /F1 ")
                .append(place(label.heightMm() / Letters.CAPITALS))
                .append(" Tf ");
        content.append(place(left))
                .append(' ')
                .append(place(label.y() - label.heightMm() / 2))
                .append(" Td (");
        label.text().codePoints().forEach(c -> append(content, c));
        content.append(") Tj ET");
    }

    /** In the encoding of Western Europe; a letter that it does not have becomes a question mark. */
    private static void append(StringBuilder content, int c) {
        boolean known = (c >= ' ' && c <= '~') || (c >= 0xA0 && c <= 0xFF);
        if (c == '(' || c == ')' || c == '\\') {
            content.append('\\');
        }
        content.append(known ? (char) c : '?');
    }

    private void object(String content) throws IOException {
        offsets.add(written);
        put(offsets.size() + " 0 obj\n" + content + "\nendobj\n");
    }

    private void end() throws IOException {
        long start = written;
        StringBuilder table = new StringBuilder("xref\n0 " + (offsets.size() + 1) + "\n0000000000 65535 f \n");
        for (long offset : offsets) {
            String digits = Long.toString(offset);
            table.append("0".repeat(Math.max(0, 10 - digits.length())))
                    .append(digits)
                    .append(" 00000 n \n");
        }
        put(table + "trailer\n<< /Size " + (offsets.size() + 1) + " /Root " + CATALOG + " 0 R >>\nstartxref\n" + start
                + "\n%%EOF\n");
    }

    private void put(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        out.write(bytes);
        written += bytes.length;
    }
}
