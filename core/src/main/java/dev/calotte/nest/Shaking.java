package dev.calotte.nest;

import dev.calotte.geometry.ConvexPolygon;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.util.FastMath;

/**
 * Looks for a way to lay given parts in a field: they are thrown in, pushed apart downhill, and where that ends with
 * parts still in each other's way, one is thrown again, turned, or two change places, and the better of both is kept
 * (D. J. Wales and J. P. K. Doye, "Global optimization by basin-hopping", 1997, at temperature zero).
 */
final class Shaking {

    /** What parts may lack of the spacing, as a part of the field's width: well below a millionth of a millimetre. */
    private static final double TOLERANCE = 3e-10;

    private static final int DESCENT = 300;

    /** A descent counts once more for so many triangles; others count with the square of their corners. */
    private static final int MANY = 10;

    private static final int TRIANGLE = 9;

    /** One in so many turns lays a side along or across the field. */
    private static final int FLUSH = 2;

    /** What still gets better may take so many times what there is to spend. */
    private static final int BEYOND = 3;

    private static final double BETTER = 0.9999;

    private final Kinds kinds;
    private final int[] kindOf;
    private final boolean[] mirrored;
    private final Bodies bodies;
    private final Overlap overlap;
    private final Descent descent;
    private final SplittableRandom random;
    private final double[] places;
    private final int cost;
    private int steps;

    Shaking(Kinds kinds, int[] kindOf, double spacing, long seed) {
        this.kinds = kinds;
        this.kindOf = kindOf.clone();
        this.mirrored = new boolean[kindOf.length];
        this.places = new double[3 * kindOf.length];
        this.random = new SplittableRandom(seed);
        this.bodies = new Bodies(kindOf.length);
        boolean[] turning = new boolean[kindOf.length];
        int pairs = 0;
        for (int i = 0; i < kindOf.length; i++) {
            turning[i] = kinds.isFree(kindOf[i]);
            bodies.set(i, kinds.shape(kindOf[i], false));
            pairs += bodies.cornerX[i].length * bodies.cornerX[i].length;
        }
        this.cost = 1 + pairs / TRIANGLE / MANY;
        this.overlap = new Overlap(bodies, spacing, turning);
        this.descent = new Descent(overlap);
    }

    /** The field; what lies there already is drawn together or apart with it. */
    Shaking within(double length, double width, boolean periodic) {
        double factor = overlap.length() > 0 ? length / overlap.length() : 1;
        for (int i = 0; i < kindOf.length; i++) {
            places[3 * i] *= factor;
        }
        overlap.within(length, width, periodic);
        return this;
    }

    /** How many descents were made, those of many parts counted several times. */
    int steps() {
        return steps;
    }

    private double tolerance() {
        return TOLERANCE * overlap.width();
    }

    void scatter() {
        for (int i = 0; i < kindOf.length; i++) {
            scatter(i, places);
        }
    }

    private void scatter(int i, double[] into) {
        into[3 * i] = random.nextDouble() * overlap.length();
        into[3 * i + 1] = random.nextDouble() * overlap.width();
        turn(i, into);
    }

    private void turn(int i, double[] into) {
        if (kinds.isFree(kindOf[i]) && random.nextInt(FLUSH) > 0) {
            into[3 * i + 2] = random.nextDouble() * 2 * FastMath.PI * bodies.radius[i];
            if (kinds.mirrors(kindOf[i])) {
                lay(i, random.nextBoolean());
            }
        } else {
            List<Stand> stands = kinds.flush(kindOf[i]);
            Stand stand = stands.get(random.nextInt(stands.size()));
            lay(i, stand.mirrored());
            into[3 * i + 2] = stand.turnRad() * bodies.radius[i];
        }
    }

    private void lay(int i, boolean over) {
        if (mirrored[i] != over) {
            mirrored[i] = over;
            bodies.set(i, kinds.shape(kindOf[i], over));
        }
    }

    /** Takes parts as they lie. */
    void take(List<Spot> spots) {
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            lay(i, spot.mirrored());
            double cos = FastMath.cos(spot.turnRad());
            double sin = FastMath.sin(spot.turnRad());
            places[3 * i] = spot.x() + bodies.middleX[i] * cos - bodies.middleY[i] * sin;
            places[3 * i + 1] = spot.y() + bodies.middleX[i] * sin + bodies.middleY[i] * cos;
            places[3 * i + 2] = spot.turnRad() * bodies.radius[i];
        }
    }

    List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < kindOf.length; i++) {
            double turn = places[3 * i + 2] / bodies.radius[i];
            double cos = FastMath.cos(turn);
            double sin = FastMath.sin(turn);
            double x = places[3 * i] - bodies.middleX[i] * cos + bodies.middleY[i] * sin;
            double y = places[3 * i + 1] - bodies.middleX[i] * sin - bodies.middleY[i] * cos;
            spots.add(new Spot(kindOf[i], mirrored[i], turn, x, y));
        }
        return spots;
    }

    /** Looks for a way from where the parts are; gives up after so many changes in a row that did not help. */
    boolean settle(int patience) {
        return settle(patience, Integer.MAX_VALUE);
    }

    /** The same, but no more is begun once so many steps are spent. */
    boolean settle(int patience, int budget) {
        int begun = steps;
        double value = descend(places);
        int vain = 0;
        while (value > 0 && vain < patience && steps - begun < budget) {
            double[] changed = places.clone();
            boolean[] before = mirrored.clone();
            change(changed);
            double after = descend(changed);
            if (after < value * BETTER) {
                value = after;
                vain = 0;
                System.arraycopy(changed, 0, places, 0, changed.length);
            } else {
                vain++;
                for (int i = 0; i < before.length; i++) {
                    lay(i, before[i]);
                }
            }
        }
        return value == 0;
    }

    private double descend(double[] from) {
        steps += cost;
        return descent.minimise(from, DESCENT, tolerance());
    }

    private void change(double[] into) {
        int i = random.nextInt(kindOf.length);
        switch (random.nextInt(3)) {
            case 0 -> scatter(i, into);
            case 1 -> swap(i, random.nextInt(kindOf.length), into);
            default -> turn(i, into);
        }
    }

    private static void swap(int i, int j, double[] into) {
        for (int k = 0; k < 2; k++) {
            double kept = into[3 * i + k];
            into[3 * i + k] = into[3 * j + k];
            into[3 * j + k] = kept;
        }
    }

    /** Whether the parts can be laid, with so many descents or little more; they lie there afterwards if they can. */
    boolean fits(int budget, int patience) {
        int end = steps + budget;
        while (steps < end) {
            scatter();
            if (settle(Math.min(patience, 1 + (end - steps - 1) / cost), BEYOND * (end - steps))) {
                return true;
            }
        }
        return false;
    }

    /** The outlines as they lie. */
    List<ConvexPolygon> outlines() {
        return spots().stream().map(kinds::outline).toList();
    }
}
