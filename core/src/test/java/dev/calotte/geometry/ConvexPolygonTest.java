package dev.calotte.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.testing.Cases;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class ConvexPolygonTest {

    private static final ConvexPolygon SQUARE = ConvexPolygon.of(0, 0, 10, 0, 10, 10, 0, 10);

    /** The same polygon in the JTS Topology Suite, a library that was not written for this project. */
    private static Geometry jts(Polygon polygon) {
        Coordinate[] ring = new Coordinate[polygon.size() + 1];
        for (int c = 0; c <= polygon.size(); c++) {
            ring[c] = new Coordinate(polygon.corner(c).getX(), polygon.corner(c).getY());
        }
        return new GeometryFactory().createPolygon(ring);
    }

    @Test
    void offsetsAreThoseOfAnotherLibrary() {
        Cases.each(60, (random, size) -> {
            double a = 500 + 1000 * random.nextDouble();
            double b = 500 + 1000 * random.nextDouble();
            double c = Math.abs(a - b) + 100 + (Math.min(a, b) * 2 - 200) * random.nextDouble();
            ConvexPolygon net = ConvexPolygon.of(new Triangle(a, b, c));
            double by = 20 * random.nextDouble() - 5;
            BufferParameters mitred =
                    new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 100);
            Geometry known = BufferOp.bufferOp(jts(net), by, mitred);
            Geometry ours = jts(net.offset(by, by, by));
            assertThat(ours.symDifference(known).getArea()).isLessThan(1e-6 * net.area());
            assertThat(net.area()).isCloseTo(jts(net).getArea(), within(1e-9 * net.area()));
            assertThat(net.hull().area()).isCloseTo(net.area(), within(1e-9 * net.area()));
        });
    }

    @Test
    void eachSideMovesByItsOwn() {
        ConvexPolygon moved = SQUARE.offset(1, 2, 3, -4);
        assertThat(moved.corners())
                .containsExactly(new Vector2D(4, -1), new Vector2D(12, -1), new Vector2D(12, 13), new Vector2D(4, 13));
    }

    /** Computed by hand: the inradius of a 3, 4, 5 triangle is 1. */
    @Test
    void anOffsetThatLeavesNothingIsRefused() {
        ConvexPolygon triangle = ConvexPolygon.of(new Triangle(3, 4, 5));
        assertThat(triangle.offset(-0.5, -0.5, -0.5).area()).isCloseTo(6 / 4.0, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> triangle.offset(-1.01, -1.01, -1.01));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SQUARE.offset(0, -11, 0, 0))
                .withMessageContaining("side");
    }

    @Test
    void aTriangleStandsOnItsFirstSide() {
        ConvexPolygon triangle = ConvexPolygon.of(new Triangle(5, 3, 4));
        assertThat(triangle.corner(1)).isEqualTo(new Vector2D(5, 0));
        assertThat(triangle.corner(1).distance(triangle.corner(2))).isCloseTo(3, within(1e-14));
        assertThat(triangle.corner(2).distance(triangle.corner(0))).isCloseTo(4, within(1e-14));
        assertThat(triangle.narrowestWidth()).isCloseTo(2.4, within(1e-14));
        assertThat(triangle.outward(0)).isEqualTo(new Vector2D(0, -1));
        assertThat(triangle.extent(triangle.outward(0))).isCloseTo(2.4, within(1e-14));
    }

    @Test
    void aClipKeepsWhatLiesBeforeTheLine() {
        Vector2D right = new Vector2D(1, 0);
        assertThat(SQUARE.clipped(right, 4))
                .containsExactly(new Vector2D(0, 0), new Vector2D(4, 0), new Vector2D(4, 10), new Vector2D(0, 10));
        assertThat(SQUARE.clipped(right, 10)).isEqualTo(SQUARE.corners());
        assertThat(SQUARE.clipped(right, -1)).isEmpty();
        assertThat(SQUARE.clipped(right.negate(), -4).get(0)).isEqualTo(new Vector2D(4, 0));
    }

    @Test
    void aHullFillsHollows() {
        Polygon arrow = Polygon.of(0, 0, 5, 3, 10, 0, 5, 10);
        assertThat(arrow.area()).isEqualTo(35);
        assertThat(arrow.hull().area()).isEqualTo(50);
        assertThat(arrow.hull().size()).isEqualTo(3);
        assertThat(arrow.reach(new Vector2D(0, 1))).isEqualTo(10);
    }

    @Test
    void whatIsNoPolygonIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Polygon.of(0, 0, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Polygon.of(0, 0, 0, 1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Polygon.of(0, 0, 1, 0, 1, 1, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ConvexPolygon.of(0, 0, 5, 3, 10, 0, 5, 10))
                .withMessageContaining("hollow at its corner 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ConvexPolygon.of(List.of(new Vector2D(0, 0), new Vector2D(1, 0))));
    }

    /** By hand: the corner turns by 1e-7 and 1e-5 mm² the wrong way, and 1.25e-6 mm² are rounding for this length. */
    @Test
    void roundingMakesNoHollow() {
        assertThat(ConvexPolygon.of(0, 0, 500, 1e-10, 1000, 0, 500, 1000).size())
                .isEqualTo(4);
        assertThatIllegalArgumentException().isThrownBy(() -> ConvexPolygon.of(0, 0, 500, 1e-8, 1000, 0, 500, 1000));
    }

    @Test
    void aHullHasNoSideOfNoLength() {
        List<Vector2D> points = List.of(
                new Vector2D(0, 0),
                new Vector2D(1000, 0),
                new Vector2D(1000, 1e-9),
                new Vector2D(1000 - 1e-9, 2e-9),
                new Vector2D(500, 800));
        assertThat(ConvexPolygon.round(points).size()).isEqualTo(3);
        assertThat(ConvexPolygon.round(points).area()).isCloseTo(400_000, within(1e-3));
    }

    @Test
    void cornersGoRound() {
        assertThat(SQUARE.corner(-1)).isEqualTo(SQUARE.corner(3));
        assertThat(SQUARE.corner(4)).isEqualTo(SQUARE.corner(0));
        assertThat(SQUARE.size()).isEqualTo(4);
    }
}
