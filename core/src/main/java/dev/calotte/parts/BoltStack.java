package dev.calotte.parts;

import java.util.Optional;

/**
 * The bolt through all flattened ends of a hub.
 *
 * <p>It reaches through the ends, each twice the tube's wall, two washers, a nut and two turns of the thread, and is
 * rounded up to 5 mm. A nut is 0.8 and a washer 0.2 of the bolt's diameter; common practice, no source. The thread's
 * pitch is the coarse one (ISO 262).
 *
 * @param struts how many ends there are
 * @param diameterMm the bolt: the thickest usual one that has at least half a millimetre of play in the hole
 * @param gripMm how thick all the ends are together
 * @param lengthMm how long the bolt is below its head
 */
public record BoltStack(int struts, double diameterMm, double gripMm, double lengthMm) {

    private static final double PLAY_MM = 0.5;
    private static final double STEP_MM = 5;
    private static final double ROUNDING_MM = 1e-6;
    private static final double NUT = 0.8;
    private static final double WASHER = 0.2;

    private enum Bolt {
        M24(24, 3),
        M20(20, 2.5),
        M16(16, 2),
        M12(12, 1.75),
        M10(10, 1.5),
        M8(8, 1.25),
        M6(6, 1),
        M5(5, 0.8),
        M4(4, 0.7);

        private final double diameterMm;
        private final double pitchMm;

        Bolt(double diameterMm, double pitchMm) {
            this.diameterMm = diameterMm;
            this.pitchMm = pitchMm;
        }
    }

    /** The bolt of a hub; nothing where the hole takes no usual bolt or the wall is not known. */
    static Optional<BoltStack> of(Ends.Flattened ends, int struts) {
        if (ends.wallMm().isEmpty()) {
            return Optional.empty();
        }
        double grip = struts * 2 * ends.wallMm().getAsDouble();
        for (Bolt bolt : Bolt.values()) {
            if (bolt.diameterMm + PLAY_MM <= ends.holeMm()) {
                double needed = grip + (2 * WASHER + NUT) * bolt.diameterMm + 2 * bolt.pitchMm;
                return Optional.of(new BoltStack(
                        struts, bolt.diameterMm, grip, STEP_MM * Math.ceil((needed - ROUNDING_MM) / STEP_MM)));
            }
        }
        return Optional.empty();
    }
}
