package dev.calotte.drawing;

import dev.calotte.document.Polyline;
import dev.calotte.drawing.Lay.Fit;
import java.util.List;
import java.util.Optional;

/** The sides of paths one after the other, whatever paths they are joined to. */
final class Sides {

    /** What rounding costs an end of a side in our files: half of the last digit of SVG, in x and in y. */
    private static final double ROUNDING_MM = 1e-4;

    private final double[] ends;

    private Sides(double[] ends) {
        this.ends = ends;
    }

    static Sides of(List<Polyline> paths) {
        int count = paths.stream().mapToInt(Sides::count).sum();
        double[] ends = new double[4 * count];
        int at = 0;
        for (Polyline path : paths) {
            for (int side = 0; side < count(path); side++) {
                int next = (side + 1) % path.size();
                ends[at++] = path.x(side);
                ends[at++] = path.y(side);
                ends[at++] = path.x(next);
                ends[at++] = path.y(next);
            }
        }
        return new Sides(ends);
    }

    private static int count(Polyline path) {
        return path.size() - (path.isClosed() ? 0 : 1);
    }

    int size() {
        return ends.length / 4;
    }

    /** How a letter lies if its first side is this one, drawn from its beginning or from its end. */
    Optional<Fit> begun(GridLetter letter, int start, boolean reversed) {
        double[] first = letter.sides().get(0);
        int from = 4 * start + (reversed ? 2 : 0);
        int to = 4 * start + (reversed ? 0 : 2);
        Fit fit = new Fit();
        fit.add(first[0], first[1], ends[from], ends[from + 1]);
        fit.add(first[2], first[3], ends[to], ends[to + 1]);
        Lay lay = fit.lay();
        if (!(lay.unitMm() > ROUNDING_MM)) {
            return Optional.empty();
        }
        return letter.sides().size() == 1 ? Optional.of(fit) : matched(letter, start, 0, fit, new Fit());
    }

    /** The same letters and one more, if it stands where the others say. */
    Optional<Fit> continued(GridLetter letter, int start, double u, Fit before) {
        return matched(letter, start, u, before, before.copy());
    }

    private Optional<Fit> matched(GridLetter letter, int start, double u, Fit known, Fit all) {
        if (start + letter.sides().size() > size()) {
            return Optional.empty();
        }
        Lay lay = known.lay();
        double far = Math.abs(u) + letter.reach();
        double apart = ROUNDING_MM * (3 + 2 * far / known.reach());
        for (int i = 0; i < letter.sides().size(); i++) {
            if (!add(letter.sides().get(i), u, 4 * (start + i), lay, apart, all)) {
                return Optional.empty();
            }
        }
        return Optional.of(all);
    }

    /** Whether a side is the one that is expected, in either direction. */
    private boolean add(double[] grid, double u, int at, Lay lay, double apart, Fit fit) {
        for (int turn = 0; turn <= 2; turn += 2) {
            int from = at + turn;
            int to = at + 2 - turn;
            if (isNear(lay, u + grid[0], grid[1], from, apart) && isNear(lay, u + grid[2], grid[3], to, apart)) {
                fit.add(u + grid[0], grid[1], ends[from], ends[from + 1]);
                fit.add(u + grid[2], grid[3], ends[to], ends[to + 1]);
                return true;
            }
        }
        return false;
    }

    private boolean isNear(Lay lay, double u, double v, int at, double apart) {
        return Math.abs(lay.x(u, v) - ends[at]) <= apart && Math.abs(lay.y(u, v) - ends[at + 1]) <= apart;
    }
}
