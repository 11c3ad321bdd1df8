/**
 * Flat documents made from a dome: {@link dev.calotte.drawing.PanelPatterns} to cut by at full size and
 * {@link dev.calotte.drawing.DomePicture} to look at. Knows nothing of file formats.
 */
package dev.calotte.drawing;
