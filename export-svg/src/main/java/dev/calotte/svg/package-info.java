/**
 * Drawings and pictures as SVG. Entry type: {@link dev.calotte.svg.SvgExporter}. A drawing becomes a cut sheet that
 * machines read, a picture a page that people read; the two share nothing but the XML. Knows neither domes nor other
 * formats.
 */
package dev.calotte.svg;
