package dev.calotte.svg;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Picture;
import dev.calotte.export.Finish;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes drawings and pictures as SVG 1.1 at full size: width and height in millimetres, one user unit a millimetre,
 * y downwards, UTF-8, lines ended by LF, every coordinate rounded once to at most four decimals.
 *
 * <p>A drawing becomes a cut sheet. Each operation is a layer of Inkscape with the operation's name, in working order:
 * {@code ENGRAVE}, {@code SCORE}, {@code DRILL}, {@code CUT_INNER}, {@code CUT_OUTER}, then {@code REF} and
 * {@code SHEET}. In it each part is a group {@code <mark>.<operation>} with a title and a description, and each outline
 * or circle one path {@code <mark>.<operation>.<number>}, of the absolute commands M, L, A and Z only. The colours are
 * those of the {@link Finish}, as a rule red for cuts, blue for scores and black for engravings. There are no transforms,
 * style sheets, texts or fills, which machines read differently or not at all. Lines are 0.1 mm wide, on large sheets as
 * wide as can just be seen, or what {@link Finish#withLine} says.
 *
 * <p>A picture becomes a page: facets in the colours of Okabe and Ito ("Color Universal Design", 2008) at a quarter of
 * their strength, from the ninth kind on with lines as a second cue, hatches, dark borders and labels.
 *
 * <p>Refused with an {@link IllegalArgumentException}, before the first byte is written: other documents, numbers that
 * are not finite, pages without area, sides without length and circles without radius after rounding, and marks that
 * are empty, repeated or of other characters than {@code A-Z a-z 0-9 . _ -}. Characters that XML does not allow become
 * U+FFFD.
 *
 * <p>It needs no brief and no dome:
 *
 * <pre>{@code
 * Polyline triangle = Polyline.closed(Operation.CUT_OUTER, 10, 10, 310, 10, 160, 270);
 * Drawing.Part part = new Drawing.Part("P1", "a panel of the model", List.of(triangle));
 * Drawing drawing = new Drawing("P1", "Panel P1", 320, 280, List.of(part));
 * try (OutputStream out = Files.newOutputStream(target)) {
 *     SvgWriter.of(Finish.PLAIN.withLine(0.01)).write(drawing, out);
 * }
 * }</pre>
 */
public final class SvgWriter {

    private final Finish finish;

    private SvgWriter(Finish finish) {
        this.finish = finish;
    }

    /**
     * A writer, which keeps no state and may be used by several threads.
     *
     * @param finish the colours and widths of lines
     * @return the writer
     */
    public static SvgWriter of(Finish finish) {
        return new SvgWriter(finish);
    }

    /**
     * Writes a document. The stream is flushed and left open.
     *
     * @param drawn a {@link Drawing} or a {@link Picture}
     * @param out where to write
     * @throws IOException if the stream does not take the bytes
     * @throws IllegalArgumentException if the document is another one, holds what SVG cannot say, or two cuts
     *     lie on each other
     */
    public void write(Document drawn, OutputStream out) throws IOException {
        Document document = drawn instanceof Drawing drawing ? finish.contours().of(drawing) : drawn;
        try {
            put(document, out);
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException(document.name() + ": " + wrong.getMessage(), wrong);
        }
    }

    /** What cannot be written is met before the first byte, so that a refused document leaves no half file. */
    private void put(Document document, OutputStream out) throws IOException {
        Xml xml = new Xml(out);
        if (document instanceof Drawing drawing) {
            CutSheet sheet = new CutSheet(drawing, finish);
            sheet.check();
            sheet.write(xml);
        } else if (document instanceof Picture picture) {
            Page page = new Page(picture);
            page.write(Xml.nowhere());
            page.write(xml);
        } else {
            throw new IllegalArgumentException("SVG holds drawings and pictures, and this is neither");
        }
        xml.end();
    }
}
