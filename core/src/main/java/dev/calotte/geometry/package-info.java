/**
 * Geometry that every room above uses: {@link dev.calotte.geometry.Triangle} by its sides, how triangles join into a
 * {@link dev.calotte.geometry.TriangleNet}, and how measured values gather into
 * {@link dev.calotte.geometry.Groups}. Knows nothing of spheres and domes.
 */
@NullMarked
package dev.calotte.geometry;

import org.jspecify.annotations.NullMarked;
