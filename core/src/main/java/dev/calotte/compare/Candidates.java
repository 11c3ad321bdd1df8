package dev.calotte.compare;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Hub;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The domes that could stand in the place of another, those that differ least first. They are of
 *
 * <ul>
 *   <li>every solid, the own one first, then from the roundest on;
 *   <li>of each class, the breakdowns whose whole spheres come nearest in number of panels: with a {@link Reach} of w,
 *       2 w + 1 of class I and of the own class, 2 w of others; of mirror images one;
 *   <li>every spacing that the breakdown allows, {@link Spacing#FITTED} up to 8V or the own frequency; where the
 *       symmetry of the solid alone places all points, that is for 1V, 2V and [1, 1], one spacing only;
 *   <li>a vertex, an edge or a face up;
 *   <li>where rows exist, the 2 w + 1 numbers of rows that reach down nearest to the own level; else the panels wholly
 *       above the own level. The level is the lowest hub, or the height that the own dome keeps, over the centre, as a
 *       part of the radius. In the place of a whole sphere stand whole spheres, one way up.
 * </ul>
 *
 * <p>Steps count how far a candidate is from the own dome: one for the second solid, two for the third; one for another
 * class, and one for each further breakdown to either side; one each for another spacing or crown; one for each further
 * number of rows to either side. What has to change with something else, such as the breakdown with the solid, counts
 * nothing. Of equally many steps, the order is that of the list above.
 *
 * <pre>{@code
 * List<Candidate> near = Candidates.of(dome, Reach.USUAL);
 * int steps = near.get(near.size() - 1).steps();
 * }</pre>
 */
public final class Candidates {

    /** Fitting a spacing takes long for more. */
    private static final int MOST_FITTED = 8;

    private static final double ROUNDING = 1e-9;

    private final Candidate own;
    private final int ownPanels;
    private final Reach reach;
    private final Breakdowns breakdowns;
    private final double level;
    private final List<Candidate> found = new ArrayList<>();

    private Candidates(Dome dome, Reach reach) {
        DomeSpec spec = dome.spec();
        this.reach = reach;
        this.ownPanels = dome.panels().size();
        this.breakdowns = new Breakdowns(spec.breakdown(), Breakdowns.count(spec.solid(), spec.breakdown()));
        this.level = level(dome);
        boolean above = spec.keep() instanceof Keep.AboveHeight;
        DomeSpec shape = spec.withSize(Size.radius(Candidate.UNIT_MM));
        this.own = new Candidate(above ? shape.withKeep(aboveLevel()) : shape, 0, true);
    }

    /**
     * Lists the candidates.
     *
     * @param own the own dome, without openings
     * @param reach how far to look; the own dome is always among them, whatever it says
     * @return the own dome first
     * @throws CalotteException if the own dome has more panels than are compared
     */
    public static List<Candidate> of(Dome own, Reach reach) {
        Candidates candidates = new Candidates(own, reach);
        candidates.refuseLarge();
        candidates.found.add(candidates.own);
        candidates.addSolids();
        candidates.found.sort(Comparator.comparingInt(Candidate::steps));
        return candidates.found.stream().limit(reach.atMost()).toList();
    }

    private void refuseLarge() {
        if (breakdowns.panels() > Breakdowns.MOST_PANELS) {
            throw new CalotteException(
                    Code.TOO_LARGE,
                    "dome.breakdown",
                    "the whole sphere has " + breakdowns.panels() + " panels; domes of up to " + Breakdowns.MOST_PANELS
                            + " are compared.",
                    "Take a lower breakdown for the comparison.");
        }
    }

    /** How low the dome reaches, as a part of the radius; the height that it keeps, where it keeps one. */
    private static double level(Dome dome) {
        double mm = dome.spec().keep() instanceof Keep.AboveHeight above
                ? above.heightMm()
                : dome.hubs().stream()
                        .map(Hub::position)
                        .mapToDouble(position -> position.getZ())
                        .min()
                        .orElseThrow();
        double level = mm / dome.radiusMm();
        return Math.abs(level) < ROUNDING ? 0 : level;
    }

    private Keep aboveLevel() {
        return new Keep.AboveHeight(level * Candidate.UNIT_MM);
    }

    private void addSolids() {
        List<Solid> solids = ownFirst(
                own.shape().solid(),
                Stream.of(Solid.ICOSAHEDRON, Solid.OCTAHEDRON, Solid.TETRAHEDRON),
                reach.solids()::contains);
        for (int i = 0; i < solids.size(); i++) {
            addClasses(solids.get(i), i);
        }
    }

    private void addClasses(Solid solid, int steps) {
        int ownClass = own.shape().breakdown().classNumber();
        for (int number : ownFirst(ownClass, Stream.of(1, 2, 3), reach.classes()::contains)) {
            boolean same = number == ownClass;
            int most = 2 * reach.width() + (same || number == 1 ? 1 : 0);
            List<Breakdown> nearest = breakdowns.nearest(solid, number, most);
            for (int i = 0; i < nearest.size(); i++) {
                addSpacings(solid, nearest.get(i), steps + (same ? 0 : 1) + (i + 1) / 2);
            }
        }
    }

    private void addSpacings(Solid solid, Breakdown breakdown, int steps) {
        List<Spacing> spacings = ownFirst(
                own.shape().spacing(),
                Stream.of(Spacing.CHORD, Spacing.ARC, Spacing.MIDARC, Spacing.FITTED),
                spacing -> reach.spacings().contains(spacing) && knows(spacing, breakdown));
        int most = Math.min(spacings.size(), isRigid(breakdown) ? 1 : Spacing.values().length);
        for (int i = 0; i < most; i++) {
            DomeSpec spec =
                    own.shape().withSolid(solid).withBreakdown(breakdown).withSpacing(spacings.get(i));
            addUps(spec, steps + Math.min(i, 1));
        }
    }

    private boolean knows(Spacing spacing, Breakdown breakdown) {
        int n = breakdown.frequency();
        boolean first = breakdown.classNumber() == 1;
        return switch (spacing) {
            case CHORD -> true;
            case ARC -> first;
            case MIDARC -> first && Integer.bitCount(n) == 1;
            case FITTED -> n <= Math.max(MOST_FITTED, ownFitted());
        };
    }

    private int ownFitted() {
        return own.shape().spacing() == Spacing.FITTED ? own.shape().breakdown().frequency() : 0;
    }

    private static boolean isRigid(Breakdown breakdown) {
        return breakdown.classNumber() == 1 ? breakdown.frequency() <= 2 : breakdown.triangulationNumber() == 3;
    }

    private void addUps(DomeSpec spec, int steps) {
        boolean whole = spec.keep() instanceof Keep.Whole;
        List<Up> ups = whole
                ? List.of(own.shape().up())
                : ownFirst(own.shape().up(), Arrays.stream(Up.values()), reach.ups()::contains);
        for (int i = 0; i < ups.size(); i++) {
            addKeeps(spec.withUp(ups.get(i)), whole, steps + Math.min(i, 1));
        }
    }

    private void addKeeps(DomeSpec spec, boolean whole, int steps) {
        if (whole) {
            add(spec, steps);
        } else if (spec.up() == Up.VERTEX && spec.breakdown().classNumber() == 1) {
            List<Keep.Rows> nearest =
                    new RowLevels(spec.solid(), spec.breakdown()).nearest(level, 2 * reach.width() + 1);
            for (int i = 0; i < nearest.size(); i++) {
                add(spec.withKeep(nearest.get(i)), steps + (i + 1) / 2);
            }
        } else {
            add(spec.withKeep(aboveLevel()), steps);
        }
    }

    private void add(DomeSpec spec, int steps) {
        if (!isOwn(spec)) {
            found.add(new Candidate(spec, steps, false));
        }
    }

    /** Whether it is the own dome, or the same panels by rows in place of a height. */
    private boolean isOwn(DomeSpec spec) {
        boolean alike = spec.withKeep(own.shape().keep()).equals(own.shape());
        return alike && (spec.equals(own.shape()) || Dome.of(spec).panels().size() == ownPanels);
    }

    /** What is possible, in its order, but the own first if it is possible. */
    private static <T> List<T> ownFirst(T own, Stream<T> all, Predicate<T> possible) {
        List<T> list = new ArrayList<>(all.filter(possible).toList());
        if (list.remove(own)) {
            list.add(0, own);
        }
        return list;
    }
}
