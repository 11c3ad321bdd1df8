/**
 * Solids as STL, and all jigs together as 3MF, and facets read from STL. Entry types:
 * {@link dev.calotte.stl.StlExporter}, {@link dev.calotte.stl.StlSolidReader}. A file of single-precision numbers can tear a
 * surface that was closed, so the surface is proven again on the numbers that are written. Knows neither domes nor other
 * formats.
 */
@NullMarked
package dev.calotte.stl;

import org.jspecify.annotations.NullMarked;
