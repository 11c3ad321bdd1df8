package dev.calotte.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What stands round the entities of a file, as tags with names for what is only known when the file is written.
 *
 * @param lines the tags and marks of places, in order
 */
record Scaffold(List<Line> lines) {

    /** The code of a line that is no tag but marks a place. */
    static final int MARK = -1;

    private static final String COMMENT = "#";
    private static final String MARKS = ":";

    /**
     * A tag, or a place in the file.
     *
     * @param code its group code, or {@link #MARK}
     * @param value its value, or what comes at the place
     */
    record Line(int code, String value) {

        static Line of(String text) {
            if (text.startsWith(MARKS)) {
                return new Line(MARK, text.substring(1));
            }
            int space = text.indexOf(' ');
            return space < 0
                    ? new Line(Integer.parseInt(text), "")
                    : new Line(Integer.parseInt(text.substring(0, space)), text.substring(space + 1));
        }

        boolean marks(String place) {
            return code == MARK && value.equals(place);
        }
    }

    static Scaffold of(Dialect dialect) throws IOException {
        try (InputStream file = Scaffold.class.getResourceAsStream(dialect.scaffold())) {
            String text = new String(file.readAllBytes(), StandardCharsets.US_ASCII);
            return new Scaffold(text.lines()
                    .filter(line -> !line.startsWith(COMMENT))
                    .map(Line::of)
                    .toList());
        }
    }
}
