package dev.calotte.contour;

import static dev.calotte.contour.Outlines.outer;
import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CrowdTest {

    /** Small triangles with corners on a grid, or a hair beside it, now and then without an area. */
    private static Polyline triangle(Random random, int across) {
        double[] xy = new double[6];
        int x = random.nextInt(across);
        int y = random.nextInt(across);
        for (int i = 0; i < 6; i++) {
            xy[i] = (i % 2 == 0 ? x : y) + random.nextInt(3) + (random.nextInt(3) - 1) * 0.0006;
        }
        return outer(xy);
    }

    @Test
    void whatIsPassedOverLiesOnNothing() {
        Cases.each(200, (random, size) -> {
            List<Polyline> paths = new ArrayList<>();
            for (int i = 0; i < 2 * size; i++) {
                paths.add(triangle(random, 4 + 2 * size));
            }
            CutSides sides = new CutSides(new CutPaths(paths, Collections.nCopies(paths.size(), "A")));
            BitSet crowd = Crowd.of(paths);
            for (int i = 0; i < sides.size(); i++) {
                for (int j = i + 1; j < sides.size(); j++) {
                    if (sides.side(i).overlaps(sides.side(j))) {
                        assertThat(crowd.get(sides.pathOf(i)) && crowd.get(sides.pathOf(j)))
                                .isTrue();
                    }
                }
            }
        });
    }

    @Test
    void trianglesThatStandAloneArePassedOver() {
        List<Polyline> paths = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            double x = i % 20 * 12;
            double y = i / 20 * 12;
            paths.add(outer(x, y, x + 10, y, x + 5, y + 9));
        }
        assertThat(Crowd.of(paths).cardinality()).isZero();
        paths.add(outer(9, 8, 11, 11, 9, 11));
        assertThat(Crowd.of(paths).stream()).containsExactly(0, 500);
    }

    @Test
    void whatIsNoPlainTriangleIsLookedAt() {
        Polyline sliver = outer(0, 0, 100, 0, 50, 0.001);
        Polyline square = outer(200, 0, 210, 0, 210, 10, 200, 10);
        Polyline bent = Polyline.open(Operation.CUT_INNER, 300, 0, 310, 0, 300, 0);
        assertThat(Crowd.of(List.of(sliver, square, bent)).cardinality()).isEqualTo(3);
    }
}
