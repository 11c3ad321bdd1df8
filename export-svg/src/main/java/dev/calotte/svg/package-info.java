/**
 * Drawings and pictures as SVG. Entry types: {@link dev.calotte.svg.SvgWriter} for one document,
 * {@link dev.calotte.svg.SvgExporter} for all files. A drawing becomes a cut sheet that machines read, a picture a page
 * that people read; the two share nothing but the XML. Knows neither domes nor other formats.
 */
@NullMarked
package dev.calotte.svg;

import org.jspecify.annotations.NullMarked;
