package dev.calotte.dome;

import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;

/**
 * All that decides the geometry of a dome.
 *
 * @param solid the solid that is divided
 * @param breakdown how its faces are divided
 * @param spacing how the points are spaced
 * @param up what part of the solid is the crown
 * @param keep what part of the sphere stays
 * @param size how large it is
 */
public record DomeSpec(Solid solid, Breakdown breakdown, Spacing spacing, Up up, Keep keep, Size size) {

    /**
     * A whole sphere with chord spacing and a corner up.
     *
     * @param solid the solid that is divided
     * @param breakdown how its faces are divided
     * @param size how large it is
     * @return the specification
     */
    public static DomeSpec of(Solid solid, Breakdown breakdown, Size size) {
        return new DomeSpec(solid, breakdown, Spacing.CHORD, Up.VERTEX, new Keep.Whole(), size);
    }

    /**
     * The same with another spacing.
     *
     * @param other how the points are spaced
     * @return a copy
     */
    public DomeSpec withSpacing(Spacing other) {
        return new DomeSpec(solid, breakdown, other, up, keep, size);
    }

    /**
     * The same with another crown.
     *
     * @param other what part of the solid is up
     * @return a copy
     */
    public DomeSpec withUp(Up other) {
        return new DomeSpec(solid, breakdown, spacing, other, keep, size);
    }

    /**
     * The same with another part kept.
     *
     * @param other what part of the sphere stays
     * @return a copy
     */
    public DomeSpec withKeep(Keep other) {
        return new DomeSpec(solid, breakdown, spacing, up, other, size);
    }

    /**
     * The same in another size.
     *
     * @param other how large it is
     * @return a copy
     */
    public DomeSpec withSize(Size other) {
        return new DomeSpec(solid, breakdown, spacing, up, keep, other);
    }
}
