/**
 * The contract between documents and file formats: an {@link dev.calotte.export.Exporter} writes the documents it
 * accepts, as the files ({@link dev.calotte.export.Rendition}) that a {@link dev.calotte.export.Finish} asks for, and
 * {@link dev.calotte.export.Exporters} finds those that are installed. The other way, an
 * {@link dev.calotte.export.OutlineReader} reads lines from a file, and {@link dev.calotte.export.Border} takes the one
 * outline from them. Knows no format itself.
 */
package dev.calotte.export;
