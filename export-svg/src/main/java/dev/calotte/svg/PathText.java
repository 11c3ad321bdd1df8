package dev.calotte.svg;

import dev.calotte.document.Arc;
import dev.calotte.svg.paper.Ink;
import dev.calotte.units.NumberText;

/** Builds the commands of a path in a page whose y points down, from places whose y points up. */
final class PathText {

    private final StringBuilder text = new StringBuilder();
    private final double heightMm;
    private String first = "";
    private String last = "";

    PathText(double heightMm) {
        this.heightMm = heightMm;
    }

    PathText move(double x, double y) {
        first = place(x, y);
        last = first;
        text.append('M').append(first);
        return this;
    }

    PathText line(double x, double y) {
        String next = place(x, y);
        if (next.equals(last)) {
            throw new IllegalArgumentException("a side has no length at x " + x + ", y " + y);
        }
        last = next;
        text.append('L').append(last);
        return this;
    }

    /** A chain of lines that was cut somewhere, so that sides too short to be told may stand at its ends. */
    void chain(double[] xy) {
        move(xy[0], xy[1]);
        int end = Ink.isClosed(xy) ? xy.length - 2 : xy.length;
        for (int i = 2; i < end; i += 2) {
            if (!place(xy[i], xy[i + 1]).equals(last)) {
                line(xy[i], xy[i + 1]);
            }
        }
        text.append(end < xy.length ? "Z" : "");
    }

    /** Half a circle to the opposite place, counter-clockwise as seen on the page. */
    PathText halfCircle(double radius, double x, double y) {
        String r = NumberText.trimmed(radius, Xml.DECIMALS);
        if (radius <= 0 || "0".equals(r)) {
            throw new IllegalArgumentException("a circle has no radius at x " + x + ", y " + y);
        }
        last = place(x, y);
        text.append('A').append(r).append(' ').append(r).append(" 0 0 0 ").append(last);
        return this;
    }

    /**
     * An arc that ends at a place, in parts of a quarter turn at most: of a longer one the place of its middle would hang on
     * the last digit of its radius.
     */
    PathText arc(Arc arc, double x, double y) {
        String radius = NumberText.trimmed(arc.radiusMm(), Xml.DECIMALS);
        int parts = (int) Math.ceil(Math.abs(arc.sweepRad()) / (Math.PI / 2));
        for (int part = 1; part <= parts; part++) {
            double angle = arc.startRad() + arc.sweepRad() * part / parts;
            String next = part < parts ? place(arc.x(angle), arc.y(angle)) : place(x, y);
            if (next.equals(last)) {
                throw new IllegalArgumentException("an arc has no length at x " + x + ", y " + y);
            }
            last = next;
            text.append('A')
                    .append(radius)
                    .append(' ')
                    .append(radius)
                    .append(arc.sweepRad() > 0 ? " 0 0 0 " : " 0 0 1 ");
            text.append(last);
        }
        return this;
    }

    /** Joins the last place to the first. */
    PathText close() {
        if (last.equals(first)) {
            throw new IllegalArgumentException("the last side of a path has no length: its first corner is repeated");
        }
        text.append('Z');
        return this;
    }

    /** Ends a path that an arc has brought back to where it began. */
    PathText closeRound() {
        text.append('Z');
        return this;
    }

    private String place(double x, double y) {
        return NumberText.trimmed(x, Xml.DECIMALS) + " " + NumberText.trimmed(heightMm - y, Xml.DECIMALS);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
