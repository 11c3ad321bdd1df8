package dev.calotte.contour;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SideSweepTest {

    /** Long and short sides on a few lines of all directions, some a hair aside. */
    private static CutSides sides(Random random, int count) {
        List<Shape> paths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = random.nextInt(12) * Math.PI / 12 + (random.nextBoolean() ? Math.PI : 0);
            double from = random.nextInt(40);
            double to = from + 1 + random.nextInt(random.nextInt(4) == 0 ? 500 : 5);
            double aside = random.nextInt(3) * 30 + (random.nextInt(3) - 1) * 0.0006;
            double across = StrictMath.cos(angle);
            double upwards = StrictMath.sin(angle);
            paths.add(Polyline.open(
                    Operation.CUT_OUTER,
                    from * across - aside * upwards,
                    from * upwards + aside * across,
                    to * across - aside * upwards,
                    to * upwards + aside * across));
        }
        return new CutSides(new Drawing("x", "x", 1, 1, List.of(new Part("A", "", paths))));
    }

    @Test
    void everyPairIsFoundOnce() {
        Cases.each(100, (random, size) -> {
            CutSides sides = sides(random, 3 * size);
            List<String> expected = new ArrayList<>();
            for (int i = 0; i < sides.size(); i++) {
                for (int j = i + 1; j < sides.size(); j++) {
                    if (sides.side(i).overlaps(sides.side(j))) {
                        expected.add(i + " " + j);
                    }
                }
            }
            List<String> found = new ArrayList<>();
            new SideSweep(sides).each((one, other) -> found.add(one + " " + other));
            assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
        });
    }
}
