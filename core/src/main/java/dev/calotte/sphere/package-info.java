/**
 * Spheres of triangles: a {@link dev.calotte.sphere.Solid} divided by a {@link dev.calotte.sphere.Breakdown}, its
 * points placed by a {@link dev.calotte.sphere.Spacing}, makes a {@link dev.calotte.sphere.SphereMesh} of radius 1.
 * Every point is known by its {@link dev.calotte.sphere.Site}, a place in whole numbers on the solid, never by
 * nearness. Knows nothing of what part of the sphere is built.
 *
 * <p>How points get their places, in plain words. {@code chord}: rule the flat face into equal triangles and blow it up
 * like a ball; triangles in the middle of the face are stretched most. {@code arc}: cut the face's three edges, already
 * bent, into equal parts and join opposite cuts by the straightest lines on the ball; three of them nearly meet at each
 * point, in a triangle too small to see, and its middle is taken. {@code fitted}: begin there, and nudge all points that
 * symmetry lets move, a little at a time, so that the widest panel becomes narrower, or the kinds fewer, while the longest
 * strut stays within its ratio to the shortest; each nudge is the best one for a straightened picture of the problem,
 * trusted only nearby, and several starts guard against stopping in a hollow that is not the deepest.
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
