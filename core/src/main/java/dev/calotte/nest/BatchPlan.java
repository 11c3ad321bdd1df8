package dev.calotte.nest;

import dev.calotte.stock.Stock;
import java.util.List;

/**
 * Parts that are wanted batch by batch, laid so that they come off the stock in that order. Batches that follow one
 * another are laid together in groups: on a roll each group in a stretch of its own, pushed against the one before, on
 * sheets of its own otherwise. Within a group its parts lie in any order.
 *
 * @param plan what lies where; sheets in the order in which they are begun, its bound that of a plan in any order
 * @param groups how many batches are in each group
 * @param groupOf for each sheet of the plan, for each part on it, the number of its group, from 0
 */
public record BatchPlan(CutPlan plan, List<Integer> groups, List<List<Integer>> groupOf) {

    /** So many batches are open on the table at most. */
    public static final int MOST_IN_A_GROUP = 4;

    /**
     * Copies the lists.
     *
     * @param plan what lies where
     * @param groups how many batches are in each group
     * @param groupOf for each part the number of its group
     */
    public BatchPlan {
        groups = List.copyOf(groups);
        groupOf = groupOf.stream().map(List::copyOf).toList();
    }

    /**
     * What is laid.
     *
     * @param pieces the parts, at least one
     * @param counts for each batch, for each of the pieces, how many are wanted; none of the batches is empty, and all
     *     together are as many as the pieces say
     * @param stocks sheets and rolls, at least one
     */
    public record Order(List<Piece> pieces, List<List<Integer>> counts, List<Stock> stocks) {

        /**
         * Copies the lists.
         *
         * @param pieces the parts
         * @param counts how many are wanted
         * @param stocks sheets and rolls
         * @throws IllegalArgumentException if the counts are not those of the pieces, or a batch is empty
         */
        public Order {
            pieces = List.copyOf(pieces);
            counts = counts.stream().map(List::copyOf).toList();
            stocks = List.copyOf(stocks);
            for (int kind = 0; kind < pieces.size(); kind++) {
                int place = kind;
                if (counts.stream().mapToInt(batch -> batch.get(place)).sum()
                        != pieces.get(kind).count()) {
                    throw new IllegalArgumentException("the batches do not hold each piece once");
                }
            }
            if (counts.stream().anyMatch(b -> b.stream().mapToInt(n -> n).sum() == 0)) {
                throw new IllegalArgumentException("a batch is empty");
            }
        }
    }

    /**
     * Lays parts batch by batch. Groups are made of one batch each, then of up to two, three and four where that saves a
     * hundredth of the stock, and never of more than half of the batches.
     *
     * @param order what is laid
     * @param layout how far parts stay apart, and how long a better plan is looked for in all
     * @param free the plan in any order, the bound of which is kept
     * @return the plan, the same for the same input and any number of threads
     * @throws dev.calotte.problem.CalotteException at {@code covers.cut-by} if what there is of the stock does not hold
     *     the parts in that order
     */
    public static BatchPlan of(Order order, Layout layout, Goal free) {
        return new BatchSearch(order, layout).best(free);
    }
}
