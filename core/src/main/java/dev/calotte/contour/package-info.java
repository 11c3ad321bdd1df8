/**
 * How a tool follows what is drawn: {@link dev.calotte.contour.Contours} makes of a drawing one with outlines that begin
 * elsewhere, arcs in chords, or edges that two pieces share cut once; {@link dev.calotte.contour.DoubleCuts} finds what
 * would be cut twice. Sees documents only, and knows neither domes nor file formats.
 */
@NullMarked
package dev.calotte.contour;

import org.jspecify.annotations.NullMarked;
