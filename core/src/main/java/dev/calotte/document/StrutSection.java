package dev.calotte.document;

/**
 * What a strut looks like across.
 *
 * @param round whether it is round; both sizes are its diameter then
 * @param widthMm along the surface of the dome
 * @param depthMm towards the inside of the dome
 */
public record StrutSection(boolean round, double widthMm, double depthMm) {

    /**
     * Checks the sizes.
     *
     * @param round whether it is round
     * @param widthMm along the surface
     * @param depthMm towards the inside
     * @throws IllegalArgumentException if a size is not finite and above 0, or a round section has two
     */
    public StrutSection {
        if (!(widthMm > 0 && depthMm > 0 && Double.isFinite(widthMm) && Double.isFinite(depthMm))) {
            throw new IllegalArgumentException("no strut is " + widthMm + " by " + depthMm + " mm");
        }
        if (round && widthMm != depthMm) {
            throw new IllegalArgumentException("a round strut has one diameter");
        }
    }

    /**
     * A tube, rod or dowel.
     *
     * @param diameterMm its outer diameter
     * @return the section
     */
    public static StrutSection round(double diameterMm) {
        return new StrutSection(true, diameterMm, diameterMm);
    }

    /**
     * Timber or square tube.
     *
     * @param widthMm along the surface of the dome
     * @param depthMm towards the inside of the dome
     * @return the section
     */
    public static StrutSection rectangle(double widthMm, double depthMm) {
        return new StrutSection(false, widthMm, depthMm);
    }
}
