package dev.calotte.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.calotte.problem.Problem.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

class CalotteExceptionTest {

    private static final Problem PLACED = new Problem(Code.MISSING, "dome.size", "there is no size.", "Give one.");
    private static final Problem WHOLE = new Problem(Code.UNREADABLE, "", "this is no brief.", "Write one.");

    @Test
    void lineNamesThePlaceIfThereIsOne() {
        assertThat(PLACED.line()).isEqualTo("dome.size: there is no size. Give one.");
        assertThat(WHOLE.line()).isEqualTo("this is no brief. Write one.");
    }

    @Test
    void messageHoldsEveryProblem() {
        CalotteException exception = new CalotteException(List.of(PLACED, WHOLE));
        assertThat(exception).hasMessage("dome.size: there is no size. Give one.\nthis is no brief. Write one.");
        assertThat(exception.problems()).containsExactly(PLACED, WHOLE);
    }

    @Test
    void oneProblemNeedsNoList() {
        CalotteException exception = new CalotteException(Code.MISSING, "dome.size", "there is no size.", "Give one.");
        assertThat(exception.problems()).containsExactly(PLACED);
    }

    @Test
    void noProblemIsNoException() {
        List<Problem> none = List.of();
        assertThatIllegalArgumentException().isThrownBy(() -> new CalotteException(none));
    }
}
