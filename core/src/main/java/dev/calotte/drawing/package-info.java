/**
 * Flat documents made from a dome: {@link dev.calotte.drawing.PanelPatterns} to cut by at full size,
 * {@link dev.calotte.drawing.DomePicture} to look at and {@link dev.calotte.drawing.DomeDrawings} to build by. Knows
 * nothing of file formats.
 */
package dev.calotte.drawing;
