package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.problem.CalotteException;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BatchPlanTest {

    private static final double SPACING = 6;
    private static final Layout LAYOUT = new Layout(SPACING, 60, 2);

    /** Patterns of sheets take a second each, whatever the steps; what batches promise holds of first plans, too. */
    private static final Layout FIRST = LAYOUT.withSteps(0);

    private static final ConvexPolygon LARGE = ConvexPolygon.of(new double[] {0, 0, 1200, 0, 600, 1000});
    private static final ConvexPolygon SMALL = ConvexPolygon.of(new double[] {0, 0, 1000, 0, 400, 800});
    private static final Stock ROLL = new Roll(1500, 10, OptionalDouble.empty(), Terms.OPEN);
    private static final Stock SHEET = new Sheet(2440, 1220, 10, Terms.OPEN);

    /** Six batches of five or six parts, three of which want the same. */
    private static BatchPlan.Order order(OptionalDouble grain, Stock... stocks) {
        List<List<Integer>> counts =
                List.of(List.of(0, 5), List.of(4, 2), List.of(4, 2), List.of(4, 2), List.of(3, 2), List.of(6, 0));
        return new BatchPlan.Order(
                List.of(new Piece("A", LARGE, 21, false, grain), new Piece("B", SMALL, 13, false, grain)),
                counts,
                List.of(stocks));
    }

    private static Layout how(BatchPlan.Order order) {
        return order.stocks().stream().allMatch(Roll.class::isInstance) ? LAYOUT : FIRST;
    }

    private static BatchPlan plan(BatchPlan.Order order) {
        return BatchPlan.of(order, how(order), free(order));
    }

    private static Goal free(BatchPlan.Order order) {
        return SheetPlan.of(order.pieces(), order.stocks(), how(order)).goal();
    }

    static Stream<BatchPlan.Order> orders() {
        OptionalDouble free = OptionalDouble.empty();
        Terms priced = new Terms(OptionalDouble.of(4), OptionalDouble.empty(), OptionalInt.of(2));
        return Stream.of(
                order(free, ROLL),
                order(OptionalDouble.of(0.4), ROLL),
                order(free, SHEET),
                order(free, new Roll(1500, 10, OptionalDouble.of(6000), Terms.OPEN)),
                order(free, new Sheet(2440, 1220, 10, priced), new Sheet(3000, 1250, 10, Terms.OPEN)),
                order(free, new Sheet(2440, 1220, 10, priced), ROLL));
    }

    /** Judged by the JTS Topology Suite: every part once, congruent, clear of the others and of the edge. */
    @ParameterizedTest
    @MethodSource("orders")
    void everyPartLiesOnceAndClear(BatchPlan.Order order) {
        BatchPlan plan = plan(order);
        PlanCheck.check(plan.plan(), order.pieces(), SPACING);
    }

    @ParameterizedTest
    @MethodSource("orders")
    void everyGroupHoldsThePartsOfItsBatches(BatchPlan.Order order) {
        BatchPlan plan = plan(order);
        assertThat(plan.groups().stream().mapToInt(n -> n).sum()).isEqualTo(6);
        assertThat(plan.groups()).allMatch(size -> size <= 3);
        int first = 0;
        for (int group = 0; group < plan.groups().size(); group++) {
            int last = first + plan.groups().get(group);
            for (int kind = 0; kind < 2; kind++) {
                int place = kind;
                String mark = order.pieces().get(kind).mark();
                assertThat(parts(plan, group).filter(part -> part.mark().equals(mark)))
                        .hasSize(order.counts().subList(first, last).stream()
                                .mapToInt(batch -> batch.get(place))
                                .sum());
            }
            first = last;
        }
    }

    private static Stream<Placed> parts(BatchPlan plan, int group) {
        return IntStream.range(0, plan.groupOf().size())
                .boxed()
                .flatMap(sheet -> IntStream.range(0, plan.groupOf().get(sheet).size())
                        .filter(part -> plan.groupOf().get(sheet).get(part) == group)
                        .mapToObj(
                                part -> plan.plan().sheets().get(sheet).parts().get(part)));
    }

    @Test
    void groupsFollowOneAnotherAlongTheRoll() {
        BatchPlan.Order order = order(OptionalDouble.empty(), ROLL);
        BatchPlan plan = plan(order);
        assertThat(plan.plan().sheets()).hasSize(1);
        double end = 0;
        for (int group = 0; group < plan.groups().size(); group++) {
            double begin = parts(plan, group)
                    .flatMap(part -> part.outline().corners().stream())
                    .mapToDouble(corner -> corner.getX())
                    .min()
                    .orElseThrow();
            // the longest side of a part is 1200 mm: so far may a group reach into the one before
            assertThat(begin).isGreaterThanOrEqualTo(end - 1200 - 1e-6);
            end = parts(plan, group)
                    .flatMap(part -> part.outline().corners().stream())
                    .mapToDouble(corner -> corner.getX())
                    .max()
                    .orElseThrow();
        }
    }

    @Test
    void groupsHaveSheetsOfTheirOwn() {
        BatchPlan.Order order = order(OptionalDouble.empty(), SHEET);
        BatchPlan plan = plan(order);
        int last = 0;
        for (List<Integer> groups : plan.groupOf()) {
            Set<Integer> here = new TreeSet<>(groups);
            assertThat(here).hasSize(1);
            assertThat(here).allMatch(group -> group >= 0);
            assertThat(groups.get(0)).isBetween(last, last + 1);
            last = groups.get(0);
        }
        assertThat(last).isEqualTo(plan.groups().size() - 1);
    }

    @Test
    void aRollThatEndsIsFollowedByAnother() {
        BatchPlan.Order order = order(OptionalDouble.empty(), new Roll(1500, 10, OptionalDouble.of(6000), Terms.OPEN));
        BatchPlan plan = plan(order);
        assertThat(plan.plan().sheets()).hasSizeGreaterThan(2);
        assertThat(plan.plan().sheets())
                .allSatisfy(roll -> assertThat(roll.lengthMm()).isLessThanOrEqualTo(6000 + 1e-6));
    }

    @Test
    void theBoundIsThatOfAnyOrder() {
        Goal free = new Goal(Measure.PIECES, 9, 8, Goal.Proof.ALL_PATTERNS);
        BatchPlan plan = BatchPlan.of(order(OptionalDouble.empty(), SHEET), FIRST, free);
        Goal goal = plan.plan().goal();
        assertThat(goal.measure()).isEqualTo(Measure.PIECES);
        assertThat(goal.reached()).isEqualTo(plan.plan().sheets().size());
        assertThat(goal.bound()).isEqualTo(8);
        assertThat(goal.proof()).isEqualTo(Goal.Proof.ALL_PATTERNS);
    }

    @Test
    void threadsChangeNothing() {
        BatchPlan.Order order = order(OptionalDouble.empty(), ROLL);
        Goal free = free(order);
        assertThat(BatchPlan.of(order, new Layout(SPACING, 60, 1), free).plan())
                .usingRecursiveComparison()
                .isEqualTo(BatchPlan.of(order, LAYOUT, free).plan());
    }

    @Test
    void aSingleBatchIsAPlanLikeAnyOther() {
        Piece piece = new Piece("A", LARGE, 4, false, OptionalDouble.empty());
        BatchPlan.Order order = new BatchPlan.Order(List.of(piece), List.of(List.of(4)), List.of(ROLL));
        BatchPlan plan = plan(order);
        assertThat(plan.groups()).containsExactly(1);
        assertThat(plan.plan().goal().reached()).isEqualTo(free(order).reached());
    }

    @Test
    void tooFewSheetsForTheOrderAreRefused() {
        // two sheets hold four parts and four more in any order, three batches need three
        Piece piece = new Piece("A", LARGE, 6, false, OptionalDouble.empty());
        Terms two = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(2));
        BatchPlan.Order order = new BatchPlan.Order(
                List.of(piece), List.of(List.of(2), List.of(2), List.of(2)), List.of(new Sheet(2440, 1220, 10, two)));
        Goal free = free(order);
        assertThatThrownBy(() -> BatchPlan.of(order, LAYOUT, free))
                .isInstanceOfSatisfying(
                        CalotteException.class,
                        e -> assertThat(e.problems())
                                .singleElement()
                                .satisfies(
                                        problem -> assertThat(problem.where()).isEqualTo("covers.cut-by")));
    }

    @Test
    void batchesHoldEachPartOnceAndNoneIsEmpty() {
        List<Piece> piece = List.of(new Piece("A", LARGE, 4, false, OptionalDouble.empty()));
        assertThatThrownBy(() -> new BatchPlan.Order(piece, List.of(List.of(3)), List.of(ROLL)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BatchPlan.Order(piece, List.of(List.of(4), List.of(0)), List.of(ROLL)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
