package dev.calotte.dxf;

import java.io.IOException;

/** Thrown when a file is no DXF, or holds what cannot be read. Says in which line, and why. */
public final class DxfFormatException extends IOException {

    private static final long serialVersionUID = 1L;

    /** Where it was seen. */
    private final long line;

    DxfFormatException(long line, String reason) {
        super("line " + line + ": " + reason);
        this.line = line;
    }

    /**
     * Where the trouble is.
     *
     * @return the number of the line in the file, from 1
     */
    public long line() {
        return line;
    }
}
