package dev.calotte.parts;

import java.util.Optional;

/**
 * From node to node to the length on the saw, and back.
 *
 * <p>A flattened end lies along the plane that touches the sphere, at the axial angle to the chord. Its bend line stands
 * at the gap plus the flat from the hub's axis, so the tube between the bends spans the chord less those two times the
 * cosine of the angle; computed by hand here. With one bolt through all ends and equal gaps this is the usual rule: hole
 * to hole before bending is the chord plus 2 b (1 - cos), b from hole to bend.
 *
 * @param ends how the strut ends
 * @param nearMm from the hub's axis to the strut's end, at its one end
 * @param farMm the same at the other
 * @param axialAngleRad strut to tangent plane
 */
record StrutCut(Ends ends, double nearMm, double farMm, double axialAngleRad) {

    /** The length on the saw; 0 or less if nothing is left. */
    double cutMm(double lengthMm) {
        if (ends instanceof Ends.Flattened flat) {
            return straightMm(flat, lengthMm) + 2 * flat.flattenMm();
        }
        return lengthMm - (nearMm + farMm);
    }

    /** The length from node to node of a strut that is cut so long. */
    double lengthMm(double cutMm) {
        if (ends instanceof Ends.Flattened flat) {
            double straight = cutMm - 2 * flat.flattenMm();
            return alongMm(flat) + Math.sqrt(straight * straight - acrossMm() * acrossMm());
        }
        return cutMm + (nearMm + farMm);
    }

    /** Whether something is left between the ends, and between the bends. */
    boolean leaves(double lengthMm) {
        return ends instanceof Ends.Flattened flat ? lengthMm > alongMm(flat) : lengthMm > nearMm + farMm;
    }

    Optional<FlatEnds> flatEnds(double lengthMm) {
        if (!(ends instanceof Ends.Flattened flat)) {
            return Optional.empty();
        }
        double sine = StrictMath.sin(axialAngleRad);
        return Optional.of(new FlatEnds(
                straightMm(flat, lengthMm) + 2 * flat.holeToBendMm(),
                flat.holeEdgeMm(),
                flat.flattenMm(),
                axialAngleRad,
                (nearMm + farMm + 2 * flat.flattenMm()) / 2 * sine));
    }

    private double straightMm(Ends.Flattened flat, double lengthMm) {
        double along = lengthMm - alongMm(flat);
        return Math.sqrt(along * along + acrossMm() * acrossMm());
    }

    /** What the two flats take of the chord. */
    private double alongMm(Ends.Flattened flat) {
        return (nearMm + farMm + 2 * flat.flattenMm()) * StrictMath.cos(axialAngleRad);
    }

    /** How much further outside the chord one bend lies than the other. */
    private double acrossMm() {
        return (farMm - nearMm) * StrictMath.sin(axialAngleRad);
    }
}
