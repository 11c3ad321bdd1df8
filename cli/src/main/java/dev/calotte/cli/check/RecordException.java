package dev.calotte.cli.check;

import java.io.IOException;

/** A record that does not say what it should; the message tells where. */
final class RecordException extends IOException {

    private static final long serialVersionUID = 1L;

    RecordException(String message) {
        super(message);
    }
}
