package dev.calotte.sphere;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LatticeTest {

    @ParameterizedTest
    @CsvSource({"1, 0", "5, 0", "2, 2", "3, 2", "2, 3", "6, 2", "1, 7"})
    void innerPointsAreNumberedByTheirWeights(int b, int c) {
        checkInnerPoints(b, c);
    }

    static void checkInnerPoints(int b, int c) {
        Lattice lattice = new Lattice(new Breakdown(b, c));
        for (int inner = 0; inner < lattice.innerCount(); inner++) {
            int x = lattice.x(lattice.innerPoint(inner));
            int y = lattice.y(lattice.innerPoint(inner));
            int number = lattice.innerNumber(lattice.weightB(x, y), lattice.weightC(x, y));
            if (number != inner) {
                assertThat(number).as("number of (%d, %d)", x, y).isEqualTo(inner);
            }
        }
    }

    /** Pick's theorem: with cells of two triangles as the unit, twice the area of a face is T. */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "4, 0, 3", "2, 2, 4", "3, 2, 9", "2, 1, 3", "3, 3, 10", "6, 2, 24"})
    void facesHoldAsManyInnerPointsAsPickSays(int b, int c, int inner) {
        Lattice lattice = new Lattice(new Breakdown(b, c));
        assertThat(lattice.innerCount()).isEqualTo(inner);
        assertThat(lattice.pointCount()).isEqualTo(inner + 3 * lattice.edgeParts());
        assertThat(2 * lattice.innerCount() + 3 * lattice.edgeParts() - 2).isEqualTo(lattice.total());
    }

    @ParameterizedTest
    @CsvSource({"4, 0, 16, 0", "1, 1, 6, 6", "2, 2, 18, 12", "2, 1, 7, 0", "3, 2, 19, 0"})
    void classTwoListsTheTrianglesOnItsSidesTwice(int b, int c, int listed, int onSides) {
        Lattice lattice = new Lattice(new Breakdown(b, c));
        int[] xy = lattice.triangles();
        int found = 0;
        for (int t = 0; t < xy.length; t += 6) {
            found += lattice.owningSide(xy[t], xy[t + 1], xy[t + 2], xy[t + 3], xy[t + 4], xy[t + 5]) < 0 ? 0 : 1;
        }
        assertThat(xy.length / 6).isEqualTo(listed);
        assertThat(found).isEqualTo(onSides);
    }
}
