package dev.calotte.dome;

import dev.calotte.dome.Size.Measure;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import java.util.Optional;

/**
 * Finds the radius. Every measure grows with the radius, so a part of the sphere that does not depend on the radius
 * gives it in closed form; a part above a fixed height does depend on it, and {@link LevelSearch} finds it.
 *
 * @param keep what stays, as it is built
 * @param cap the same of the unit sphere
 * @param radiusMm the radius
 * @param leveling what a level base changed
 * @param note what to tell the reader about the part that stays
 */
record Sizing(Keep keep, Cap cap, double radiusMm, Optional<Leveling> leveling, Optional<String> note) {

    Sizing {
        if (new CapMeasures(cap).height() <= Ball.LEVEL) {
            throw new CalotteException(
                    Code.IMPOSSIBLE,
                    "dome.keep",
                    "what stays is flat, all its hubs at one height.",
                    "Keep more, or take a higher breakdown.");
        }
    }

    static Sizing of(DomeSpec spec) {
        Ball ball = new Ball(spec);
        if (spec.keep() instanceof Keep.Rows rows) {
            RowCut cut = RowCut.of(spec, rows);
            Cap cap = new Cap(ball, t -> cut.rows() == cut.of() || ball.lastRow(t) <= cut.rows());
            return fixed(spec.withKeep(cut.built()), cap, cut.note());
        }
        if (spec.keep() instanceof Keep.AboveHeight above && above.heightMm() != 0) {
            return above(spec, ball, above.heightMm());
        }
        boolean whole = spec.keep() instanceof Keep.Whole;
        return fixed(spec, new Cap(ball, t -> whole || ball.lowest(t) >= -Ball.LEVEL), Optional.empty());
    }

    private static Sizing fixed(DomeSpec spec, Cap cap, Optional<String> note) {
        Measure measure = spec.size().measure();
        boolean ofTheFloor = measure == Measure.FLOOR_DIAMETER || measure == Measure.FLOOR_AREA;
        if (ofTheFloor && cap.baseRing.length == 0) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "size." + measure.key(),
                    "a whole sphere has no floor.",
                    "Give its radius, height or longest-strut, or keep a part of it.");
        }
        Optional<LevelBase> level = level(spec, cap);
        Cap built = level.map(LevelBase::cap).orElse(cap);
        double radius = linear(spec.size()) / new CapMeasures(built).of(measure);
        return new Sizing(spec.keep(), built, radius, level.map(l -> l.leveling(radius)), note);
    }

    private static Optional<LevelBase> level(DomeSpec spec, Cap cap) {
        return spec.base() == Base.LEVEL ? Optional.of(new LevelBase(cap)) : Optional.empty();
    }

    private static Sizing above(DomeSpec spec, Ball ball, double heightMm) {
        double radius = spec.size().measure() == Measure.RADIUS
                ? spec.size().value()
                : new LevelSearch(ball, heightMm, spec).radiusMm();
        double cut = cut(heightMm, radius);
        Cap cap = new Cap(ball, t -> ball.lowest(t) >= cut);
        Optional<LevelBase> level = level(spec, cap);
        return new Sizing(
                spec.keep(),
                level.map(LevelBase::cap).orElse(cap),
                radius,
                level.map(l -> l.leveling(radius)),
                Optional.empty());
    }

    /** The height over radius from which on panels stay: just below the height given, for rounding. */
    static double cut(double heightMm, double radiusMm) {
        return heightMm / radiusMm - Ball.LEVEL;
    }

    /** The size as a length: the root of an area. */
    static double linear(Size size) {
        return size.measure() == Measure.FLOOR_AREA ? Math.sqrt(size.value()) : size.value();
    }
}
