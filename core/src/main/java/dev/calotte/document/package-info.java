/**
 * Neutral documents, all that an exporter sees: a {@link dev.calotte.document.Drawing} of shapes to be worked, a
 * {@link dev.calotte.document.Picture} for people, a {@link dev.calotte.document.Wireframe} of points, lines and faces
 * in space, a {@link dev.calotte.document.Mesh} of a closed solid, {@link dev.calotte.document.Rods} joined at their
 * ends, a {@link dev.calotte.document.PrintPlate} of jigs by what they have to hold, and a
 * {@link dev.calotte.document.Book} to work by. Millimetres throughout. Knows neither domes nor file formats.
 */
@NullMarked
package dev.calotte.document;

import org.jspecify.annotations.NullMarked;
