/**
 * Work shared by several threads: {@link dev.calotte.threads.Crew}. Results come in the order of the work, whatever was
 * ready first, so that the same brief gives the same bytes for any number of threads. This package knows nothing of
 * domes.
 */
@NullMarked
package dev.calotte.threads;

import org.jspecify.annotations.NullMarked;
