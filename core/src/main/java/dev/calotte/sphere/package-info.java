/**
 * Spheres of triangles: a {@link dev.calotte.sphere.Solid} divided by a {@link dev.calotte.sphere.Breakdown}, its
 * points placed by a {@link dev.calotte.sphere.Spacing}, makes a {@link dev.calotte.sphere.SphereMesh} of radius 1.
 * Every point is known by its {@link dev.calotte.sphere.Site}, a place in whole numbers on the solid, never by
 * nearness. Knows nothing of what part of the sphere is built.
 *
 * <p>Fitted spacing is looked for in {@code Fitted}: {@code VertexOrbits} and {@code Web} gather what the symmetry makes
 * equal, {@code Fitter} and {@code Descent} move what is free, {@code FewKinds} makes kinds equal.
 *
 * <p>Lattice and counts after Caspar and Klug (Cold Spring Harbor Symp. Quant. Biol. 27, 1962, the triangulation
 * number) and Coxeter ("Virus macromolecules and geodesic domes", 1971, the symbol {3,q+}b,c); both cited from memory.
 */
@NullMarked
package dev.calotte.sphere;

import org.jspecify.annotations.NullMarked;
