package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TriangleTest {

    @ParameterizedTest
    @CsvSource({"3, 4, 5, 6", "5, 12, 13, 30", "8, 15, 17, 60", "15, 8, 17, 60", "13, 5, 12, 30", "5, 4, 3, 6"})
    void rightTrianglesHaveTheirExactArea(double a, double b, double c, double area) {
        assertThat(new Triangle(a, b, c).area()).isEqualTo(area);
    }

    @Test
    void rightTriangleHasItsExactAltitudesAndAngles() {
        Triangle triangle = new Triangle(3, 4, 5);
        assertThat(triangle.altitude(0)).isEqualTo(4);
        assertThat(triangle.altitude(1)).isEqualTo(3);
        assertThat(triangle.altitude(2)).isEqualTo(2.4);
        assertThat(triangle.angleRad(0)).isCloseTo(StrictMath.atan2(3, 4), within(1e-15));
        assertThat(triangle.angleRad(1)).isCloseTo(StrictMath.atan2(4, 3), within(1e-15));
        assertThat(triangle.angleRad(2)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(triangle.narrowestWidth()).isEqualTo(2.4);
    }

    @Test
    void sidesAreCountedFromNought() {
        Triangle triangle = new Triangle(3, 4, 5);
        assertThat(triangle.side(0)).isEqualTo(3);
        assertThat(triangle.side(1)).isEqualTo(4);
        assertThat(triangle.side(2)).isEqualTo(5);
        assertThatThrownBy(() -> triangle.side(3)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> triangle.side(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void obtuseAngleIsMoreThanARightOne() {
        assertThat(new Triangle(1, 1, Math.sqrt(3)).angleRad(2)).isCloseTo(2 * Math.PI / 3, within(1e-15));
    }

    @Test
    void areaAgreesWithHeronsFormulaInSixtyDigits() {
        Cases.each(300, (random, size) -> {
            Triangle triangle = needle(random, Math.pow(10, -size / 30.0));
            assertThat(triangle.area() / heron(triangle)).isCloseTo(1, within(2e-15));
        });
    }

    /** Two long sides and one that is shorter by the given factor, in any order. */
    private static Triangle needle(Random random, double factor) {
        double a = 1 + random.nextDouble();
        double c = a * factor * (0.5 + random.nextDouble() / 2);
        double b = a + c * (random.nextDouble() - 0.5);
        return switch (random.nextInt(3)) {
            case 0 -> new Triangle(a, b, c);
            case 1 -> new Triangle(c, a, b);
            default -> new Triangle(b, c, a);
        };
    }

    private static double heron(Triangle triangle) {
        BigDecimal a = new BigDecimal(triangle.a());
        BigDecimal b = new BigDecimal(triangle.b());
        BigDecimal c = new BigDecimal(triangle.c());
        BigDecimal product = a.add(b)
                .add(c)
                .multiply(b.add(c).subtract(a))
                .multiply(c.add(a).subtract(b))
                .multiply(a.add(b).subtract(c));
        return product.sqrt(new MathContext(60)).doubleValue() / 4;
    }

    @Test
    void anglesAddUpToHalfATurn() {
        Cases.each(100, (random, size) -> {
            Triangle triangle = needle(random, 1.0 / size);
            double sum = triangle.angleRad(0) + triangle.angleRad(1) + triangle.angleRad(2);
            assertThat(sum).isCloseTo(Math.PI, within(1e-12));
        });
    }

    @Test
    void narrowestWidthIsTheSmallestAltitude() {
        Cases.each(100, (random, size) -> {
            Triangle triangle = needle(random, 1.0 / size);
            double smallest = Math.min(triangle.altitude(0), Math.min(triangle.altitude(1), triangle.altitude(2)));
            assertThat(triangle.narrowestWidth()).isEqualTo(smallest);
        });
    }

    @Test
    void scaledMultipliesEverySide() {
        assertThat(new Triangle(3, 4, 5).scaled(2)).isEqualTo(new Triangle(6, 8, 10));
    }

    @ParameterizedTest
    @CsvSource({"1, 2, 3", "3, 1, 2", "2, 3, 1", "1, 1, 2.1", "0, 1, 1", "1, 0, 1", "1, 1, 0", "-1, 1, 1", "NaN, 1, 1"})
    void sidesThatDoNotCloseAreRefused(double a, double b, double c) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Triangle(a, b, c))
                .withMessageContaining(a + ", " + b + ", " + c);
    }
}
