/**
 * Drawings and wireframes as DXF. Entry type: {@link dev.calotte.dxf.DxfExporter}. A document is drawn twice, first with
 * a pen that only looks (extents, layers, refusals) and then with one that writes, so that a file of any length needs no
 * memory and a refused document leaves no half file. Knows neither domes nor other formats.
 */
package dev.calotte.dxf;
