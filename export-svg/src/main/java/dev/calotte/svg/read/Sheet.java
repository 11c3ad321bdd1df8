package dev.calotte.svg.read;

import java.io.IOException;

/**
 * The page: how user units become millimetres.
 *
 * @param left the x of its left border in user units
 * @param bottom the y of its lower border in user units
 * @param unitMm how long a user unit is
 */
record Sheet(double left, double bottom, double unitMm) {

    /** How much the units along x and y may differ, as a part of them: by the digits of two rounded numbers. */
    private static final double SAME = 1e-6;

    /** The page of the root that has just begun. */
    static Sheet of(Elements elements) throws IOException {
        double width = millimetres(elements, "width");
        double height = millimetres(elements, "height");
        Scanner box = new Scanner(
                elements,
                elements.attribute("viewBox")
                        .orElseThrow(() -> elements.wrong("the root has no viewBox, so that its unit is not known")));
        double left = box.number();
        double top = box.number();
        double across = box.number();
        double down = box.number();
        box.end();
        double unit = width / across;
        if (!(across > 0) || !(down > 0) || !(Math.abs(height / down - unit) <= SAME * unit)) {
            throw elements.wrong("the viewBox has not the shape of the page");
        }
        return new Sheet(left, top + down, unit);
    }

    private static double millimetres(Elements elements, String side) throws IOException {
        String text = elements.attribute(side).orElse("").strip();
        if (!text.endsWith("mm")) {
            throw elements.wrong("the " + side + " of the page is not given in mm");
        }
        Scanner number = new Scanner(elements, text.substring(0, text.length() - 2));
        double length = number.number();
        number.end();
        if (!(length > 0)) {
            throw elements.wrong("the " + side + " of the page is not above 0");
        }
        return length;
    }

    double xMm(double x) {
        return unitMm * (x - left);
    }

    double yMm(double y) {
        return unitMm * (bottom - y);
    }
}
