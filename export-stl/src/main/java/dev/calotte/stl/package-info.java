/**
 * Solids as STL, and all jigs together as 3MF. Entry type: {@link dev.calotte.stl.StlExporter}. A file of single-precision numbers can tear a surface
 * that was closed, so the surface is proven again on the numbers that are written. Knows neither domes nor other
 * formats.
 */
package dev.calotte.stl;
