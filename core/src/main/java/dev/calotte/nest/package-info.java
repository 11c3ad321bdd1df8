/**
 * Parts onto stock, with a bound that says how much better any other plan could be. {@link dev.calotte.nest.BarPlan}
 * cuts lengths from bars, {@link dev.calotte.nest.SheetPlan} lays convex polygons on sheets and rolls,
 * {@link dev.calotte.nest.BatchPlan} batch by batch where they are wanted in an order. Nothing here knows what the parts
 * are for, nor how a plan is written to a file.
 *
 * <p>Linear programmes are solved by {@code Simplex}, a few dozen rows at most: it gives the prices of the rows, which
 * the simplex of Commons Math does not, and which the generation of columns needs. So no other library is needed.
 */
@NullMarked
package dev.calotte.nest;

import org.jspecify.annotations.NullMarked;
