package dev.calotte.document;

/**
 * A solid that is cut into pieces where a printer does not take it whole.
 *
 * @param whole a {@link Mesh} or {@link Rods}
 * @param lengthMm the room along x
 * @param widthMm the room along y
 * @param heightMm the room upwards
 */
public record Bedded(Document whole, double lengthMm, double widthMm, double heightMm) implements Document {

    /**
     * Checks what it is.
     *
     * @param whole a mesh or rods
     * @param lengthMm the room along x
     * @param widthMm the room along y
     * @param heightMm the room upwards
     * @throws IllegalArgumentException if it is neither a mesh nor rods, or there is no room
     */
    public Bedded {
        if (!(whole instanceof Mesh || whole instanceof Rods)) {
            throw new IllegalArgumentException(whole.name() + " is no solid");
        }
        if (!(lengthMm > 0 && widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("there is no room");
        }
    }

    @Override
    public String name() {
        return whole.name();
    }

    @Override
    public String title() {
        return whole.title();
    }
}
