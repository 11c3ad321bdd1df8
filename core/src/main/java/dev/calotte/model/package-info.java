/**
 * The scale model as drawings for a cutter: {@link dev.calotte.model.ModelDrawings} makes a kit of slotted discs and
 * struts, a folded net of card, or single panels with tabs, as a {@link dev.calotte.model.ModelSpec} asks. Sizes of the
 * dome are divided by the scale; boards, kerf, fit, tabs and letters are not. Knows nothing of file formats.
 */
@NullMarked
package dev.calotte.model;

import org.jspecify.annotations.NullMarked;
