package dev.calotte.document;

/** Something that can be written as a file, whatever the format. */
public sealed interface Document permits Drawing, Picture, Wireframe, Mesh, Rods, Bedded, PrintPlate, Book {

    /**
     * Where the file belongs, without its ending: folders and name separated by {@code /}, of the characters
     * {@code a-z A-Z 0-9 . _ -}.
     *
     * @return for example {@code panels/P4L}
     */
    String name();

    /**
     * What the document shows, for people.
     *
     * @return one line of text, any characters
     */
    String title();
}
