/**
 * How pieces come together. {@link dev.calotte.assembly.PieceMarks} gives every hub, strut and panel of a dome the mark
 * by which it is known on the part, in the lists and on the drawings. Knows nothing of file formats.
 */
package dev.calotte.assembly;
