/**
 * Parts onto stock, with a bound that says how much better any other plan could be. {@link dev.calotte.nest.BarPlan}
 * cuts lengths from bars, {@link dev.calotte.nest.SheetPlan} lays convex polygons on sheets and rolls,
 * {@link dev.calotte.nest.BatchPlan} batch by batch where they are wanted in an order. Nothing here knows what the parts
 * are for, nor how a plan is written to a file.
 *
 * <p>How a plan can be proven, in plain words. A bar can be cut in so many ways, and a plan says how often each way is
 * used. If ways could be used by halves and thirds, the least would be quickly known (a linear programme); no plan of
 * whole bars can be better, so that number, rounded up, is the bound, and a plan that reaches it is the best there is.
 * The ways are too many to list: each length has a price, what one more of it would cost, and only ways whose lengths
 * are together worth more than the bar are added ({@code BarMix}). Sheets are treated the same, with ways that are
 * known to fit for the plan and all that may fit for the bound ({@code SheetMix}); where those are too many, as on rolls,
 * there is the area alone: parts grown by half the spacing lie side by side without a gap at best ({@code AreaBound}).
 * That bound cannot be reached by triangles with waste between them, so a plan that is not proven may well be the best.
 *
 * <p>Linear programmes are solved by {@code Simplex}, a few dozen rows at most: it gives the prices of the rows, which
 * the simplex of Commons Math does not, and which the generation of columns needs. So no other library is needed.
 */
@NullMarked
package dev.calotte.nest;

import org.jspecify.annotations.NullMarked;
