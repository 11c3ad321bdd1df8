package dev.calotte.stl;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.testing.Cases;
import org.junit.jupiter.api.Test;

class PlacesTest {

    @Test
    void verticesAtOnePlaceAreKnownByTheFirst() {
        Cases.each(200, (random, size) -> {
            int fineness = 1 + random.nextInt(30);
            float[] xyz = new float[3 * (1 + 10 * size)];
            for (int i = 0; i < xyz.length; i++) {
                xyz[i] = (float) random.nextInt(fineness) / (1 + random.nextInt(2));
            }
            Places places = new Places(xyz);
            for (int vertex = 0; vertex < places.count(); vertex++) {
                assertThat(places.of(vertex)).isEqualTo(first(places, vertex));
            }
        });
    }

    private static int first(Places places, int vertex) {
        int first = 0;
        while (!places.at(first).equals(places.at(vertex))) {
            first++;
        }
        return first;
    }

    @Test
    void verticesOfARegularGridStayApart() {
        int side = 60;
        float[] xyz = new float[3 * side * side * side];
        for (int i = 0; i < side * side * side; i++) {
            xyz[3 * i] = i % side;
            xyz[3 * i + 1] = Math.floorDiv(i, side) % side;
            xyz[3 * i + 2] = Math.floorDiv(i, side * side);
        }
        assertThat(new Places(xyz).anyJoined()).isFalse();
        xyz[xyz.length - 1] = 7;
        Places moved = new Places(xyz);
        assertThat(moved.anyJoined()).isTrue();
        assertThat(moved.of(side * side * side - 1)).isEqualTo(side * side * 8 - 1);
    }
}
