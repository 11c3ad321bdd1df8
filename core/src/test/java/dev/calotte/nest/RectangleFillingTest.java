package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rectangles in whole millimetres on a field, against all places in whole millimetres. */
class RectangleFillingTest {

    private static final int LENGTH = 60;
    private static final int WIDTH = 40;

    private record Rectangle(int x, int y, int length, int width) {

        boolean clears(Rectangle other, int spacing) {
            return x >= other.x + other.length + spacing
                    || other.x >= x + length + spacing
                    || y >= other.y + other.width + spacing
                    || other.y >= y + width + spacing;
        }
    }

    private static Piece piece(int length, int width) {
        ConvexPolygon outline = ConvexPolygon.of(0, 0, length, 0, length, width, 0, width);
        return new Piece("A", outline, 9, false, OptionalDouble.of(0));
    }

    /** The first place along the field, and of those the lowest; null if there is none. */
    private static Rectangle first(List<Rectangle> lying, int length, int width, int spacing) {
        for (int x = 0; x + length <= LENGTH; x++) {
            for (int y = 0; y + width <= WIDTH; y++) {
                Rectangle part = new Rectangle(x, y, length, width);
                if (lying.stream().allMatch(other -> part.clears(other, spacing))) {
                    return part;
                }
            }
        }
        return null;
    }

    @Test
    void eachPartLiesWhereItEndsFirstAndLowest() {
        Cases.each(48, (random, size) -> {
            List<Piece> pieces = new ArrayList<>();
            for (int kind = 0; kind < 4; kind++) {
                pieces.add(piece(6 + random.nextInt(20), 5 + random.nextInt(15)));
            }
            // the widest part is wide enough for all of the field to be looked at
            pieces.add(piece(30, 8));
            check(pieces, random, size % 3);
        });
    }

    private static void check(List<Piece> pieces, Random random, int spacing) {
        Kinds kinds = new Kinds(pieces);
        Field field = new Field(0, LENGTH, WIDTH, 0, false);
        Filling filling = new Filling(kinds, field, new Manners(spacing, Manner.ANY));
        List<Rectangle> lying = new ArrayList<>();
        for (int n = 0; n < 14; n++) {
            int kind = random.nextInt(pieces.size());
            ConvexPolygon outline = pieces.get(kind).outline();
            Rectangle place = first(lying, (int) outline.x(2), (int) outline.y(2), spacing);
            assertThat(filling.add(kind)).isEqualTo(place != null);
            if (place != null) {
                ConvexPolygon laid = kinds.outline(filling.spots().get(lying.size()));
                double left = Math.min(laid.x(0), laid.x(2));
                double low = Math.min(laid.y(0), laid.y(2));
                assertThat(left).isCloseTo(place.x(), within(1e-6));
                assertThat(low).isCloseTo(place.y(), within(1e-6));
                lying.add(place);
            }
        }
        double end = lying.stream().mapToDouble(p -> p.x() + p.length()).max().orElseThrow();
        assertThat(filling.end()).isCloseTo(end, within(1e-6));
    }

    /** By hand: beside each of two that lie, a hundred times, two pairs are looked at, and as many steps are a hundred. */
    @Test
    void aHundredPairsAreAStep() {
        Kinds kinds = new Kinds(List.of(piece(30, 40), piece(61, 10)));
        Filling filling = new Filling(kinds, new Field(0, LENGTH, WIDTH, 0, false), new Manners(0, Manner.ANY));
        assertThat(filling.add(0)).isTrue();
        assertThat(filling.add(0)).isTrue();
        for (int n = 0; n < 100; n++) {
            assertThat(filling.add(0)).isFalse();
            assertThat(filling.add(1)).isFalse();
        }
        // what is longer than the field costs nothing
        assertThat(filling.steps()).isEqualTo(2);
    }
}
