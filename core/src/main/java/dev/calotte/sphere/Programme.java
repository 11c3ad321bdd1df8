package dev.calotte.sphere;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;

/**
 * The linear programme of a step within a trust region: all logarithms are taken as straight, and the aim is made as
 * small as can be. Its variables are, in units of the region's radius and shifted so that none is negative: the numbers
 * of the step, the widest width, the shortest strut and the largest flaw.
 */
final class Programme {

    private static final int MOST_PIVOTS = 5000;

    /**
     * What a constraint has besides the numbers of the step. The variable of the width is its fall, so that most
     * constraints hold at the start.
     *
     * @param fall times the fall of the widest width
     * @param shortest times the shortest strut
     * @param flaw times the largest flaw
     */
    private record Row(int fall, int shortest, int flaw) {
        static final Row WIDTH = new Row(1, 0, 0);
        static final Row SHORTEST = new Row(0, 1, 0);
        static final Row LONGEST = new Row(0, -1, -1);
        static final Row FLAW = new Row(0, 0, -1);
    }

    private final Pose pose;
    private final Aim aim;
    private final double[][] slopes;
    private final double radius;
    private final int dimension;
    private final double reach;
    private final List<LinearConstraint> constraints = new ArrayList<>();

    Programme(Pose pose, double[][] slopes, Aim aim, double radius) {
        this.pose = pose;
        this.aim = aim;
        this.slopes = slopes;
        this.radius = radius;
        this.dimension = slopes[0].length;
        this.reach = Arrays.stream(slopes).mapToDouble(Programme::norm).max().orElseThrow() + 1;
    }

    /** By how much a sum can change while no number of the step exceeds 1. */
    private static double norm(double[] slope) {
        double sum = 0;
        for (double s : slope) {
            sum += Math.abs(s);
        }
        return sum;
    }

    /** The step, if there is one; bases say upon which side each panel's altitude is taken. */
    Optional<double[]> step(int[] bases) {
        for (int k = 0; k < dimension; k++) {
            double[] row = new double[dimension + 3];
            row[k] = 1;
            constraints.add(new LinearConstraint(row, Relationship.LEQ, 2));
        }
        addWidths(bases);
        addLengths();
        for (Web.Strut pair : aim.equal()) {
            addEqual(pair.from(), pair.to());
            addEqual(pair.to(), pair.from());
        }
        return solve();
    }

    private void addWidths(int[] bases) {
        double[][] rows = new double[bases.length][dimension];
        for (int p = 0; p < bases.length; p++) {
            Web.Panel panel = pose.web().panels().get(p);
            for (int k = 0; k < 3; k++) {
                add(
                        rows[p],
                        pose.width(panel).slope(bases[p], k),
                        panel.struts().get(k));
            }
        }
        double fall = Arrays.stream(rows).mapToDouble(Programme::norm).max().orElseThrow();
        double widest = pose.widest();
        for (int p = 0; p < bases.length; p++) {
            Web.Panel panel = pose.web().panels().get(p);
            double width = StrictMath.log(pose.width(panel).altitude(bases[p]));
            if (aim.width()) {
                add(rows[p], (width - widest) / radius, fall, Row.WIDTH);
            }
            int base = panel.struts().get(bases[p]);
            double[] thin = Arrays.stream(rows[p]).map(d -> -d).toArray();
            add(thin, 1, base);
            add(thin, (Pose.THIN - width + pose.log(base)) / radius, 0, Row.FLAW);
        }
    }

    private void add(double[] sum, double times, int strut) {
        for (int k = 0; k < dimension; k++) {
            sum[k] += times * slopes[strut][k];
        }
    }

    private void addLengths() {
        double shortest = pose.shortest();
        for (int s = 0; s < slopes.length; s++) {
            double above = (pose.log(s) - shortest) / radius;
            double[] down = Arrays.stream(slopes[s]).map(d -> -d).toArray();
            add(down, -above, reach, Row.SHORTEST);
            add(slopes[s], above - aim.span() / radius, reach, Row.LONGEST);
        }
    }

    private void addEqual(int longer, int shorter) {
        double[] slope = slopes[longer].clone();
        add(slope, -1, shorter);
        add(slope, (pose.log(longer) - pose.log(shorter)) / radius, 0, Row.FLAW);
    }

    /**
     * A constraint: a value, its slope and what else its row has are at most 0; the shift is how far the row's other
     * variables can fall. One that nothing within the region can break is left out.
     */
    private void add(double[] slope, double value, double shift, Row others) {
        if (value + norm(slope) + shift <= 0) {
            return;
        }
        double[] row = Arrays.copyOf(slope, dimension + 3);
        row[dimension] = others.fall;
        row[dimension + 1] = others.shortest;
        row[dimension + 2] = others.flaw;
        double bound = (others.fall + others.shortest) * shift - value;
        for (double s : slope) {
            bound += s;
        }
        constraints.add(new LinearConstraint(row, Relationship.LEQ, bound));
    }

    private Optional<double[]> solve() {
        double[] cost = new double[dimension + 3];
        cost[dimension] = aim.width() ? -1 : 0;
        cost[dimension + 2] = Aim.FLAW;
        try {
            double[] found = new SimplexSolver(1e-9, 10, 1e-11)
                    .optimize(
                            new MaxIter(MOST_PIVOTS),
                            new LinearObjectiveFunction(cost, 0),
                            new LinearConstraintSet(constraints),
                            new NonNegativeConstraint(true))
                    .getPoint();
            return Optional.of(Arrays.stream(found, 0, dimension)
                    .map(u -> (u - 1) * radius)
                    .toArray());
        } catch (MathIllegalStateException e) {
            return Optional.empty();
        }
    }
}
