/**
 * The inverse questions: does a cover fit its stock ({@link dev.calotte.choose.CoverFit}), what helps if it does not
 * ({@link dev.calotte.choose.Mends}), and what is the largest dome that does ({@link dev.calotte.choose.WidestFor}). It
 * knows no file formats.
 */
package dev.calotte.choose;
