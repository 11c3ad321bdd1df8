package dev.calotte.parts;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.parts.StrutShapes.Shape;
import java.util.List;
import org.junit.jupiter.api.Test;

class StrutShapesTest {

    /** Cut lengths rise in this order: 900 - 50, 900 - 40 with unlike and like gaps, then the longer strut. */
    @Test
    void shapesComeByLengthThenByWhatGapsLeaveThenByTheNearGap() {
        Shape largeGaps = new Shape(0, 20, 30);
        Shape unlikeGaps = new Shape(0, 10, 30);
        Shape likeGaps = new Shape(0, 20, 20);
        Shape longer = new Shape(1, 25, 30);
        assertThat(List.of(longer, likeGaps, largeGaps, unlikeGaps).stream()
                        .sorted(Shape.ORDER)
                        .toList())
                .containsExactly(largeGaps, unlikeGaps, likeGaps, longer);
    }
}
