package dev.calotte.dome;

import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Fitting;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;

/**
 * All that decides the geometry of a dome.
 *
 * @param solid the solid that is divided
 * @param breakdown how its faces are divided
 * @param spacing how the points are spaced
 * @param fitting what {@link Spacing#FITTED} is to reach; the other spacings do not use it
 * @param up what part of the solid is the crown
 * @param keep what part of the sphere stays
 * @param base where the hubs of the base ring stand
 * @param size how large it is
 */
public record DomeSpec(
        Solid solid, Breakdown breakdown, Spacing spacing, Fitting fitting, Up up, Keep keep, Base base, Size size) {

    /**
     * A whole sphere with chord spacing and a corner up, as it is.
     *
     * @param solid the solid that is divided
     * @param breakdown how its faces are divided
     * @param size how large it is
     * @return the specification
     */
    public static DomeSpec of(Solid solid, Breakdown breakdown, Size size) {
        return new DomeSpec(
                solid, breakdown, Spacing.CHORD, Fitting.DEFAULT, Up.VERTEX, new Keep.Whole(), Base.AS_IS, size);
    }

    /**
     * The same of another solid.
     *
     * @param other the solid that is divided
     * @return a copy
     */
    public DomeSpec withSolid(Solid other) {
        return new DomeSpec(other, breakdown, spacing, fitting, up, keep, base, size);
    }

    /**
     * The same with another breakdown.
     *
     * @param other how its faces are divided
     * @return a copy
     */
    public DomeSpec withBreakdown(Breakdown other) {
        return new DomeSpec(solid, other, spacing, fitting, up, keep, base, size);
    }

    /**
     * The same with another spacing.
     *
     * @param other how the points are spaced
     * @return a copy
     */
    public DomeSpec withSpacing(Spacing other) {
        return new DomeSpec(solid, breakdown, other, fitting, up, keep, base, size);
    }

    /**
     * The same with another goal for a fitted spacing.
     *
     * @param other what a fitted spacing is to reach
     * @return a copy
     */
    public DomeSpec withFitting(Fitting other) {
        return new DomeSpec(solid, breakdown, spacing, other, up, keep, base, size);
    }

    /**
     * The same with another base.
     *
     * @param other where the hubs of the base ring stand
     * @return a copy
     */
    public DomeSpec withBase(Base other) {
        return new DomeSpec(solid, breakdown, spacing, fitting, up, keep, other, size);
    }

    /**
     * The same with another crown.
     *
     * @param other what part of the solid is up
     * @return a copy
     */
    public DomeSpec withUp(Up other) {
        return new DomeSpec(solid, breakdown, spacing, fitting, other, keep, base, size);
    }

    /**
     * The same with another part kept.
     *
     * @param other what part of the sphere stays
     * @return a copy
     */
    public DomeSpec withKeep(Keep other) {
        return new DomeSpec(solid, breakdown, spacing, fitting, up, other, base, size);
    }

    /**
     * The same in another size.
     *
     * @param other how large it is
     * @return a copy
     */
    public DomeSpec withSize(Size other) {
        return new DomeSpec(solid, breakdown, spacing, fitting, up, keep, base, other);
    }
}
