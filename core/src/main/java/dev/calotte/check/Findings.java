package dev.calotte.check;

import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/** Gathers what is found in one file. */
public final class Findings {

    private final String file;
    private final String mend;
    private final List<Finding> list = new ArrayList<>();

    /**
     * None yet.
     *
     * @param file the file that is looked through
     * @param mend what to do about whatever is found there
     */
    public Findings(String file, String mend) {
        this.file = file;
        this.mend = mend;
    }

    /**
     * The file that is looked through.
     *
     * @return its name
     */
    public String file() {
        return file;
    }

    /**
     * Adds one.
     *
     * @param fault what sort of fault it is
     * @param place the piece or place, empty for the whole file
     * @param what what is wrong, one sentence
     */
    public void add(Fault fault, String place, String what) {
        list.add(new Finding(fault, file, place, what, mend));
    }

    /** Adds one unless two values agree. */
    void same(String place, String name, double seen, double expected, double within) {
        if (!(Math.abs(seen - expected) <= within)) {
            add(Fault.DIFFERENT, place, name + " is " + text(seen) + ", it should be " + text(expected) + ".");
        }
    }

    /** Adds one unless two texts agree. */
    void same(String place, String name, String seen, String expected) {
        if (!seen.equals(expected)) {
            add(Fault.DIFFERENT, place, name + " is " + seen + ", it should be " + expected + ".");
        }
    }

    static String text(double value) {
        return Double.isFinite(value) ? NumberText.trimmed(value, 6) : "no number";
    }

    /**
     * What was found.
     *
     * @return in the order in which it was found
     */
    public List<Finding> list() {
        return List.copyOf(list);
    }
}
