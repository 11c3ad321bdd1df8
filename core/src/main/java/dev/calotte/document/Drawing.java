package dev.calotte.document;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A flat sheet of shapes to be worked at full size. Its lower left corner is the origin and y points up; every shape
 * lies inside it.
 *
 * <pre>{@code
 * Shape board = Polyline.closed(Operation.CUT_OUTER, 10, 10, 310, 10, 310, 210, 10, 210);
 * Shape hole = new Circle(Operation.DRILL, 30, 30, 3.25);
 * List<Drawing.Part> parts = List.of(new Drawing.Part("A1", "a shelf", List.of(board, hole)));
 * Exporters.installed().write(new Drawing("shelf", "A shelf", 320, 220, parts), Path.of("shelf.dxf"));
 * }</pre>
 *
 * @param name where the file belongs
 * @param title what it shows
 * @param widthMm along x
 * @param heightMm along y
 * @param parts what lies on it, in the order in which it is worked
 */
public record Drawing(String name, String title, double widthMm, double heightMm, List<Part> parts)
        implements Document {

    /**
     * Shapes that belong to one piece.
     *
     * @param mark the mark of the piece, unique in the drawing, of the characters {@code A-Z a-z 0-9 . _ -}
     * @param description what the piece is, for people
     * @param shapes its shapes, in the order in which they are worked
     */
    public record Part(String mark, String description, List<Shape> shapes) {

        /**
         * Copies the list.
         *
         * @param mark the mark of the piece
         * @param description what the piece is
         * @param shapes its shapes
         */
        public Part {
            shapes = List.copyOf(shapes);
        }
    }

    /**
     * Copies the list.
     *
     * @param name where the file belongs
     * @param title what it shows
     * @param widthMm along x
     * @param heightMm along y
     * @param parts what lies on it
     */
    public Drawing {
        parts = List.copyOf(parts);
    }

    /**
     * What is done on it.
     *
     * @return the operations that its shapes have, in working order
     */
    public List<Operation> operations() {
        Set<Operation> found = EnumSet.noneOf(Operation.class);
        for (Part part : parts) {
            for (Shape shape : part.shapes()) {
                found.add(shape.operation());
            }
        }
        return List.copyOf(found);
    }
}
