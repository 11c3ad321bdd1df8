package dev.calotte.svg;

import dev.calotte.units.NumberText;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes elements as they come, indented, in UTF-8; keeps nothing but the names of those that are open. */
final class Xml {

    /** A tenth of a micrometre. */
    static final int DECIMALS = 4;

    private static final int FULL = 1 << 13;

    private final OutputStream out;
    private final StringBuilder pending = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    Xml(OutputStream out) {
        this.out = out;
    }

    /** Begins an element inside the one that is open. */
    Xml open(String element) throws IOException {
        finishTag();
        newLine();
        pending.append('<').append(element);
        open.push(element);
        inTag = true;
        return this;
    }

    /** Gives the element just begun an attribute. */
    Xml with(String attribute, String value) {
        pending.append(' ').append(attribute).append("=\"");
        XmlText.append(pending, value);
        pending.append('"');
        return this;
    }

    Xml with(String attribute, double value) {
        pending.append(' ').append(attribute).append("=\"");
        NumberText.appendTrimmed(pending, value, DECIMALS);
        pending.append('"');
        return this;
    }

    /** Ends the element that is open. */
    Xml close() throws IOException {
        String element = open.pop();
        if (inTag) {
            pending.append("/>");
            inTag = false;
        } else {
            newLine();
            pending.append("</").append(element).append('>');
        }
        drainIfFull();
        return this;
    }

    /** Ends the element just begun, which holds a text and nothing else. */
    Xml close(String text) throws IOException {
        pending.append('>');
        XmlText.append(pending, text);
        pending.append("</").append(open.pop()).append('>');
        inTag = false;
        drainIfFull();
        return this;
    }

    /** Ends the file and hands everything on to the stream. */
    void end() throws IOException {
        pending.append('\n');
        drain();
        out.flush();
    }

    private void finishTag() {
        if (inTag) {
            pending.append('>');
            inTag = false;
        }
    }

    private void newLine() {
        pending.append('\n');
        for (int depth = open.size(); depth > 0; depth--) {
            pending.append("  ");
        }
    }

    private void drainIfFull() throws IOException {
        if (pending.length() >= FULL) {
            drain();
        }
    }

    private void drain() throws IOException {
        out.write(pending.toString().getBytes(StandardCharsets.UTF_8));
        pending.setLength(0);
    }
}
