package dev.calotte.dome;

import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Up;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How many rows a fraction keeps.
 *
 * @param rows how many rows stay
 * @param of how many there are
 * @param note what to tell the reader, if the fraction was a nickname
 */
record RowCut(int rows, int of, Optional<String> note) {

    /** Works out the rows; the exception says why there are none. */
    static RowCut of(DomeSpec spec, Keep.Rows keep) {
        if (spec.breakdown().classNumber() != 1 || spec.up() != Up.VERTEX) {
            throw new CalotteException(
                    Code.CONFLICT,
                    "dome.keep",
                    "rows exist only for a breakdown of class I with a vertex up; " + keep + " has no meaning for "
                            + spec.breakdown() + " with " + spec.up().name().toLowerCase(Locale.ROOT)
                            + " up.",
                    "Use keep: { above: 0 mm } or whole, or a breakdown [n, 0] with up: vertex.");
        }
        int all = spec.solid().rowsPerFrequency() * spec.breakdown().frequency();
        long scaled = (long) all * keep.kept();
        if (scaled % keep.of() == 0) {
            return new RowCut((int) (scaled / keep.of()), all, Optional.empty());
        }
        return nickname(spec, keep, all).orElseThrow(() -> notWhole(keep, all));
    }

    /**
     * The trade's 3/8 and 5/8 for a 3V icosahedron: four and five of its nine rows. Builders' usage, discussed at
     * https://groups.google.com/g/geodesichelp/c/kbjsI0A_i34.
     */
    private static Optional<RowCut> nickname(DomeSpec spec, Keep.Rows keep, int all) {
        boolean known = spec.solid() == Solid.ICOSAHEDRON && all == 9 && keep.of() == 8;
        if (!known || (keep.kept() != 3 && keep.kept() != 5)) {
            return Optional.empty();
        }
        int rows = keep.kept() == 3 ? 4 : 5;
        return Optional.of(new RowCut(
                rows,
                all,
                Optional.of("keep: " + keep + " is the trade's name for " + rows + "/9 of a 3V; it is built as " + rows
                        + "/9.")));
    }

    private static CalotteException notWhole(Keep.Rows keep, int all) {
        int below = (int) ((long) all * keep.kept() / keep.of());
        TreeMap<Integer, String> near = new TreeMap<>();
        Stream.of(below, below + 1)
                .filter(rows -> rows >= 1 && rows <= all)
                .map(rows -> new RowCut(rows, all, Optional.empty()))
                .forEach(cut -> near.put(cut.rows, cut.built() + " (" + cut.rows + " rows)"));
        return new CalotteException(
                Code.IMPOSSIBLE,
                "dome.keep",
                keep + " of " + all + " rows is not a whole number of rows.",
                "Use " + near.values().stream().collect(Collectors.joining(" or ")) + ".");
    }

    /** What is built: the whole, or the fraction in lowest terms. */
    Keep built() {
        int divisor = BigInteger.valueOf(rows).gcd(BigInteger.valueOf(of)).intValue();
        return rows == of ? new Keep.Whole() : new Keep.Rows(rows / divisor, of / divisor);
    }
}
