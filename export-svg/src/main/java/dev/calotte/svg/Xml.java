package dev.calotte.svg;

import dev.calotte.units.TextBuffer;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;

/** Writes elements as they come, indented, in UTF-8; keeps nothing but the names of those that are open. */
final class Xml {

    /** A tenth of a micrometre. */
    static final int DECIMALS = 4;

    /** As long as most files are. */
    private static final int SHORT = 1 << 14;

    private final OutputStream out;
    private final TextBuffer pending = new TextBuffer(SHORT).add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    Xml(OutputStream out) {
        this.out = out;
    }

    /** Takes a file that nobody reads. */
    static Xml nowhere() {
        return new Xml(OutputStream.nullOutputStream());
    }

    /** Begins an element inside the one that is open. */
    Xml open(String element) throws IOException {
        finishTag();
        newLine();
        pending.add('<').add(element);
        open.push(element);
        inTag = true;
        return this;
    }

    /** Gives the element just begun an attribute. */
    Xml with(String attribute, String value) {
        pending.add(' ').add(attribute).add("=\"");
        XmlText.add(pending, value);
        pending.add('"');
        return this;
    }

    Xml with(String attribute, double value) {
        pending.add(' ').add(attribute).add("=\"");
        pending.addNumber(value, DECIMALS, 0);
        pending.add('"');
        return this;
    }

    /** Adds an element that someone else puts into words, all of it. */
    void child(Consumer<TextBuffer> words) throws IOException {
        finishTag();
        newLine();
        words.accept(pending);
        pending.drainIfFull(out);
    }

    /** Ends the element that is open. */
    Xml close() throws IOException {
        String element = open.pop();
        if (inTag) {
            pending.add("/>");
            inTag = false;
        } else {
            newLine();
            pending.add("</").add(element).add('>');
        }
        pending.drainIfFull(out);
        return this;
    }

    /** Ends the element just begun, which holds a text and nothing else. */
    Xml close(String text) throws IOException {
        pending.add('>');
        XmlText.add(pending, text);
        pending.add("</").add(open.pop()).add('>');
        inTag = false;
        pending.drainIfFull(out);
        return this;
    }

    /** Ends the file and hands everything on to the stream. */
    void end() throws IOException {
        pending.add('\n');
        drain();
        out.flush();
    }

    private void finishTag() {
        if (inTag) {
            pending.add('>');
            inTag = false;
        }
    }

    private void newLine() {
        pending.add('\n');
        for (int depth = open.size(); depth > 0; depth--) {
            pending.add("  ");
        }
    }

    private void drain() throws IOException {
        pending.drainTo(out);
    }
}
