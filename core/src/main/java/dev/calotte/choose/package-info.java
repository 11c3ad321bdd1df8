/**
 * The inverse questions: does a cover fit its stock ({@link dev.calotte.choose.CoverFit}), what helps if it does not
 * ({@link dev.calotte.choose.Mends}), what is the largest dome that does ({@link dev.calotte.choose.WidestFor}), what is
 * the largest from so much stock ({@link dev.calotte.choose.WidestFrom}), what a little less or more dome takes ({@link
 * dev.calotte.choose.StockCurve}), and where seams save stock ({@link dev.calotte.choose.SeamSaving}). It knows no file
 * formats.
 */
@NullMarked
package dev.calotte.choose;

import org.jspecify.annotations.NullMarked;
