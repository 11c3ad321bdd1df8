package dev.calotte.problem;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when an input cannot be worked with. Carries all problems found, at least one.
 *
 * <pre>{@code
 * try {
 *     Dome.of(spec.withKeep(new Keep.Rows(5, 7)));
 * } catch (CalotteException e) {
 *     e.problems().forEach(problem -> System.out.println(problem.line()));
 * }
 * }</pre>
 */
public final class CalotteException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Creates an exception for several problems.
     *
     * @param problems what was found, in the order of the input
     * @throws IllegalArgumentException if the list is empty
     */
    public CalotteException(List<Problem> problems) {
        super(problems.stream().map(Problem::line).collect(Collectors.joining("\n")));
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("a CalotteException carries at least one problem");
        }
        this.problems = List.copyOf(problems);
    }

    /**
     * Creates an exception for one problem.
     *
     * @param code the family of the problem
     * @param where the place in the words of the brief
     * @param what what was seen and why it cannot be
     * @param mend what to do about it
     */
    public CalotteException(Problem.Code code, String where, String what, String mend) {
        this(List.of(new Problem(code, where, what, mend)));
    }

    /**
     * What was found.
     *
     * @return the problems, in the order of the input; unmodifiable
     */
    public List<Problem> problems() {
        return problems;
    }
}
