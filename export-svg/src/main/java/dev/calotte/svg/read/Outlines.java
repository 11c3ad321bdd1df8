package dev.calotte.svg.read;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes shapes of the elements that draw. */
final class Outlines {

    private static final int MOST_CORNERS = 200_000;

    private final Elements elements;
    private final Sheet sheet;
    private int corners;

    Outlines(Elements elements, Sheet sheet) {
        this.elements = elements;
        this.sheet = sheet;
    }

    /** The shapes of the element that has just begun, up to its end. */
    List<Shape> of(Operation operation) throws IOException {
        String name = elements.svgName().orElse("");
        List<Shape> shapes = switch (name) {
            case "path" -> path(operation);
            case "circle" -> List.of(circle(operation));
            case "line" -> List.of(line(operation));
            case "polyline" -> List.of(points(operation, false));
            case "polygon" -> List.of(points(operation, true));
            case "rect" -> List.of(rect(operation));
            default ->
                throw elements.wrong("the element " + name
                        + " cannot be read as a line; save it as paths of straight sides and arcs");
        };
        end();
        return shapes;
    }

    /** Lets only texts about it stand inside. */
    private void end() throws IOException {
        while (elements.begins()) {
            String name = elements.svgName().orElse("desc");
            if (!List.of("title", "desc", "metadata").contains(name)) {
                throw elements.wrong("the element " + name + " inside a line is not followed");
            }
            elements.skip();
        }
    }

    private List<Shape> path(Operation operation) throws IOException {
        List<Shape> shapes = new ArrayList<>();
        for (Track track : new PathData(this, elements.attribute("d").orElse("")).tracks()) {
            shapes.add(track.shape(operation));
        }
        return shapes;
    }

    /** Begins a line at a place. */
    Track track(double x, double y) throws IOException {
        count();
        return new Track(this, sheet.xMm(x), sheet.yMm(y));
    }

    Elements elements() {
        return elements;
    }

    Sheet sheet() {
        return sheet;
    }

    void count() throws IOException {
        corners++;
        if (corners > MOST_CORNERS) {
            throw elements.wrong("the file has more than " + MOST_CORNERS + " corners");
        }
    }

    private double number(String attribute) throws IOException {
        Optional<String> text = elements.attribute(attribute);
        if (text.isEmpty()) {
            return 0;
        }
        Scanner scanner = new Scanner(elements, text.get());
        double value = scanner.number();
        scanner.end();
        return value;
    }

    private Shape circle(Operation operation) throws IOException {
        count();
        double radius = sheet.unitMm() * number("r");
        if (!(radius > 0)) {
            throw elements.wrong("the radius of a circle is not above 0");
        }
        return new Circle(operation, sheet.xMm(number("cx")), sheet.yMm(number("cy")), radius);
    }

    private Shape line(Operation operation) throws IOException {
        Track track = track(number("x1"), number("y1"));
        track.line(number("x2"), number("y2"));
        return track.shape(operation);
    }

    private Shape points(Operation operation, boolean closed) throws IOException {
        Scanner scanner = new Scanner(elements, elements.attribute("points").orElse(""));
        Track track = track(scanner.number(), scanner.number());
        while (!scanner.isAtEnd()) {
            track.line(scanner.number(), scanner.number());
        }
        if (closed) {
            track.close();
        }
        return track.shape(operation);
    }

    /** Counter-clockwise with y upwards. */
    private Shape rect(Operation operation) throws IOException {
        if (number("rx") != 0 || number("ry") != 0) {
            throw elements.wrong("a rect with round corners cannot be read; save it as a path");
        }
        double width = number("width");
        double height = number("height");
        if (!(width > 0) || !(height > 0)) {
            throw elements.wrong("a side of a rect is not above 0");
        }
        double left = number("x");
        double top = number("y");
        Track track = track(left, top + height);
        track.line(left + width, top + height);
        track.line(left + width, top);
        track.line(left, top);
        track.close();
        return track.shape(operation);
    }
}
