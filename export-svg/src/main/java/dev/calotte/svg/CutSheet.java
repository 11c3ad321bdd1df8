package dev.calotte.svg;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.export.Finish;
import dev.calotte.units.NumberText;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** A drawing as a machine reads it: layers of operations, groups of parts, bare outlines. */
final class CutSheet {

    private static final Pattern MARK = Pattern.compile("[A-Za-z0-9._-]+");
    private static final double THINNEST_MM = 0.1;

    /** A line of this part of the drawing's longer side can still be seen when all of it is on the screen. */
    private static final double VISIBLE = 1e-4;

    private final Drawing drawing;
    private final List<Operation> operations;
    private final Finish finish;
    private final PathText commands;
    private final double strokeMm;

    CutSheet(Drawing drawing, Finish finish) {
        this.drawing = drawing;
        this.operations = drawing.operations();
        this.finish = finish;
        this.commands = new PathText(drawing.heightMm());
        this.strokeMm = finish.lineMm().orElse(visibleMm(drawing));
    }

    private static double visibleMm(Drawing drawing) {
        return Math.max(THINNEST_MM, VISIBLE * Math.max(drawing.widthMm(), drawing.heightMm()));
    }

    /** Refuses what cannot be written, with the words of the first that is met on the way to the file. */
    void check() throws IOException {
        write(Xml.nowhere(), this::see);
    }

    void write(Xml xml) throws IOException {
        write(xml, this::put);
    }

    /** What is done with a shape of a part. */
    private interface Hand {
        void take(Xml xml, Leaf leaf, Shape shape) throws IOException;
    }

    private void write(Xml xml, Hand hand) throws IOException {
        checkMarks();
        Frame.open(xml, drawing.title(), drawing.widthMm(), drawing.heightMm());
        for (Operation operation : operations) {
            layer(xml, operation, hand);
        }
        xml.close();
    }

    private void checkMarks() {
        Set<String> marks = new HashSet<>();
        for (Drawing.Part part : drawing.parts()) {
            String mark = part.mark();
            if (!MARK.matcher(mark).matches() || !marks.add(mark)) {
                throw new IllegalArgumentException("the mark \"" + mark + "\" is not allowed or used twice");
            }
        }
    }

    private void layer(Xml xml, Operation operation, Hand hand) throws IOException {
        boolean begun = false;
        for (Drawing.Part part : drawing.parts()) {
            if (isWorked(part, operation)) {
                if (!begun) {
                    begin(xml, operation);
                    begun = true;
                }
                part(xml, part, operation, hand);
            }
        }
        if (begun) {
            xml.close();
        }
    }

    private static boolean isWorked(Drawing.Part part, Operation operation) {
        for (Shape shape : part.shapes()) {
            if (shape.operation() == operation) {
                return true;
            }
        }
        return false;
    }

    private static void begin(Xml xml, Operation operation) throws IOException {
        xml.open("g")
                .with("inkscape:groupmode", "layer")
                .with("inkscape:label", operation.name())
                .with("id", operation.name());
    }

    private void part(Xml xml, Drawing.Part part, Operation operation, Hand hand) throws IOException {
        String id = id(part.mark(), operation);
        xml.open("g").with("id", id).with("inkscape:label", part.mark());
        xml.open("title").close(part.mark());
        xml.open("desc").close(part.description());
        Leaf leaf = new Leaf(id, pen(operation));
        for (Shape shape : part.shapes()) {
            if (shape.operation() == operation) {
                hand.take(xml, leaf, shape);
            }
        }
        xml.close();
    }

    private void put(Xml xml, Leaf leaf, Shape shape) throws IOException {
        draw(shape);
        leaf.put(xml, commands);
    }

    /** Draws a shape only to see whether it can be drawn, and not even that if its corners tell. */
    private void see(Xml xml, Leaf leaf, Shape shape) {
        if (!(shape instanceof Polyline path && commands.canDraw(path))) {
            draw(shape);
        }
    }

    /** How all lines of an operation are drawn. */
    private String pen(Operation operation) {
        return " fill=\"none\" stroke=\"" + finish.stroke(operation).hex() + "\" stroke-width=\""
                + NumberText.trimmed(strokeMm, Xml.DECIMALS) + '"';
    }

    /**
     * Unique, since a mark is, and the operation and number after it can be told from it. A name in XML begins with a
     * letter or a low line.
     */
    private static String id(String mark, Operation operation) {
        String start = Character.isLetter(mark.charAt(0)) ? "" : "_";
        return start + mark + "." + operation;
    }

    private void draw(Shape shape) {
        commands.clear();
        if (shape instanceof Circle circle) {
            circle(commands, circle);
        } else if (shape instanceof Polyline path) {
            path(commands, path);
        }
    }

    private static void circle(PathText text, Circle circle) {
        double left = circle.xMm() - circle.radiusMm();
        double right = circle.xMm() + circle.radiusMm();
        text.move(right, circle.yMm())
                .halfCircle(circle.radiusMm(), left, circle.yMm())
                .halfCircle(circle.radiusMm(), right, circle.yMm())
                .closeRound();
    }

    private static void path(PathText text, Polyline path) {
        text.move(path.x(0), path.y(0));
        for (int i = 1; i < path.size(); i++) {
            side(text, path, i - 1);
        }
        if (path.isClosed() && path.bulge(path.size() - 1) == 0) {
            text.close();
        } else if (path.isClosed()) {
            side(text, path, path.size() - 1);
            text.closeRound();
        }
    }

    private static void side(PathText text, Polyline path, int corner) {
        int next = (corner + 1) % path.size();
        if (path.bulge(corner) == 0) {
            text.line(path.x(next), path.y(next));
        } else {
            text.arc(path.arc(corner).orElseThrow(), path.x(next), path.y(next));
        }
    }
}
