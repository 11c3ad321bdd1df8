package dev.calotte.dome;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Arrays;

/**
 * A part of the unit sphere whose base hubs slid along their meridians to the mean of their heights. It is refused where
 * the panels would no longer lie over the floor as they did: a panel flat on the level of the base, a panel turned over,
 * a hub that hangs below the base.
 */
final class LevelBase {

    private static final String MEND = "Use as-is, or keep another part.";

    private final Cap before;
    private final Cap cap;
    private final double height;

    LevelBase(Cap before) {
        if (before.baseRing.length == 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.base",
                    "a whole sphere has no base to level.",
                    "Use as-is, or keep a part of the sphere.");
        }
        this.before = before;
        this.height = meanHeight(before.xyz, before.baseRing);
        checkPoles();
        this.cap = new Cap(before, slid(before.xyz, before.baseRing, height));
        checkPanels();
        checkHubs();
    }

    static double meanHeight(double[] xyz, int[] base) {
        return Arrays.stream(base).mapToDouble(v -> xyz[3 * v + 2]).sum() / base.length;
    }

    /** A copy in which the base hubs stand at a height; NaN for a hub at a pole, which has no meridian of its own. */
    static double[] slid(double[] xyz, int[] base, double height) {
        double[] slid = xyz.clone();
        double across = Math.sqrt(1 - height * height);
        for (int v : base) {
            double x = xyz[3 * v];
            double y = xyz[3 * v + 1];
            double before = Math.sqrt(x * x + y * y);
            slid[3 * v] = x / before * across;
            slid[3 * v + 1] = y / before * across;
            slid[3 * v + 2] = height;
        }
        return slid;
    }

    /** The part with a level base. */
    Cap cap() {
        return cap;
    }

    /** What changed, for a radius. */
    Leveling leveling(double radiusMm) {
        double most = 0;
        int moved = 0;
        for (int v : before.baseRing) {
            double way = Math.abs(StrictMath.asin(before.xyz[3 * v + 2]) - StrictMath.asin(height));
            most = Math.max(most, way);
            moved += way > Ball.LEVEL ? 1 : 0;
        }
        return new Leveling(height * radiusMm, new CapMeasures(before).baseSpread() * radiusMm, moved, most * radiusMm);
    }

    private void checkPoles() {
        for (int v : before.baseRing) {
            if (1 - Math.abs(before.xyz[3 * v + 2]) < Ball.LEVEL) {
                throw refused("a base hub stands at the pole of the sphere and has no meridian to slide along.");
            }
        }
    }

    private void checkPanels() {
        int flat = 0;
        int turned = 0;
        int[] corners = cap.triangles();
        for (int t = 0; t < corners.length; t += 3) {
            boolean ofBase =
                    cap.net.isOpen(corners[t]) && cap.net.isOpen(corners[t + 1]) && cap.net.isOpen(corners[t + 2]);
            flat += ofBase ? 1 : 0;
            turned += outwards(corners[t], corners[t + 1], corners[t + 2]) > Ball.LEVEL ? 0 : 1;
        }
        if (flat > 0) {
            throw refused(count(flat, "panel has", "panels have")
                    + " all three corners on the base ring and would lie flat on its level.");
        }
        if (turned > 0) {
            throw refused(count(turned, "panel", "panels") + " would turn over.");
        }
    }

    /** Above 0 if the three run counter-clockwise seen from outside. */
    private double outwards(int a, int b, int c) {
        double[] p = cap.xyz;
        return p[3 * a] * (p[3 * b + 1] * p[3 * c + 2] - p[3 * b + 2] * p[3 * c + 1])
                + p[3 * a + 1] * (p[3 * b + 2] * p[3 * c] - p[3 * b] * p[3 * c + 2])
                + p[3 * a + 2] * (p[3 * b] * p[3 * c + 1] - p[3 * b + 1] * p[3 * c]);
    }

    private void checkHubs() {
        int below = 0;
        for (int v = 0; v < cap.origin.length; v++) {
            below += cap.xyz[3 * v + 2] < height - Ball.LEVEL ? 1 : 0;
        }
        if (below > 0) {
            throw refused(count(below, "hub", "hubs") + " inside the base ring would hang below its level.");
        }
    }

    private static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    private static CalotteException refused(String what) {
        return new CalotteException(Code.IMPOSSIBLE, "dome.base", what, MEND);
    }
}
