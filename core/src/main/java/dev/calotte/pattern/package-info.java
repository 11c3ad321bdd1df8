/**
 * What scissors, saw and router need of a panel: {@link dev.calotte.pattern.Patterns} makes from the kinds of panels and
 * a {@link dev.calotte.pattern.Cover} the flat shapes to cut, with allowances, corners, holes, notches, bevels and
 * grain, each with its net shape beside it. It knows nothing of the stock that they are cut from.
 */
@NullMarked
package dev.calotte.pattern;

import org.jspecify.annotations.NullMarked;
