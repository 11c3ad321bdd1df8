/**
 * Lines read from SVG: our own cut files, and those of others that keep to the same few elements. Entry type:
 * {@link dev.calotte.svg.read.SvgShapeReader}. Whatever could change a line and is not understood is refused, never left
 * out. Knows nothing of how files are written.
 */
package dev.calotte.svg.read;
