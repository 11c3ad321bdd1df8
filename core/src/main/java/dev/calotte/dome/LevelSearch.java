package dev.calotte.dome;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The radius of a dome of which the panels above a fixed height stay.
 *
 * <p>What stays depends on height / radius, and changes only where that passes the lowest corner of some panel. Between
 * two such levels the measure is the radius times a constant. So the levels are walked from the crown down, each
 * constant solved for the radius in closed form, and a solution counts if its level is the one it was computed for. Of
 * several solutions the largest dome is taken; where there is none the nearest sizes on both sides are named.
 */
final class LevelSearch {

    private final Ball ball;
    private final double heightMm;
    private final Size size;
    private final boolean levelled;
    private final Integer[] byLevel;
    private final int[] missing;
    private final boolean[] touched;
    private double below = Double.NEGATIVE_INFINITY;
    private double above = Double.POSITIVE_INFINITY;

    private double lowest = 1;
    private double highest = -1;
    private double floorArea;
    private double longest;

    LevelSearch(Ball ball, double heightMm, DomeSpec spec) {
        this.ball = ball;
        this.heightMm = heightMm;
        this.size = spec.size();
        this.levelled = spec.base() == Base.LEVEL;
        this.byLevel = new Integer[ball.triangles.length / 3];
        this.missing = new int[ball.rows.length];
        this.touched = new boolean[ball.rows.length];
        Arrays.setAll(byLevel, t -> t);
        Arrays.sort(byLevel, Comparator.comparingDouble(t -> -ball.lowest(t)));
        for (int corner : ball.triangles) {
            missing[corner]++;
        }
    }

    double radiusMm() {
        double wanted = Sizing.linear(size);
        double found = Double.NaN;
        for (int i = 0; i < byLevel.length; i++) {
            add(byLevel[i]);
            double level = ball.lowest(byLevel[i]);
            double next = i + 1 < byLevel.length ? ball.lowest(byLevel[i + 1]) : Double.NEGATIVE_INFINITY;
            if (level - next > Ball.LEVEL) {
                found = larger(found, solve(wanted, i + 1, level, next));
            }
        }
        if (Double.isNaN(found)) {
            throw noSuchDome(wanted);
        }
        return found;
    }

    private static double larger(double found, double radius) {
        return Double.isNaN(radius) || found >= radius ? found : radius;
    }

    /** The radius for which the measure is as wanted while next &lt; height / radius &lt;= level; NaN if there is none. */
    private double solve(double wanted, int count, double level, double next) {
        boolean reached = heightMm > 0 ? level > 0 : next < 0;
        double unit = reached ? unit(count) : 0;
        if (!(unit > 0)) {
            return Double.NaN;
        }
        double least = heightMm / (heightMm > 0 ? level : next);
        double most = heightMm / (heightMm > 0 ? next : level);
        if (!(most > 0)) {
            most = Double.POSITIVE_INFINITY;
        }
        double radius = wanted / unit;
        double cut = Sizing.cut(heightMm, radius);
        if (level >= cut && next < cut) {
            return radius;
        }
        remember(unit * Math.min(Math.max(radius, least), most), wanted);
        return Double.NaN;
    }

    private void remember(double reached, double wanted) {
        if (reached < wanted) {
            below = Math.max(below, reached);
        } else {
            above = Math.min(above, reached);
        }
    }

    private CalotteException noSuchDome(double wanted) {
        boolean area = size.measure() == Measure.FLOOR_AREA;
        String mend = "Lower dome.keep.above, or give the radius.";
        if (Double.isFinite(below) && Double.isFinite(above)) {
            mend = "The nearest sizes are " + shown(below, area) + " and " + shown(above, area) + ".";
        }
        return new CalotteException(
                Code.IMPOSSIBLE,
                "size." + size.measure().key(),
                "no dome above that height measures " + shown(wanted, area)
                        + ", since a whole row of panels comes or goes at once.",
                mend);
    }

    private static String shown(double length, boolean area) {
        return area
                ? String.format(Locale.ROOT, "%.3f m²", length * length / 1e6)
                : String.format(Locale.ROOT, "%.1f mm", length);
    }

    private void add(int triangle) {
        int i = 3 * triangle;
        int a = ball.triangles[i];
        int b = ball.triangles[i + 1];
        int c = ball.triangles[i + 2];
        floorArea += (cross(a, b) + cross(b, c) + cross(c, a)) / 2;
        longest = Math.max(longest, Math.max(chord(a, b), Math.max(chord(b, c), chord(c, a))));
        for (int v : new int[] {a, b, c}) {
            touched[v] = true;
            missing[v]--;
            lowest = Math.min(lowest, ball.z(v));
            highest = Math.max(highest, ball.z(v));
        }
    }

    /** The measure of the first panels, of which there are so many. */
    private double unit(int count) {
        return levelled ? levelledUnit(count) : unit();
    }

    private double unit() {
        return switch (size.measure()) {
            case RADIUS -> 1;
            case FLOOR_DIAMETER -> 2 * floorRadius();
            case HEIGHT -> highest - lowest;
            case FLOOR_AREA -> floorArea > Ball.LEVEL ? Math.sqrt(floorArea) : 0;
            case LONGEST_STRUT -> longest;
        };
    }

    /**
     * The measure when the base of the first panels is level: taken anew each time, since a hub of one base is inside
     * the next. A sphere without a base has none, nor has a part with a base hub at a pole.
     */
    private double levelledUnit(int count) {
        int[] base = IntStream.range(0, touched.length)
                .filter(v -> touched[v] && missing[v] > 0)
                .toArray();
        if (base.length == 0) {
            return 0;
        }
        double height = LevelBase.meanHeight(ball.xyz, base);
        double[] xyz = LevelBase.slid(ball.xyz, base, height);
        int[] triangles = new int[3 * count];
        for (int i = 0; i < count; i++) {
            System.arraycopy(ball.triangles, 3 * byLevel[i], triangles, 3 * i, 3);
        }
        return new LevelledMeasures(xyz, triangles, height).of(size.measure());
    }

    private double floorRadius() {
        double most = 0;
        for (int v = 0; v < touched.length; v++) {
            if (touched[v] && missing[v] > 0) {
                double x = ball.xyz[3 * v];
                double y = ball.xyz[3 * v + 1];
                most = Math.max(most, Math.sqrt(x * x + y * y));
            }
        }
        return most;
    }

    private double cross(int p, int q) {
        return ball.xyz[3 * p] * ball.xyz[3 * q + 1] - ball.xyz[3 * q] * ball.xyz[3 * p + 1];
    }

    private double chord(int p, int q) {
        double x = ball.xyz[3 * q] - ball.xyz[3 * p];
        double y = ball.xyz[3 * q + 1] - ball.xyz[3 * p + 1];
        double z = ball.xyz[3 * q + 2] - ball.xyz[3 * p + 2];
        return Math.sqrt(x * x + y * y + z * z);
    }
}
