/**
 * Documents in space, made from a dome: {@link dev.calotte.solid.FrameWires} as points, lines and faces,
 * {@link dev.calotte.solid.PrintModels} to print at a scale, and {@link dev.calotte.solid.Jigs} that help to build.
 * Knows nothing of file formats.
 */
@NullMarked
package dev.calotte.solid;

import org.jspecify.annotations.NullMarked;
