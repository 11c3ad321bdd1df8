package dev.calotte.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.geometry.RectangleFit;
import dev.calotte.geometry.Triangle;
import java.util.List;

class RectanglesTableTest {

    private static final double SAME = 1e-9;

    private static ConvexPolygon triangle(List<Double> sides) {
        return ConvexPolygon.of(new Triangle(sides.get(0), sides.get(1), sides.get(2)));
    }

    @Table("triangle-offsets")
    void offsetTrianglesHaveTheKnownSidesAndAltitudes(Row row) {
        ConvexPolygon net = triangle(Row.numbers(row.input("sides")));
        double all = row.input("offset_all").asDouble();
        ConvexPolygon grown = net.offset(all, all, all);
        JsonNode value = row.value();
        assertThat(net.area()).isCloseTo(row.number("area"), within(SAME * row.number("area")));
        assertThat(net.narrowestWidth()).isCloseTo(row.number("min_width"), within(SAME * row.number("min_width")));
        assertSides(grown, Row.numbers(value.required("sides_all")));
        List<Double> growth = Row.numbers(value.required("altitude_growth_all"));
        for (int side = 0; side < 3; side++) {
            double altitude = grown.extent(grown.outward(side)) - net.extent(net.outward(side));
            assertThat(altitude).isCloseTo(growth.get(side), within(SAME * 1000));
        }
    }

    @Table("triangle-offsets")
    void unequalOffsetsAreExactToo(Row row) {
        ConvexPolygon net = triangle(Row.numbers(row.input("sides")));
        double[] each = Row.numbers(row.input("offset_each")).stream()
                .mapToDouble(d -> d)
                .toArray();
        assertSides(net.offset(each), Row.numbers(row.value().required("sides_each")));
    }

    private static void assertSides(ConvexPolygon polygon, List<Double> sides) {
        for (int side = 0; side < 3; side++) {
            assertThat(polygon.corner(side).distance(polygon.corner(side + 1)))
                    .isCloseTo(sides.get(side), within(SAME * sides.get(side)));
        }
    }

    @Table("rectangle-scales")
    void largestTriangleInARectangle(Row row) {
        assertThat(scale(row)).isCloseTo(row.number("largest_scale"), within(1e-9));
    }

    @Table("rectangle-fits")
    void triangleFitsIfItCouldBeLarger(Row row) {
        ConvexPolygon triangle = triangle(Row.numbers(row.input("sides")));
        List<Double> sheet = Row.numbers(row.input("rectangle"));
        boolean fits = row.value().required("fits").asBoolean();
        assertThat(scale(row)).isCloseTo(row.number("largest_scale"), within(1e-9));
        assertThat(scale(row) >= 1).isEqualTo(fits);
        assertThat(RectangleFit.shortfall(triangle, sheet.get(0), sheet.get(1)) <= 0)
                .isEqualTo(fits);
    }

    private static double scale(Row row) {
        List<Double> sheet = Row.numbers(row.input("rectangle"));
        return RectangleFit.largestScale(triangle(Row.numbers(row.input("sides"))), sheet.get(0), sheet.get(1));
    }
}
