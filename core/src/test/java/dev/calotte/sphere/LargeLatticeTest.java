package dev.calotte.sphere;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LargeLatticeTest {

    @ParameterizedTest
    @CsvSource({"1500, 0", "800, 700"})
    void innerPointsAreNumberedByTheirWeights(int b, int c) {
        LatticeTest.checkInnerPoints(b, c);
    }
}
