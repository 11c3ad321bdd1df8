package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts whose sides lie along the field, upright or at 45 degrees, in whole millimetres, against all places in whole millimetres. */
class FillingTest {

    private static final int LENGTH = 60;
    private static final int WIDTH = 40;

    /** From the lower left corner; the upper side is shifted by so many widths, 0 or 1. */
    private record Part(int x, int y, int length, int width, int slant) {

        boolean clears(Part other, int spacing) {
            int along = x - slant * y;
            int otherAlong = other.x - slant * other.y;
            return along >= otherAlong + other.length + spacing
                    || otherAlong >= along + length + spacing
                    || y >= other.y + other.width + spacing
                    || other.y >= y + width + spacing;
        }

        int end() {
            return x + length + slant * width;
        }

        Part at(int newX, int newY) {
            return new Part(newX, newY, length, width, slant);
        }

        Piece piece() {
            ConvexPolygon outline =
                    ConvexPolygon.of(0, 0, length, 0, length + slant * width, width, slant * width, width);
            return new Piece("A", outline, 9, false, OptionalDouble.of(0));
        }

        /** The first place along the field, and of those the lowest; nothing if there is none. */
        Optional<Part> first(List<Part> lying, int spacing) {
            for (int left = 0; at(left, 0).end() <= LENGTH; left++) {
                for (int low = 0; low + width <= WIDTH; low++) {
                    Part part = at(left, low);
                    if (lying.stream().allMatch(other -> part.clears(other, spacing))) {
                        return Optional.of(part);
                    }
                }
            }
            return Optional.empty();
        }
    }

    private static Part rectangle(int length, int width) {
        return new Part(0, 0, length, width, 0);
    }

    private static Part slanted(int length, int width) {
        return new Part(0, 0, length, width, 1);
    }

    /** The last part is wide enough for all of the field to be looked at. */
    @Test
    void slantedPartsLieWhereTheyEndFirstAndLowest() {
        Cases.each(64, (random, size) -> {
            List<Part> parts = new ArrayList<>();
            for (int kind = 0; kind < 4; kind++) {
                parts.add(slanted(4 + random.nextInt(14), 4 + random.nextInt(11)));
            }
            parts.add(slanted(20, 8));
            check(parts, random, 0);
        });
    }

    @Test
    void rectanglesLieWhereTheyEndFirstAndLowest() {
        Cases.each(48, (random, size) -> {
            List<Part> parts = new ArrayList<>();
            for (int kind = 0; kind < 4; kind++) {
                parts.add(rectangle(6 + random.nextInt(20), 5 + random.nextInt(15)));
            }
            parts.add(rectangle(30, 8));
            check(parts, random, size % 3);
        });
    }

    private static void check(List<Part> parts, Random random, int spacing) {
        Kinds kinds = new Kinds(parts.stream().map(Part::piece).toList());
        Field field = new Field(0, LENGTH, WIDTH, 0, false);
        Filling filling = new Filling(kinds, field, new Manners(spacing, Manner.ANY));
        List<Part> lying = new ArrayList<>();
        for (int n = 0; n < 14; n++) {
            int kind = random.nextInt(parts.size());
            Optional<Part> place = parts.get(kind).first(lying, spacing);
            assertThat(filling.add(kind)).isEqualTo(place.isPresent());
            if (place.isPresent()) {
                // a part turned by half looks the same
                ConvexPolygon laid = kinds.outline(filling.spots().get(lying.size()));
                assertThat(Math.min(laid.x(0), laid.x(2))).isCloseTo(place.get().x(), within(1e-6));
                assertThat(Math.min(laid.y(0), laid.y(2))).isCloseTo(place.get().y(), within(1e-6));
                lying.add(place.get());
            }
        }
        assertThat(filling.end())
                .isCloseTo(lying.stream().mapToInt(Part::end).max().orElseThrow(), within(1e-6));
    }

    /** By hand: beside each of two that lie, a hundred times, two pairs are looked at, and as many steps are a hundred. */
    @Test
    void aHundredPairsAreAStep() {
        Kinds kinds =
                new Kinds(List.of(rectangle(30, 40).piece(), rectangle(61, 10).piece()));
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
