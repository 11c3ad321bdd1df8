package dev.calotte.compare;

import dev.calotte.problem.Problem;

/**
 * A candidate that cannot be built.
 *
 * @param candidate the candidate
 * @param problem the first of the reasons
 */
public record RuledOut(Candidate candidate, Problem problem) {}
