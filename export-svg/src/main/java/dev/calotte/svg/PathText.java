package dev.calotte.svg;

import dev.calotte.document.Arc;
import dev.calotte.document.Polyline;
import dev.calotte.svg.paper.Ink;
import dev.calotte.units.NumberText;
import dev.calotte.units.TextBuffer;

/** Builds the commands of a path in a page whose y points down, from places whose y points up. */
final class PathText {

    /** Numbers further apart than this are different after rounding. */
    private static final double APART = 2e-4;

    private final TextBuffer text = new TextBuffer(64);
    private final double heightMm;
    /** Where in the text the first place of the path and the last one stand. */
    private int first;

    private int firstEnd;
    private int last;
    private int lastEnd;

    PathText(double heightMm) {
        this.heightMm = heightMm;
    }

    PathText move(double x, double y) {
        text.add('M');
        first = text.size();
        place(x, y);
        firstEnd = text.size();
        last = first;
        lastEnd = firstEnd;
        return this;
    }

    /** Forgets all, for the next path. */
    void clear() {
        text.clear();
    }

    PathText line(double x, double y) {
        if (!goOn(x, y)) {
            throw new IllegalArgumentException("a side has no length at x " + x + ", y " + y);
        }
        return this;
    }

    /** A line to the next place, unless it is the last place again. */
    private boolean goOn(double x, double y) {
        text.add('L');
        return arrive(x, y);
    }

    /** Ends a command with its place; cuts the last sign off again if that is the last place. */
    private boolean arrive(double x, double y) {
        int next = text.size();
        place(x, y);
        if (text.repeats(last, lastEnd, next, text.size())) {
            text.cut(next - 1);
            return false;
        }
        last = next;
        lastEnd = text.size();
        return true;
    }

    /** A chain of lines that was cut somewhere, so that sides too short to be told may stand at its ends. */
    void chain(double[] xy) {
        move(xy[0], xy[1]);
        int end = Ink.isClosed(xy) ? xy.length - 2 : xy.length;
        for (int i = 2; i < end; i += 2) {
            goOn(xy[i], xy[i + 1]);
        }
        text.add(end < xy.length ? "Z" : "");
    }

    /** Half a circle to the opposite place, counter-clockwise as seen on the page. */
    PathText halfCircle(double radius, double x, double y) {
        String r = NumberText.trimmed(radius, Xml.DECIMALS);
        if (radius <= 0 || "0".equals(r)) {
            throw new IllegalArgumentException("a circle has no radius at x " + x + ", y " + y);
        }
        text.add('A').add(r).add(' ').add(r).add(" 0 0 0 ");
        last = text.size();
        place(x, y);
        lastEnd = text.size();
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
            text.add('A').add(radius).add(' ').add(radius).add(arc.sweepRad() > 0 ? " 0 0 0 " : " 0 0 1 ");
            boolean goesOn = part < parts ? arrive(arc.x(angle), arc.y(angle)) : arrive(x, y);
            if (!goesOn) {
                throw new IllegalArgumentException("an arc has no length at x " + x + ", y " + y);
            }
        }
        return this;
    }

    /** Joins the last place to the first. */
    PathText close() {
        if (text.repeats(first, firstEnd, last, lastEnd)) {
            throw new IllegalArgumentException("the last side of a path has no length: its first corner is repeated");
        }
        text.add('Z');
        return this;
    }

    /** Ends a path that an arc has brought back to where it began. */
    PathText closeRound() {
        text.add('Z');
        return this;
    }

    /** Whether a path is one of straight sides and each of them has a length, by numbers that need not be rounded to tell. */
    boolean canDraw(Polyline path) {
        int last = path.isClosed() ? path.size() - 1 : 0;
        boolean plain = isFinite(path, last);
        for (int i = last == 0 ? 1 : 0; i < path.size(); i++) {
            plain &= isFinite(path, i) && path.bulge(i) == 0 && areApart(path, last, i);
            last = i;
        }
        return plain;
    }

    private boolean isFinite(Polyline path, int corner) {
        return Double.isFinite(path.x(corner)) && Double.isFinite(heightMm - path.y(corner));
    }

    private boolean areApart(Polyline path, int one, int other) {
        return Math.abs(path.x(one) - path.x(other)) > APART
                || Math.abs((heightMm - path.y(one)) - (heightMm - path.y(other))) > APART;
    }

    private void place(double x, double y) {
        text.addNumber(x, Xml.DECIMALS, 0).add(' ').addNumber(heightMm - y, Xml.DECIMALS, 0);
    }

    /** The commands. */
    TextBuffer text() {
        return text;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
