/**
 * What is wrong with an input, and how to mend it. A {@link dev.calotte.problem.Problem} names the place in the words
 * of the brief; a {@link dev.calotte.problem.CalotteException} carries every problem that was found, never the first
 * only. This package knows nothing else of the library.
 */
@NullMarked
package dev.calotte.problem;

import org.jspecify.annotations.NullMarked;
