package dev.calotte.stl;

import dev.calotte.export.Facets;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Reads the variant of words and numbers, in whatever lines they stand. */
final class AsciiReader {

    private static final int LONGEST = 256;
    private static final int LONGEST_NUMBER = 40;
    private static final List<String> LOOP = List.of("outer", "loop");

    private final InputStream in;
    private final StringBuilder text = new StringBuilder();
    private int line = 1;
    private int next;

    AsciiReader(InputStream in) {
        this.in = in;
    }

    Facets read() throws IOException {
        advance();
        expect("solid");
        String title = restOfLine();
        Numbers numbers = new Numbers();
        String word = word();
        for (int facet = 0; word.equals("facet"); facet++) {
            if (facet == StlSolidReader.MOST_FACETS) {
                throw wrong("the file has more than " + StlSolidReader.MOST_FACETS + " facets");
            }
            facet(numbers);
            word = word();
        }
        if (!word.equals("endsolid")) {
            throw wrong("\"facet\" or \"endsolid\" should stand here");
        }
        restOfLine();
        if (!word().isEmpty()) {
            throw wrong("the file goes on after \"endsolid\"; a file of several solids is not read");
        }
        return new Facets(title, numbers.all());
    }

    private void facet(Numbers numbers) throws IOException {
        expect("normal");
        for (int axis = 0; axis < 3; axis++) {
            // a normal that is no number is allowed, since nothing is done with it
            word();
        }
        for (String word : LOOP) {
            expect(word);
        }
        for (int corner = 0; corner < 3; corner++) {
            expect("vertex");
            for (int axis = 0; axis < 3; axis++) {
                numbers.add(number());
            }
        }
        expect("endloop");
        expect("endfacet");
    }

    private void expect(String expected) throws IOException {
        if (!word().equals(expected)) {
            throw wrong("\"" + expected + "\" should stand here");
        }
    }

    private float number() throws IOException {
        String word = word();
        boolean plain =
                word.length() <= LONGEST_NUMBER && word.chars().allMatch(c -> "0123456789+-.eE".indexOf(c) >= 0);
        try {
            float number = plain ? Float.parseFloat(word) : Float.NaN;
            if (Float.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            throw wrong("a number should stand here");
        }
        throw wrong("a number should stand here, which single precision can hold");
    }

    /** The next word; empty at the end of the file. */
    private String word() throws IOException {
        while (isSpace()) {
            advance();
        }
        text.setLength(0);
        while (next >= 0 && !isSpace()) {
            append();
        }
        return text.toString();
    }

    private String restOfLine() throws IOException {
        text.setLength(0);
        while (next >= 0 && next != '\n') {
            append();
        }
        return Numbers.printable(text.toString());
    }

    private void append() throws IOException {
        if (text.length() == LONGEST) {
            throw wrong("a word or a title is longer than " + LONGEST + " characters");
        }
        text.append((char) next);
        advance();
    }

    private boolean isSpace() {
        return next == ' ' || next == '\t' || next == '\n' || next == '\r';
    }

    private void advance() throws IOException {
        line += next == '\n' ? 1 : 0;
        next = in.read();
    }

    private IOException wrong(String reason) {
        return new IOException("line " + line + ": " + reason);
    }
}
