package dev.calotte.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.Polygon;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What surrounds an irregular outline, against the JTS Topology Suite. */
class WallsTest {

    private static final GeometryFactory PLANE = new GeometryFactory();
    private static final Terms ONE = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(1));

    private static Polygon star(Random random) {
        int corners = 5 + random.nextInt(6);
        double[] xy = new double[2 * corners];
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * (c + 0.7 * random.nextDouble()) / corners;
            double radius = 300 + 500 * random.nextDouble();
            xy[2 * c] = 800 + radius * Math.cos(angle);
            xy[2 * c + 1] = 800 + radius * Math.sin(angle);
        }
        return Polygon.of(xy);
    }

    private static Geometry ring(Polygon border) {
        Coordinate[] ring = new Coordinate[border.size() + 1];
        for (int c = 0; c <= border.size(); c++) {
            ring[c] = new Coordinate(border.corner(c).getX(), border.corner(c).getY());
        }
        return PLANE.createPolygon(ring);
    }

    private static boolean walled(Walls walls, double x, double y) {
        Geometry point = PLANE.createPoint(new Coordinate(x, y));
        return walls.pieces().stream()
                .map((ConvexPolygon piece) -> KnownPlan.polygon(piece))
                .anyMatch(piece -> piece.covers(point));
    }

    /** Round corners are cut by tangents, 1 / cos 15 degrees from the corner at most. */
    @Test
    void wallsReachInwardsByTheMarginAndLittleMore() {
        Cases.each(24, (random, size) -> {
            double margin = 20 * (size % 4);
            Outline outline = new Outline("o", star(random), margin, ONE);
            Walls walls = Walls.of(outline);
            Geometry inside = ring(outline.border());
            for (int n = 0; n < 300; n++) {
                double x = outline.lengthMm() * random.nextDouble();
                double y = outline.widthMm() * random.nextDouble();
                Geometry point = PLANE.createPoint(new Coordinate(x, y));
                double distance = inside.getBoundary().distance(point);
                if (!inside.contains(point) || distance < margin - 1e-6) {
                    assertThat(walled(walls, x - margin, y - margin)).isTrue();
                } else if (distance > 1.0353 * margin + 1e-6) {
                    assertThat(walled(walls, x - margin, y - margin)).isFalse();
                }
            }
        });
    }

    /** By hand: a sheet, an endless roll and one that ends, and the box round an outline, each without its margins. */
    @Test
    void aFieldIsWhatTheMarginsLeave() {
        assertThat(Field.of(2, new Sheet(1000, 600, 10, Terms.OPEN))).isEqualTo(new Field(2, 980, 580, 10, false));
        Roll endless = new Roll(600, 15, OptionalDouble.empty(), Terms.OPEN);
        assertThat(Field.of(1, endless)).isEqualTo(new Field(1, Double.POSITIVE_INFINITY, 570, 15, true));
        Roll ending = new Roll(600, 15, OptionalDouble.of(4000), Terms.OPEN);
        assertThat(Field.of(1, ending)).isEqualTo(new Field(1, 3970, 570, 15, true));
        Field box = Field.of(0, new Outline("o", Polygon.of(0, 0, 900, 0, 500, 700), 20, ONE));
        assertThat(box.length()).isEqualTo(860);
        assertThat(box.width()).isEqualTo(660);
        assertThat(box.isIrregular()).isTrue();
        assertThat(box.isRoll()).isFalse();
        assertThatThrownBy(() -> Field.of(0, new Bar(1, 0, 0, Terms.OPEN)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: sides of 5 and 10 at a slant, and those along the axes, which every part may lie along anyway. */
    @Test
    void theLongestSlantedSidesComeFirst() {
        Polygon border = Polygon.of(0, 0, 20, 0, 23, 4, 23, 20, 6, 20, 0, 12);
        assertThat(Walls.of(new Outline("o", border, 0, ONE)).directions())
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(Math.atan2(6, -8), within(1e-12)),
                        second -> assertThat(second).isCloseTo(Math.atan2(-3, 4), within(1e-12)));
        Polygon square = Polygon.of(0, 0, 20, 0, 20, 20, 0, 20);
        assertThat(Walls.of(new Outline("o", square, 0, ONE)).directions()).isEmpty();
    }

    @Test
    void noMoreThanEightDirectionsAreTried() {
        double[] xy = new double[24];
        for (int c = 0; c < 12; c++) {
            xy[2 * c] = (300 + c) * Math.cos(0.1 + 2 * Math.PI * c / 12);
            xy[2 * c + 1] = (300 + c) * Math.sin(0.1 + 2 * Math.PI * c / 12);
        }
        assertThat(Walls.of(new Outline("o", Polygon.of(xy), 5, ONE)).directions())
                .hasSize(8);
    }
}
