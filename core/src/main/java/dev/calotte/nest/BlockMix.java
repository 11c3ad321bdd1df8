package dev.calotte.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Which blocks are repeated along a roll, and how often, so that all parts are there: one or two of them again and again
 * and one for the rest, or what an integer programme over all of them says.
 */
final class BlockMix {

    private static final int NODES = 3000;
    private static final int KEPT = 16;

    private final List<Block> blocks;
    private final int[] need;
    private final double join;
    private final TreeMap<String, Block> byCounts = new TreeMap<>();
    private final List<Runs> found = new ArrayList<>();

    /** The price of a join is what a change from one block to another costs in length, roughly. */
    BlockMix(List<Block> blocks, int[] need, double join) {
        this.blocks = blocks;
        this.need = need.clone();
        this.join = join;
        blocks.forEach(block -> byCounts.put(Arrays.toString(block.parts()), block));
    }

    /** The most promising mixes, the best first. */
    List<Runs> best() {
        programme();
        for (int a = 0; a < blocks.size(); a++) {
            alone(blocks.get(a));
            for (int b = a + 1; b < blocks.size(); b++) {
                pair(blocks.get(a), blocks.get(b));
            }
        }
        found.sort(Comparator.comparingDouble(Runs::length));
        return found.subList(0, Math.min(KEPT, found.size()));
    }

    private void programme() {
        Columns columns = new Columns(need.length, 1);
        blocks.forEach(block -> columns.add(0, block.parts(), block.period()));
        double[] wanted = Arrays.stream(need).asDoubleStream().toArray();
        IntegerMix mix =
                IntegerMix.of(columns, wanted, new double[] {Arrays.stream(need).sum()}, NODES);
        Runs runs = new Runs();
        for (int i = 0; mix.found() && i < blocks.size(); i++) {
            runs = runs.with(blocks.get(i), mix.uses()[i], join);
        }
        if (mix.found()) {
            found.add(runs);
        }
    }

    private void alone(Block block) {
        int[] rest = need.clone();
        for (int n = 0; n == 0 || take(rest, block); n++) {
            addIfWhole(new Runs().with(block, n, join), rest);
        }
    }

    /** Mixes of two blocks, the second as often as there are parts for it, whose rest is a block too. */
    private void pair(Block a, Block b) {
        int[] rest = need.clone();
        for (int n = 0; n == 0 || take(rest, a); n++) {
            int[] after = rest.clone();
            int m = 0;
            while (take(after, b)) {
                m++;
            }
            addIfWhole(new Runs().with(a, n, join).with(b, m, join), after);
        }
    }

    private void addIfWhole(Runs runs, int[] rest) {
        Block last = byCounts.get(Arrays.toString(rest));
        if (last != null) {
            found.add(runs.with(last, 1, join));
        } else if (Arrays.stream(rest).sum() == 0) {
            found.add(runs);
        }
    }

    private static boolean take(int[] from, Block block) {
        int[] parts = block.parts();
        for (int kind = 0; kind < from.length; kind++) {
            if (from[kind] < parts[kind]) {
                return false;
            }
        }
        for (int kind = 0; kind < from.length; kind++) {
            from[kind] -= parts[kind];
        }
        return true;
    }

    /** Blocks, how often each is repeated, and how long that is, roughly. */
    record Runs(List<Block> blocks, List<Integer> times, double length) {
        Runs() {
            this(List.of(), List.of(), 0);
        }

        Runs with(Block block, int n, double join) {
            if (n == 0) {
                return this;
            }
            List<Block> more = new ArrayList<>(blocks);
            List<Integer> often = new ArrayList<>(times);
            int at = more.indexOf(block);
            if (at >= 0) {
                often.set(at, often.get(at) + n);
            } else {
                more.add(block);
                often.add(n);
            }
            return new Runs(more, often, length + n * block.period() + (at >= 0 ? 0 : join));
        }
    }
}
