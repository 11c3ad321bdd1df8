/**
 * The contract between documents and file formats: an {@link dev.calotte.export.Exporter} writes the documents it
 * accepts, and {@link dev.calotte.export.Exporters} finds those that are installed. Knows no format itself.
 */
package dev.calotte.export;
