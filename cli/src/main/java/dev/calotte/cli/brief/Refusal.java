package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import java.util.Optional;

/** Why a value is not taken; whoever asked for the value knows where it stands, unless the refusal says so itself. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final Code code;
    private final String what;
    private final String mend;
    private final transient Optional<Place> place;

    private Refusal(Code code, String what, String mend, Optional<Place> place) {
        super(what, null, false, false);
        this.code = code;
        this.what = what;
        this.mend = mend;
        this.place = place;
    }

    Refusal(Code code, String what, String mend) {
        this(code, what, mend, Optional.empty());
    }

    static Refusal wrong(String what, String mend) {
        return new Refusal(Code.WRONG_VALUE, what, mend);
    }

    /** The same, with its place. */
    Refusal at(Place here) {
        return new Refusal(code, what, mend, Optional.of(here));
    }

    Code code() {
        return code;
    }

    String what() {
        return what;
    }

    String mend() {
        return mend;
    }

    Optional<Place> place() {
        return place;
    }
}
