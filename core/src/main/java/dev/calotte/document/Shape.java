package dev.calotte.document;

/** Something that a tool follows. Millimetres, y upwards. */
public sealed interface Shape permits Polyline, Circle {

    /**
     * What is done along it.
     *
     * @return the operation
     */
    Operation operation();
}
