package dev.calotte.svg.read;

import java.io.IOException;

/** Thrown when a file is no SVG, or holds what cannot be read. Says in which line, and why. */
final class SvgFormatException extends IOException {

    private static final long serialVersionUID = 1L;

    SvgFormatException(int line, String reason) {
        super("line " + line + ": " + reason);
    }
}
