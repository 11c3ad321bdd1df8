package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.geometry.Polygon;
import dev.calotte.parts.PlateBlank.Line;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PlateBlankTest {

    private static PlateBlank blank(double... xy) {
        return new PlateBlank("plate", Line.of(xy, new double[xy.length / 2], Polygon.of(xy)), List.of());
    }

    @Test
    void aLineKeepsItsNumbers() {
        double[] xy = {-50, -40, 50, -40, 50, 40, -50, 40};
        Line line = Line.of(xy, new double[] {0, 0.5, 0, -0.25}, Polygon.of(xy));
        assertThat(line.corners())
                .containsExactly(
                        new Vector2D(-50, -40), new Vector2D(50, -40), new Vector2D(50, 40), new Vector2D(-50, 40));
        assertThat(line.bulges()).containsExactly(0.0, 0.5, 0.0, -0.25);
    }

    @Test
    void whatCrossesItselfOrLiesBesideTheAxisIsNoPlate() {
        assertThat(blank(-50, -40, 50, -40, 50, 40, -50, 40).flaw()).isEmpty();
        assertThat(blank(-50, -40, 50, -40, 50, 50, 20, -80, -50, 50).flaw())
                .hasValueSatisfying(flaw -> assertThat(flaw).contains("crosses or touches itself near "));
        assertThat(blank(10, 10, 50, 10, 50, 40, 10, 40).flaw()).isPresent();
    }
}
