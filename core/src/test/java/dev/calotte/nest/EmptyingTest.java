package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class EmptyingTest {

    private static final Sheet SHEET = new Sheet(2440, 1220, 10, Terms.OPEN);

    private static List<Piece> triangles(Random random, int kinds) {
        List<Piece> pieces = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            Triangle triangle = new Triangle(600 + 90 * random.nextDouble(), 600, 600 + 90 * random.nextDouble());
            ConvexPolygon outline = ConvexPolygon.of(triangle);
            pieces.add(new Piece("P" + kind, outline, 7, random.nextBoolean(), OptionalDouble.empty()));
        }
        return pieces;
    }

    @Tag("search")
    @Test
    void stepsNeverFillMoreSheets() {
        Cases.each(3, (random, size) -> {
            List<Piece> pieces = triangles(random, 5);
            CutPlan first = SheetPlan.of(pieces, List.of(SHEET), new Layout(6, 0, 1));
            CutPlan better = SheetPlan.of(pieces, List.of(SHEET), new Layout(6, 400, 2));
            PlanCheck.check(better, pieces, 6);
            assertThat(better.sheets().size())
                    .isLessThanOrEqualTo(first.sheets().size());
            assertThat(better.goal().bound())
                    .isLessThanOrEqualTo(better.sheets().size());
        });
    }

    /** Published optimum 5, without waste; the first plan takes 7. */
    @Tag("search")
    @Test
    void aPublishedPuzzleTakesOneBinMoreThanItsOptimum() {
        Instance puzzle = Instance.terashima().stream()
                .filter(bins -> bins.name().equals("TM019"))
                .findFirst()
                .orElseThrow();
        CutPlan plan = puzzle.plan(4000, 2);
        PlanCheck.check(plan, puzzle.pieces(), 0);
        assertThat(puzzle.plan(0, 1).sheets()).hasSize(7);
        assertThat(plan.sheets()).hasSize(6);
        assertThat(plan.goal().bound()).isEqualTo(5);
    }

    /** Six squares in pairs on three sheets that hold four each: one sheet can be emptied, two cannot. */
    @Test
    void aSheetIsEmptiedWhereOthersHaveRoom() {
        Piece square = new Piece("A", ConvexPolygon.of(0, 0, 90, 0, 90, 90, 0, 90), 6, false, OptionalDouble.of(0));
        Kinds kinds = new Kinds(List.of(square));
        Sheet sheet = new Sheet(200, 200, 0, Terms.OPEN);
        Field field = Field.of(0, sheet);
        List<Spot> pair = List.of(new Spot(0, false, 0, 0, 0), new Spot(0, false, 0, 105, 0));
        List<Filled> plan = List.of(new Filled(field, pair), new Filled(field, pair), new Filled(field, pair));
        Charges charges = new Charges(kinds, List.of(sheet));
        List<Filled> emptied = new Emptying(kinds, charges, new Layout(1, 4000, 2), plan).empty();
        assertThat(emptied).hasSize(2);
        assertThat(emptied.stream().mapToInt(filled -> filled.spots().size()).sum())
                .isEqualTo(6);
        assertThat(new Emptying(kinds, charges, new Layout(1, 500, 1), emptied).empty())
                .hasSize(2);
    }
}
