/**
 * Documents in space, made from a dome: {@link dev.calotte.solid.FrameWires} as points, lines and faces, and
 * {@link dev.calotte.solid.DomeModel} as a closed solid to print. Knows nothing of file formats.
 */
package dev.calotte.solid;
