package dev.calotte.svg;

import dev.calotte.units.NumberText;
import java.io.IOException;

/** The root element of a file that is as large as what it shows. */
final class Frame {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String INKSCAPE = "http://www.inkscape.org/namespaces/inkscape";

    private Frame() {}

    /** Begins the root element, one user unit a millimetre. */
    static void open(Xml xml, String title, double widthMm, double heightMm) throws IOException {
        String width = side(widthMm);
        String height = side(heightMm);
        xml.open("svg")
                .with("xmlns", SVG)
                .with("xmlns:inkscape", INKSCAPE)
                .with("width", width + "mm")
                .with("height", height + "mm")
                .with("viewBox", "0 0 " + width + " " + height);
        xml.open("title").close(title);
    }

    private static String side(double lengthMm) {
        String text = NumberText.trimmed(lengthMm, Xml.DECIMALS);
        if (lengthMm <= 0 || "0".equals(text)) {
            throw new IllegalArgumentException("a page cannot be " + text + " mm long");
        }
        return text;
    }
}
