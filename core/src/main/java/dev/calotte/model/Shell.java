package dev.calotte.model;

import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * The panels of a dome at the size of the model, and how they join. Side {@code 3 p + k} is that of panel p from its
 * corner k to the next, counter-clockwise seen from outside.
 */
final class Shell {

    static final int NONE = -1;

    private final Dome dome;
    private final double[] lengthMm;
    private final int[] strutOf;
    private final int[] twin;
    private final int[][] sidesOf;

    Shell(Dome dome, double scale) {
        this.dome = dome;
        this.lengthMm =
                dome.struts().stream().mapToDouble(s -> s.lengthMm() / scale).toArray();
        this.strutOf = dome.panels().stream()
                .flatMapToInt(p -> p.struts().stream().mapToInt(s -> s))
                .toArray();
        this.twin = new int[strutOf.length];
        this.sidesOf = new int[lengthMm.length][2];
        join();
    }

    private void join() {
        Arrays.fill(twin, NONE);
        for (int[] sides : sidesOf) {
            Arrays.fill(sides, NONE);
        }
        for (int side = 0; side < strutOf.length; side++) {
            int[] sides = sidesOf[strutOf[side]];
            if (sides[0] == NONE) {
                sides[0] = side;
            } else {
                sides[1] = side;
                twin[side] = sides[0];
                twin[sides[0]] = side;
            }
        }
    }

    List<Panel> panels() {
        return dome.panels();
    }

    int strut(int side) {
        return strutOf[side];
    }

    /** The same side of the neighbour, or {@link #NONE} on the border. */
    int twin(int side) {
        return twin[side];
    }

    /** The strut's side in the panel of lower number. */
    int side(int strut) {
        return sidesOf[strut][0];
    }

    /** The struts between two panels, in their order. */
    List<Integer> joints() {
        List<Integer> joints = new ArrayList<>();
        for (int strut = 0; strut < sidesOf.length; strut++) {
            if (sidesOf[strut][1] != NONE) {
                joints.add(strut);
            }
        }
        return joints;
    }

    /** Whether the panels at a strut are folded towards the outside. */
    boolean isHollow(int strut) {
        OptionalDouble dihedral = dome.struts().get(strut).dihedralRad();
        return dihedral.orElse(0) > StrictMath.PI + 1e-9;
    }

    static int after(int side) {
        return side % 3 == 2 ? side - 2 : side + 1;
    }

    static int before(int side) {
        return after(after(side));
    }

    double lengthMm(int side) {
        return lengthMm[strutOf[side]];
    }

    /** The angle of a panel at the corner where a side begins. */
    double angleRad(int side) {
        double here = lengthMm(side);
        double previous = lengthMm(before(side));
        double opposite = lengthMm(after(side));
        double cos = (here * here + previous * previous - opposite * opposite) / (2 * here * previous);
        return StrictMath.acos(Math.max(-1, Math.min(1, cos)));
    }

    /** The radius of the circle inside a panel. */
    double inradiusMm(int panel) {
        int side = 3 * panel;
        double twiceArea = lengthMm(side) * lengthMm(before(side)) * StrictMath.sin(angleRad(side));
        return twiceArea / (lengthMm(side) + lengthMm(after(side)) + lengthMm(before(side)));
    }

    /** A panel laid flat, the first corner at the origin and the first side along x. */
    List<Vector2D> flat(int panel) {
        int side = 3 * panel;
        double angle = angleRad(side);
        double previous = lengthMm(before(side));
        return List.of(
                Vector2D.ZERO,
                new Vector2D(lengthMm(side), 0),
                new Vector2D(previous * StrictMath.cos(angle), previous * StrictMath.sin(angle)));
    }
}
