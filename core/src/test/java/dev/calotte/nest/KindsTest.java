package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.geometry.Triangle;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class KindsTest {

    private static final ConvexPolygon SCALENE = ConvexPolygon.of(new Triangle(80, 90, 100));
    private static final ConvexPolygon ISOSCELES = ConvexPolygon.of(new Triangle(80, 100, 100));
    private static final ConvexPolygon SQUARE = ConvexPolygon.of(0, 0, 10, 0, 10, 10, 0, 10);

    private static Kinds one(ConvexPolygon outline, boolean mayMirror, OptionalDouble grain) {
        return new Kinds(List.of(new Piece("A", outline, 2, mayMirror, grain)));
    }

    @Test
    void waysToLayAPartWithAGrainAreThoseThatDiffer() {
        OptionalDouble along = OptionalDouble.of(0);
        assertThat(one(SCALENE, false, along).stands(0)).hasSize(2);
        assertThat(one(SCALENE, true, along).stands(0)).hasSize(4);
        assertThat(one(ISOSCELES, true, along).stands(0)).hasSize(2);
        assertThat(one(ISOSCELES, true, OptionalDouble.of(1)).stands(0)).hasSize(4);
        assertThat(one(SQUARE, true, along).stands(0)).hasSize(1);
        assertThat(one(SCALENE, true, OptionalDouble.empty()).stands(0)).isEmpty();
    }

    @Test
    void aPartIsMirroredOnlyWhereThatIsNoTurn() {
        assertThat(one(SCALENE, true, OptionalDouble.empty()).mirrors(0)).isTrue();
        assertThat(one(SCALENE, false, OptionalDouble.empty()).mirrors(0)).isFalse();
        assertThat(one(ISOSCELES, true, OptionalDouble.empty()).mirrors(0)).isFalse();
        assertThat(one(ISOSCELES, true, OptionalDouble.of(0)).mirrors(0)).isFalse();
        assertThat(one(ISOSCELES, true, OptionalDouble.of(1)).mirrors(0)).isTrue();
        assertThat(one(SCALENE, true, OptionalDouble.empty()).areMirrored()).isTrue();
        assertThat(one(SCALENE, true, OptionalDouble.empty()).faceUp().areMirrored())
                .isFalse();
    }

    /** Three sides on four edges of the stock, and as many face down; of a square one way is all. */
    @Test
    void sidesLieAlongTheStocksEdges() {
        Kinds kinds = one(SCALENE, true, OptionalDouble.empty());
        assertThat(kinds.flush(0)).hasSize(24);
        assertThat(kinds.flush(0, Manner.ALONG)).hasSize(12);
        assertThat(kinds.flush(0, Manner.ACROSS)).hasSize(12);
        assertThat(kinds.flush(0, Manner.LONGEST_ALONG)).hasSize(4);
        assertThat(one(SQUARE, true, OptionalDouble.empty()).flush(0)).hasSize(1);
        for (Manner manner : List.of(Manner.ALONG, Manner.ACROSS)) {
            assertThat(kinds.flush(0, manner)).allSatisfy(stand -> {
                ConvexPolygon laid = kinds.outline(0, stand, 0, 0);
                assertThat(List.of(0, 1, 2)).anyMatch(side -> {
                    Vector2D out = laid.outward(side);
                    return Math.abs(manner == Manner.ALONG ? out.getX() : out.getY()) < 1e-9;
                });
            });
        }
        for (Stand stand : kinds.flush(0, Manner.LONGEST_ALONG)) {
            ConvexPolygon laid = kinds.outline(0, stand, 0, 0);
            double most = 0;
            for (int side = 0; side < 3; side++) {
                boolean level = Math.abs(
                                laid.corner(side).getY() - laid.corner(side + 1).getY())
                        < 1e-9;
                most = Math.max(most, level ? laid.corner(side).distance(laid.corner(side + 1)) : 0);
            }
            assertThat(most).isCloseTo(100, within(1e-9));
        }
    }

    /** Computed by hand here: 100 and a border of 1 round 40, with quarter rounds. */
    @Test
    void aPartCoversHalfTheSpacingRoundIt() {
        Kinds kinds = one(SQUARE, false, OptionalDouble.empty());
        assertThat(kinds.coveredMm2(0, 2)).isCloseTo(140 + Math.PI, within(1e-9));
        assertThat(kinds.widest()).isCloseTo(Math.sqrt(200), within(1e-9));
        assertThat(kinds.parts()).isEqualTo(2);
    }

    @Tag("search")
    @Test
    void manyKindsArePlannedWithTheMostPromisingPatterns() {
        List<Piece> pieces = new ArrayList<>();
        for (int kind = 0; kind < 14; kind++) {
            ConvexPolygon outline = ConvexPolygon.of(new Triangle(900 + 20 * kind, 1000 - 15 * kind, 1010));
            pieces.add(new Piece("P" + kind, outline, 2, true, OptionalDouble.of(0)));
        }
        Sheet sheet = new Sheet(2440, 1220, 10, Terms.OPEN);
        CutPlan first = SheetPlan.of(pieces, List.of(sheet), new Layout(6, 0, 1));
        CutPlan plan = SheetPlan.of(pieces, List.of(sheet), new Layout(6, 800, 2));
        PlanCheck.check(plan, pieces, 6);
        assertThat(plan.sheets().size()).isLessThanOrEqualTo(first.sheets().size());
        assertThat(plan.goal().proof()).isEqualTo(Goal.Proof.AREA);
    }

    /** By hand: work grows with the corners of both parts, so that of two squares is that of 2 x 16 / 9 triangles. */
    @Test
    void workIsMeasuredInTriangles() {
        assertThat(one(SCALENE, false, OptionalDouble.empty()).inTriangles()).isEqualTo(2);
        assertThat(one(SQUARE, false, OptionalDouble.empty()).inTriangles()).isEqualTo(3);
    }

    /** Each side, face up and face down, looks the way that the slanted side of a corner cut off does. */
    @Test
    void partsOfAnyTurnLieAlongSlantedWalls() {
        Polygon border = Polygon.of(0, 0, 900, 0, 900, 500, 800, 600, 0, 600);
        Field field = Field.of(
                0,
                new Outline(
                        "o", border, 5, new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1))));
        Kinds kinds = one(SCALENE, true, OptionalDouble.empty());
        List<Stand> stands = kinds.alongside(0, field);
        assertThat(stands).hasSize(6).doesNotHaveDuplicates();
        Vector2D out = new Vector2D(Math.sqrt(0.5), Math.sqrt(0.5));
        assertThat(stands).allSatisfy(stand -> {
            ConvexPolygon laid = kinds.outline(0, stand, 0, 0);
            assertThat(List.of(0, 1, 2))
                    .anyMatch(side -> laid.outward(side).subtract(out).getNorm() < 1e-9);
        });
        assertThat(one(SCALENE, true, OptionalDouble.of(1)).alongside(0, field)).isEmpty();
    }

    @Test
    void piecesKeepTheirGrainOrTurnAtWillOrSomeOfEach() {
        Piece free = new Piece("A", SCALENE, 1, false, OptionalDouble.empty());
        Piece grained = new Piece("B", SCALENE, 3, false, OptionalDouble.of(1));
        assertThat(new Kinds(List.of(grained, grained)).areGrained()).isTrue();
        assertThat(new Kinds(List.of(free, grained)).areGrained()).isFalse();
        assertThat(new Kinds(List.of(free, grained)).needed()).containsExactly(1, 3);
        assertThat(new Kinds(List.of(free, grained)).need()).containsExactly(1, 3);
    }
}
