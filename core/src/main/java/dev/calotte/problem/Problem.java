package dev.calotte.problem;

/**
 * One thing that is wrong with an input.
 *
 * @param code the family of the problem, stable across versions
 * @param where the place in the words of the brief, for example {@code covers[0].stock.roll}; empty when the whole
 *     input is meant
 * @param what what was seen and why it cannot be, one sentence
 * @param mend what to do about it, one sentence
 */
public record Problem(Code code, String where, String what, String mend) {

    /** The families of problems. */
    public enum Code {
        /** The text cannot be read at all. */
        UNREADABLE,
        /** A key that the brief does not have. */
        UNKNOWN_KEY,
        /** A key that must be there is not. */
        MISSING,
        /** A value of the wrong sort: a word for a number, a length without its unit. */
        WRONG_VALUE,
        /** A value of the right sort that no dome can have. */
        IMPOSSIBLE,
        /** Two values that exclude each other. */
        CONFLICT,
        /** More than this program undertakes to compute. */
        TOO_LARGE,
        /** Part of the brief's language, and not in this version. */
        NOT_IN_THIS_VERSION,
        /** A file or folder that cannot be read or written. */
        FILE
    }

    /**
     * The problem in one line, {@code where: what mend}.
     *
     * @return the line, without the place when there is none
     */
    public String line() {
        return (where.isEmpty() ? "" : where + ": ") + what + " " + mend;
    }
}
