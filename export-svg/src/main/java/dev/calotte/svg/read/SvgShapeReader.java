package dev.calotte.svg.read;

import dev.calotte.export.Reading;
import dev.calotte.export.ShapeReader;
import java.io.IOException;
import java.io.InputStream;

/**
 * Reads the lines of SVG files: {@code path} with straight sides and arcs of circles (M, L, H, V, A and Z, absolute or
 * relative), {@code circle}, {@code line}, {@code polyline}, {@code polygon} and {@code rect}, in groups, on a page whose
 * width and height are given in millimetres and whose {@code viewBox} has the same shape. Coordinates become
 * millimetres, y upwards from the lower border of the page.
 *
 * <p>The operation is that which the nearest group round a line is named after, by its label in Inkscape or its
 * {@code id}, else {@code CUT_OUTER}; the mark is the title of the nearest group that has one; the title is the root's. Arcs
 * that follow each other on one circle, as long ones are written, become one again, and two halves a circle.
 *
 * <p>Titles, descriptions, definitions and what is not of SVG are passed over. Everything else, such as curves, texts,
 * images, uses, style sheets, transforms, clips and hidden lines, is refused, since what is left out would not be missed
 * until it is cut. A document type is not looked at, and entities that it would define are refused. Files may be up to
 * 32 MiB long, have 64 elements inside each other and up to 200,000 corners. The subset is that of Scalable Vector Graphics
 * 1.1 (W3C, second edition 2011), chapters 7 to 9.
 */
public final class SvgShapeReader implements ShapeReader {

    /** A reader. */
    public SvgShapeReader() {}

    @Override
    public String format() {
        return "svg";
    }

    @Override
    public Reading reading(InputStream in) throws IOException {
        return new SvgFile(new Elements(in)).reading();
    }
}
