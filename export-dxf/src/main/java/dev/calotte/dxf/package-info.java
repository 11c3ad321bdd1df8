/**
 * Drawings and wireframes as DXF in three dialects, and lines and wireframes read from DXF. Entry types: {@link
 * dev.calotte.dxf.DxfWriter}, {@link dev.calotte.dxf.DxfOutlines}; {@link dev.calotte.dxf.DxfExporter}, {@link
 * dev.calotte.dxf.DxfShapeReader} and {@link dev.calotte.dxf.DxfWireReader} are those that others find. A document is
 * drawn twice, first with a pen that only looks (extents, layers, refusals) and then with one that writes, so that a
 * file of any length needs no memory and a refused document leaves no half file. What stands round the entities is in
 * {@code release-12.txt} and {@code release-2000.txt}. Knows neither domes nor other formats.
 */
@NullMarked
package dev.calotte.dxf;

import org.jspecify.annotations.NullMarked;
