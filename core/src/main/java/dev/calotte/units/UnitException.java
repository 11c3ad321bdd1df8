package dev.calotte.units;

/** Thrown when a text is not the quantity that it should be. Says what was seen and how to mend it. */
public final class UnitException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    /** What is wrong. */
    private final String what;
    /** What to do about it. */
    private final String mend;

    /**
     * Creates an exception.
     *
     * @param what what was seen and why it cannot be, one sentence
     * @param mend what to do about it, one sentence
     */
    public UnitException(String what, String mend) {
        super(what + " " + mend);
        this.what = what;
        this.mend = mend;
    }

    /**
     * What was seen and why it cannot be.
     *
     * @return one sentence
     */
    public String what() {
        return what;
    }

    /**
     * What to do about it.
     *
     * @return one sentence
     */
    public String mend() {
        return mend;
    }
}
