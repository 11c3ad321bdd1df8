package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Runs of blocks along a roll, by hand, and mixes of them, by trying all. */
class ChainTest {

    private static final double ALTITUDE = Math.sqrt(7500);

    private static Kinds kinds(ConvexPolygon... outlines) {
        List<Piece> pieces = new ArrayList<>();
        for (ConvexPolygon outline : outlines) {
            pieces.add(new Piece("P" + pieces.size(), outline, 9, false, OptionalDouble.empty()));
        }
        return new Kinds(pieces);
    }

    private static BlockMix.Runs runs(Block... blocks) {
        BlockMix.Runs runs = new BlockMix.Runs();
        for (Block block : blocks) {
            runs = runs.with(block, 1, 0);
        }
        return runs;
    }

    private static double end(Kinds kinds, List<Spot> spots) {
        return spots.stream()
                .mapToDouble(spot -> kinds.outline(spot).reach(new Vector2D(1, 0)))
                .max()
                .orElseThrow();
    }

    private static void clear(Kinds kinds, List<Spot> spots, double width, double spacing) {
        for (int i = 0; i < spots.size(); i++) {
            ConvexPolygon part = kinds.outline(spots.get(i));
            assertThat(part.reach(new Vector2D(-1, 0))).isLessThan(1e-6);
            assertThat(part.reach(new Vector2D(0, -1))).isLessThan(1e-6);
            assertThat(part.reach(new Vector2D(0, 1))).isLessThan(width + 1e-6);
            for (int j = 0; j < i; j++) {
                assertThat(NoFitTest.gap(part, kinds.outline(spots.get(j)))).isGreaterThan(spacing - 1e-6);
            }
        }
    }

    /** By hand: a triangle more takes half a side, and the spacing across a side at 60 degrees. */
    @Test
    void runsOfTrianglesMakeOneRow() {
        Kinds kinds = kinds(ConvexPolygon.of(new Triangle(100, 100, 100)));
        for (double spacing : new double[] {0, 6}) {
            double more = 50 + spacing / Math.sin(Math.PI / 3);
            Spot up = new Spot(0, false, 0, 20, 0);
            Spot down = new Spot(0, false, Math.PI, 20 + 100 + more, ALTITUDE);
            Block pair = new Block(List.of(2), 2 * more, List.of(up, down));
            Block one = new Block(List.of(1), 100, List.of(up));
            BlockMix.Runs runs = new BlockMix.Runs().with(one, 2, 0).with(pair, 3, 0);
            List<Spot> spots = new Chain(kinds, ALTITUDE, spacing).lay(runs, new int[] {7});
            assertThat(spots).hasSize(7);
            clear(kinds, spots, ALTITUDE, spacing);
            assertThat(end(kinds, spots)).isCloseTo(100 + 6 * more, within(1e-6));
        }
    }

    /** By hand: halves of a square lie in it together and a strip beside them, whichever comes first in the mix. */
    @Test
    void runsStandInTheOrderThatEndsSoonest() {
        ConvexPolygon half = ConvexPolygon.of(0, 0, 600, 0, 0, 600);
        ConvexPolygon strip = ConvexPolygon.of(0, 0, 100, 0, 100, 600, 0, 600);
        Kinds kinds = kinds(half, half, strip);
        Block[] blocks = new Block[3];
        for (int kind = 0; kind < 3; kind++) {
            blocks[kind] = new Block(List.of(), 600, List.of(new Spot(kind, false, 0, 0, 0)));
        }
        int[][] orders = {{0, 2, 1}, {2, 0, 1}, {1, 2, 0}};
        for (int[] order : orders) {
            BlockMix.Runs runs = runs(blocks[order[0]], blocks[order[1]], blocks[order[2]]);
            List<Spot> spots = new Chain(kinds, 600, 0).lay(runs, new int[] {1, 1, 1});
            clear(kinds, spots, 600, 0);
            assertThat(end(kinds, spots)).isCloseTo(700, within(1e-6));
        }
    }

    /** By hand: 5 mm hold two parts, so that three parts take 10 mm and one join. */
    @Test
    void whereNoBlocksAddUpThereAreMorePartsThanNeeded() {
        Block two = new Block(List.of(2), 5, List.of());
        assertThat(new BlockMix(List.of(two), new int[] {3}, 1).best())
                .singleElement()
                .satisfies(mix -> {
                    assertThat(mix.times()).containsExactly(2);
                    assertThat(mix.length()).isCloseTo(11, within(1e-12));
                });
        Block other = new Block(List.of(3), 100, List.of());
        assertThat(new BlockMix(List.of(two, other), new int[] {3}, 1).best())
                .extracting(BlockMix.Runs::length)
                .startsWith(11.0, 101.0)
                .containsOnly(11.0, 101.0);
    }

    @Test
    void aBlockThatIsRepeatedLaterNeedsNoOtherJoin() {
        Block two = new Block(List.of(2), 5, List.of());
        Block one = new Block(List.of(1), 3, List.of());
        BlockMix.Runs runs = new BlockMix.Runs().with(two, 2, 7).with(one, 1, 7).with(two, 1, 7);
        assertThat(runs.blocks()).containsExactly(two, one);
        assertThat(runs.times()).containsExactly(3, 1);
        assertThat(runs.length()).isEqualTo(3 * 5 + 3 + 2 * 7);
        assertThat(runs.with(one, 0, 7)).isEqualTo(runs);
    }

    private static Block block(Random random) {
        List<Integer> counts = List.of(random.nextInt(3), 1 + random.nextInt(2));
        return new Block(counts, 3 + random.nextInt(9), List.of());
    }

    private static boolean isWhole(int[] rest) {
        return rest[0] == 0 && rest[1] == 0;
    }

    private static boolean covers(int[] rest) {
        return rest[0] >= 0 && rest[1] >= 0;
    }

    private static int[] less(int[] need, Block block, int times) {
        return new int[] {need[0] - times * block.parts()[0], need[1] - times * block.parts()[1]};
    }

    /** What two blocks, each as often as may be, take at least with a join for each, where nothing is left. */
    private static double shortest(List<Block> blocks, int[] need, double join) {
        double least = Double.POSITIVE_INFINITY;
        for (Block a : blocks) {
            for (Block b : blocks) {
                for (int n = 0; covers(less(need, a, n)); n++) {
                    int[] rest = less(need, a, n);
                    for (int m = 0; !a.equals(b) && covers(less(rest, b, m)); m++) {
                        if (isWhole(less(rest, b, m))) {
                            double joins = (n > 0 ? join : 0) + (m > 0 ? join : 0);
                            least = Math.min(least, n * a.period() + m * b.period() + joins);
                        }
                    }
                }
            }
        }
        return least;
    }

    @Test
    void noTwoBlocksAreShorterThanTheFirstMix() {
        Cases.each(80, (random, size) -> {
            List<Block> blocks = List.of(block(random), block(random), block(random));
            int[] need = {random.nextInt(6), 1 + random.nextInt(6)};
            double join = random.nextInt(3);
            List<BlockMix.Runs> mixes = new BlockMix(blocks, need, join).best();
            double before = 0;
            for (BlockMix.Runs mix : mixes) {
                double length = join * mix.blocks().size();
                int[] rest = need;
                for (int i = 0; i < mix.blocks().size(); i++) {
                    length += mix.times().get(i) * mix.blocks().get(i).period();
                    rest = less(rest, mix.blocks().get(i), mix.times().get(i));
                }
                assertThat(rest[0]).isLessThanOrEqualTo(0);
                assertThat(rest[1]).isLessThanOrEqualTo(0);
                assertThat(mix.length()).isCloseTo(length, within(1e-9)).isGreaterThanOrEqualTo(before);
                before = mix.length();
            }
            assertThat(mixes.size()).isLessThanOrEqualTo(16);
            double least = shortest(blocks, need, join);
            assertThat(mixes.isEmpty() ? Double.POSITIVE_INFINITY : mixes.get(0).length())
                    .isLessThanOrEqualTo(least + 1e-9);
        });
    }
}
