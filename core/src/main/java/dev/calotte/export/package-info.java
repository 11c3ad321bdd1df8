/**
 * The contract between documents and file formats: an {@link dev.calotte.export.Exporter} writes the documents it
 * accepts, as the files ({@link dev.calotte.export.Rendition}) that a {@link dev.calotte.export.Finish} asks for, and
 * {@link dev.calotte.export.Exporters} finds those that are installed. The other way, a
 * {@link dev.calotte.export.ShapeReader} reads lines from a file, a {@link dev.calotte.export.WireReader} wireframes and a
 * {@link dev.calotte.export.SolidReader} solids, each what the exporter of its format wrote and files of others, and
 * {@link dev.calotte.export.Border} takes the one outline from lines. Knows no format itself.
 */
@NullMarked
package dev.calotte.export;

import org.jspecify.annotations.NullMarked;
