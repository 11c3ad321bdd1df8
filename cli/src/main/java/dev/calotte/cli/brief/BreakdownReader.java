package dev.calotte.cli.brief;

import dev.calotte.problem.Problem.Code;
import dev.calotte.sphere.Breakdown;
import java.math.BigInteger;
import java.util.List;
import java.util.function.Function;

/**
 * Reads {@code 3} or {@code [2, 1]}, and says when there would be too many panels.
 *
 * @param faces how many faces the solid has
 */
record BreakdownReader(int faces) implements Function<Node, Breakdown> {

    /** The most panels of a whole sphere. */
    static final int MOST_PANELS = 200_000;

    private static final String EXAMPLE = "Write the frequency alone, as in 3, or two whole numbers, as in [2, 1].";

    @Override
    public Breakdown apply(Node node) {
        if (!(node instanceof Node.Sequence sequence)) {
            return counted(number(node), BigInteger.ZERO, "Use " + most(1) + " or less.");
        }
        List<Node> items = sequence.items();
        if (items.size() != 2) {
            throw Refusal.wrong("a list of " + items.size() + " stands here.", EXAMPLE);
        }
        return counted(
                number(items.get(0)),
                number(items.get(1)),
                "Use at most [" + most(1) + ", 0] or [" + most(3) + ", " + most(3) + "].");
    }

    private Breakdown counted(BigInteger b, BigInteger c, String mend) {
        if (b.signum() + c.signum() == 0) {
            throw new Refusal(Code.IMPOSSIBLE, "a breakdown of 0 divides nothing.", EXAMPLE);
        }
        BigInteger triangulation = b.multiply(b).add(b.multiply(c)).add(c.multiply(c));
        BigInteger panels = triangulation.multiply(BigInteger.valueOf(faces));
        if (panels.compareTo(BigInteger.valueOf(MOST_PANELS)) > 0) {
            String what = "the whole sphere would have " + panels + " panels, more than " + MOST_PANELS + ".";
            throw new Refusal(Code.TOO_LARGE, what, mend);
        }
        return new Breakdown(b.intValueExact(), c.intValueExact());
    }

    /** The highest n for which the solid can be divided so that T = times n². */
    private int most(int times) {
        return (int) Math.sqrt((double) MOST_PANELS / (faces * times));
    }

    private static BigInteger number(Node node) {
        if (!(node instanceof Node.Text)) {
            throw Refusal.wrong(Seen.sort(node), EXAMPLE);
        }
        String text = Values.text(node);
        return Numbers.whole(text)
                .orElseThrow(() -> Refusal.wrong(Seen.text(text) + " is not a whole number from 0 up.", EXAMPLE));
    }
}
