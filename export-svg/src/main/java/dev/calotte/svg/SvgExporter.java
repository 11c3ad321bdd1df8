package dev.calotte.svg;

import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Picture;
import dev.calotte.export.Exporter;
import dev.calotte.export.Finish;
import dev.calotte.export.Rendition;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Writes drawings and pictures as SVG 1.1 at full size: width and height in millimetres, one user unit a millimetre,
 * y downwards, UTF-8, lines ended by LF, every coordinate rounded once to at most four decimals.
 *
 * <p>A drawing becomes a cut sheet. Each operation is a layer of Inkscape with the operation's name, in working order:
 * {@code ENGRAVE}, {@code SCORE}, {@code DRILL}, {@code CUT_INNER}, {@code CUT_OUTER}, then {@code REF} and
 * {@code SHEET}. In it each part is a group {@code <mark>.<operation>} with a title and a description, and each outline
 * or circle one path {@code <mark>.<operation>.<number>}, of the absolute commands M, L, A and Z only. The colours are
 * those of the {@link Finish}, as a rule red for cuts, blue for scores and black for engravings. There are no transforms,
 * style sheets, texts or fills, which machines read differently or not at all.
 *
 * <p>A picture becomes a page: facets in the colours of Okabe and Ito ("Color Universal Design", 2008) at a quarter of
 * their strength, from the ninth kind on with lines as a second cue, hatches, dark borders and labels.
 *
 * <p>Refused with an {@link IllegalArgumentException}, before the first byte is written: other documents, numbers that
 * are not finite, pages without area, sides without length and circles without radius after rounding, and marks that
 * are empty, repeated or of other characters than {@code A-Z a-z 0-9 . _ -}. Characters that XML does not allow become
 * U+FFFD.
 */
public final class SvgExporter implements Exporter {

    /** Makes an exporter; it has no state. */
    public SvgExporter() {}

    @Override
    public String format() {
        return "svg";
    }

    @Override
    public boolean accepts(Document document) {
        return document instanceof Drawing || document instanceof Picture;
    }

    @Override
    public List<Rendition> renditions(Document document, Finish finish) {
        return List.of(new Rendition("svg/" + document.name() + ".svg", out -> write(document, finish, out)));
    }

    @Override
    public void write(Document document, OutputStream out) throws IOException {
        write(document, Finish.PLAIN, out);
    }

    private static void write(Document document, Finish finish, OutputStream out) throws IOException {
        // A first run into nothing meets whatever cannot be written, so that a refused document leaves no half file.
        try (OutputStream nothing = OutputStream.nullOutputStream()) {
            put(document, finish, new Xml(nothing));
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException(document.name() + ": " + wrong.getMessage(), wrong);
        }
        put(document, finish, new Xml(out));
    }

    private static void put(Document document, Finish finish, Xml xml) throws IOException {
        if (document instanceof Drawing drawing) {
            new CutSheet(drawing, finish).write(xml);
        } else if (document instanceof Picture picture) {
            new Page(picture).write(xml);
        } else {
            throw new IllegalArgumentException("SVG holds drawings and pictures, and this is neither");
        }
        xml.end();
    }
}
