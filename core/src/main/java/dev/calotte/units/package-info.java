/**
 * Texts with units and the numbers they mean. Inside the library lengths are millimetres, areas square millimetres and
 * angles radians; this package is the only place that knows inches, and
 * {@link dev.calotte.units.NumberText} the only one that writes numbers into files.
 */
@NullMarked
package dev.calotte.units;

import org.jspecify.annotations.NullMarked;
