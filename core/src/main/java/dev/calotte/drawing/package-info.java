/**
 * Flat documents made from a dome: {@link dev.calotte.drawing.PanelPatterns} to cut by at full size,
 * {@link dev.calotte.drawing.DomePicture} to look at and {@link dev.calotte.drawing.DomeDrawings} to build by. Knows
 * nothing of file formats.
 */
@NullMarked
package dev.calotte.drawing;

import org.jspecify.annotations.NullMarked;
