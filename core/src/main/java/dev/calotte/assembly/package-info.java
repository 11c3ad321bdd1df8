/**
 * How pieces come together. {@link dev.calotte.assembly.PieceMarks} gives every hub, strut and panel of a dome the mark
 * by which it is known on the part, in the lists and on the drawings, and {@link dev.calotte.assembly.PanelMarks} finds
 * panels by it; {@link dev.calotte.assembly.OpeningReport} says what an opening takes and what is left to be framed;
 * {@link dev.calotte.assembly.Patches} groups panels into units that are made first, as an
 * {@link dev.calotte.assembly.AssemblySpec} asks. Knows nothing of file formats.
 */
@NullMarked
package dev.calotte.assembly;

import org.jspecify.annotations.NullMarked;
