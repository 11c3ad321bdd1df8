/**
 * Reads a dome together again from what was written about it, and says what does not agree: {@link
 * dev.calotte.check.RecordCheck} for the record itself, {@link dev.calotte.check.Closure} for its covers in space, {@link
 * dev.calotte.check.PlanCheck}, {@link dev.calotte.check.DrawingCheck}, {@link dev.calotte.check.TableCheck} and {@link
 * dev.calotte.check.SolidCheck} for the files. It knows no format, and computes nothing in the way in which it was computed
 * first: it has only the places of hubs and the shapes of pieces, as who builds the dome has.
 */
@NullMarked
package dev.calotte.check;

import org.jspecify.annotations.NullMarked;
