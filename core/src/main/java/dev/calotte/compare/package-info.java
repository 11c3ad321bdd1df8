/**
 * Which domes could stand in a dome's place, what each of them takes, and which are the best. A
 * {@link dev.calotte.compare.Request} says what stays as it is, {@link dev.calotte.compare.Candidates} lists the domes,
 * and a {@link dev.calotte.compare.Comparison} ranks them. It knows no file formats.
 */
@NullMarked
package dev.calotte.compare;

import org.jspecify.annotations.NullMarked;
