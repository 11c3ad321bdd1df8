package dev.calotte.cli.brief;

/** What was seen in a brief, in a form that can be printed into a message. */
public final class Seen {

    private static final int LONGEST = 40;
    private static final int ZERO_WIDTH_NON_JOINER = 0x200c;
    private static final int ZERO_WIDTH_JOINER = 0x200d;
    private static final int LAST_TWO_OF_A_PLANE = 0xfffe;
    private static final String DOTS = "…";

    private Seen() {}

    /** A text, cut short and with a question mark for every character that is not one to be seen. */
    static String text(String raw) {
        int count = raw.codePointCount(0, raw.length());
        if (count <= LONGEST) {
            return printable(raw);
        }
        return printable(raw.substring(0, raw.offsetByCodePoints(0, LONGEST))) + DOTS;
    }

    /**
     * A text as a terminal may print it.
     *
     * @param raw any text
     * @return the same number of characters, none of which moves the cursor or hides
     */
    public static String printable(String raw) {
        StringBuilder text = new StringBuilder(raw.length());
        raw.codePoints().forEach(c -> text.appendCodePoint(c == '\t' ? ' ' : isPrintable(c) ? c : '?'));
        return text.toString();
    }

    /** Whether a character can be seen, or is a space, and may stand in XML. */
    static boolean isPrintable(int c) {
        if (c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER) {
            return true; // spelling in several scripts
        }
        return (c & LAST_TWO_OF_A_PLANE) != LAST_TWO_OF_A_PLANE && isVisible(Character.getType(c));
    }

    private static boolean isVisible(int type) {
        return switch (type) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }

    /** What sort of thing stands somewhere. */
    static String sort(Node node) {
        if (node instanceof Node.Mapping) {
            return "keys with values stand here.";
        }
        if (node instanceof Node.Sequence) {
            return "a list stands here.";
        }
        return node instanceof Node.Text value && !value.value().isEmpty()
                ? "the text " + text(value.value()) + " stands here."
                : "there is no value.";
    }
}
