package dev.calotte.export;

import dev.calotte.document.Shape;
import java.util.List;
import java.util.Optional;

/**
 * What stands in a file of lines.
 *
 * @param title what it shows; empty if it does not say
 * @param lines its lines, in the order of the file
 */
public record Reading(Optional<String> title, List<Line> lines) {

    /**
     * A line and the piece it belongs to.
     *
     * @param mark the mark of the piece; empty if the file does not say, as DXF never does
     * @param shape a path or a circle, in millimetres, y upwards
     */
    public record Line(Optional<String> mark, Shape shape) {}

    /**
     * Copies the list.
     *
     * @param title what it shows
     * @param lines its lines
     */
    public Reading {
        lines = List.copyOf(lines);
    }

    /**
     * The lines alone.
     *
     * @return their shapes, in the order of the file
     */
    public List<Shape> shapes() {
        return lines.stream().map(Line::shape).toList();
    }
}
