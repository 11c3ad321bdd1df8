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

/** Parts whose sides lie along the field or at 45 degrees, in whole millimetres, against all places in whole millimetres. */
class FillingTest {

    private static final int LENGTH = 60;
    private static final int WIDTH = 40;

    /** From the lower left corner; the upper side is shifted by the width. */
    private record Slanted(int x, int y, int length, int width) {

        boolean clears(Slanted other) {
            int along = x - y;
            int otherAlong = other.x - other.y;
            return along >= otherAlong + other.length
                    || otherAlong >= along + length
                    || y >= other.y + other.width
                    || other.y >= y + width;
        }
    }

    private static Piece piece(ConvexPolygon outline) {
        return new Piece("A", outline, 9, false, OptionalDouble.of(0));
    }

    private static Piece slanted(int length, int width) {
        return piece(ConvexPolygon.of(0, 0, length, 0, length + width, width, width, width));
    }

    private static Piece rectangle(int length, int width) {
        return piece(ConvexPolygon.of(0, 0, length, 0, length, width, 0, width));
    }

    /** The first place along the field, and of those the lowest; null if there is none. */
    private static Slanted first(List<Slanted> lying, int length, int width) {
        for (int x = 0; x + length + width <= LENGTH; x++) {
            for (int y = 0; y + width <= WIDTH; y++) {
                Slanted part = new Slanted(x, y, length, width);
                if (lying.stream().allMatch(part::clears)) {
                    return part;
                }
            }
        }
        return null;
    }

    @Test
    void eachPartLiesWhereItEndsFirstAndLowest() {
        Cases.each(64, (random, size) -> {
            List<Piece> pieces = new ArrayList<>();
            for (int kind = 0; kind < 4; kind++) {
                pieces.add(slanted(4 + random.nextInt(14), 4 + random.nextInt(11)));
            }
            // the widest part is wide enough for all of the field to be looked at
            pieces.add(slanted(20, 8));
            check(pieces, random);
        });
    }

    private static void check(List<Piece> pieces, Random random) {
        Kinds kinds = new Kinds(pieces);
        Field field = new Field(0, LENGTH, WIDTH, 0, false);
        Filling filling = new Filling(kinds, field, new Manners(0, Manner.ANY));
        List<Slanted> lying = new ArrayList<>();
        for (int n = 0; n < 14; n++) {
            int kind = random.nextInt(pieces.size());
            ConvexPolygon outline = pieces.get(kind).outline();
            Slanted place = first(lying, (int) outline.x(1), (int) outline.y(2));
            assertThat(filling.add(kind)).isEqualTo(place != null);
            if (place != null) {
                Spot spot = filling.spots().get(lying.size());
                assertThat(spot.turnRad()).isZero();
                assertThat(spot.x()).isCloseTo(place.x(), within(1e-6));
                assertThat(spot.y()).isCloseTo(place.y(), within(1e-6));
                lying.add(place);
            }
        }
        double end = lying.stream()
                .mapToDouble(part -> part.x() + part.length() + part.width())
                .max()
                .orElseThrow();
        assertThat(filling.end()).isCloseTo(end, within(1e-6));
    }

    /** By hand: beside each of two that lie, a hundred times, two pairs are looked at, and as many steps are a hundred. */
    @Test
    void aHundredPairsAreAStep() {
        Kinds kinds = new Kinds(List.of(rectangle(30, 40), rectangle(61, 10)));
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
