package dev.calotte.sphere;

/**
 * What {@link Spacing#FITTED} is to reach, and what binds it.
 *
 * @param goal what is made as small as can be
 * @param strutRatio how many times longer the longest strut may be than the shortest, at least 1
 */
public record Fitting(Goal goal, double strutRatio) {

    /** Width, with struts up to a quarter longer than the shortest. */
    public static final Fitting DEFAULT = new Fitting(Goal.WIDTH, 1.25);

    /** What is made as small as can be. */
    public enum Goal {
        /** The narrowest width of the widest panel. */
        WIDTH,
        /** The number of kinds of panels, and of several answers the one with the least width. */
        FEW_KINDS
    }

    /**
     * Checks the ratio.
     *
     * @param goal what is made as small as can be
     * @param strutRatio how many times longer the longest strut may be than the shortest
     * @throws IllegalArgumentException if the ratio is below 1 or not finite
     */
    public Fitting {
        if (!(strutRatio >= 1 && Double.isFinite(strutRatio))) {
            throw new IllegalArgumentException("no strut ratio is " + strutRatio);
        }
    }
}
