package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.export.Border;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.ByHub;
import dev.calotte.parts.Ends;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.parts.PlateBlank;
import dev.calotte.parts.PlateBlank.Line;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Hub plates of someone's own shape, judged by JTS. */
class BlankPlatesTest {

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Dome THREE = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));
    private static final HubPlate HOLES = HubPlate.of(140, 10, 100);
    private static final Joinery BENT = Joinery.gap(35);
    private static final Joinery FLAT =
            Joinery.nodeToNode().withEnds(new Ends.Flattened(60, 10, 20, OptionalDouble.empty()));

    private static Line line(Polyline path) {
        List<Vector2D> corners = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        for (int c = 0; c < path.size(); c++) {
            corners.add(new Vector2D(path.x(c), path.y(c)));
            bulges.add(path.bulge(c));
        }
        Polyline straight = Border.measurable(path);
        double[] xy = new double[2 * straight.size()];
        for (int c = 0; c < straight.size(); c++) {
            xy[2 * c] = straight.x(c);
            xy[2 * c + 1] = straight.y(c);
        }
        return new Line(corners, bulges, Polygon.of(xy));
    }

    /** As many corners as asked for, each rounded by an arc that touches both of its sides. */
    private static Polyline rounded(int corners, double reach, double radius) {
        double[] xy = new double[4 * corners];
        double[] bulges = new double[2 * corners];
        double before = radius * Math.tan(Math.PI / corners);
        for (int c = 0; c < corners; c++) {
            double angle = 2 * Math.PI * c / corners;
            for (int end = 0; end < 2; end++) {
                double along = angle + (end == 0 ? -1 : 1) * (Math.PI / 2 + Math.PI / corners);
                xy[4 * c + 2 * end] = reach * Math.cos(angle) + before * Math.cos(along);
                xy[4 * c + 2 * end + 1] = reach * Math.sin(angle) + before * Math.sin(along);
            }
            bulges[2 * c] = Math.tan(Math.PI / corners / 2);
        }
        return Polyline.closed(Operation.CUT_OUTER, xy, bulges);
    }

    private static Polyline circle(double x, double y, double radius) {
        return Polyline.closed(
                Operation.CUT_INNER,
                new double[] {x + radius, y, x, y + radius, x - radius, y, x, y - radius},
                new double[] {quarter(), quarter(), quarter(), quarter()});
    }

    private static double quarter() {
        return Math.tan(Math.PI / 8);
    }

    private static PlateBlank blank(Polyline rim, Polyline... holes) {
        return new PlateBlank(
                "plate.dxf",
                line(rim),
                List.of(holes).stream().map(BlankPlatesTest::line).toList());
    }

    private static Parts parts(Joinery joinery, HubPlate plate, PlateBlank blank) {
        return Parts.of(THREE, joinery.withHubPlate(plate.withBlanks(ByHub.all(blank))));
    }

    private static List<Shape> shapes(Drawing drawing, Operation operation) {
        return drawing.parts().get(0).shapes().stream()
                .filter(shape -> shape.operation() == operation)
                .toList();
    }

    private static Polyline outline(Drawing drawing) {
        assertThat(shapes(drawing, Operation.CUT_OUTER)).hasSize(1);
        return (Polyline) shapes(drawing, Operation.CUT_OUTER).get(0);
    }

    /** Without slots the outline is that of the file, corner by corner and arc by arc, and its holes stay. */
    @Test
    void aFlatPlateKeepsItsOutlineAndItsHoles() {
        Polyline rim = rounded(8, 90, 20);
        List<Drawing> drawings = HubPlates.of(parts(FLAT, HOLES, blank(rim, circle(5, 3, 12))));
        assertThat(drawings).hasSize(6);
        for (Drawing drawing : drawings) {
            Polyline outline = outline(drawing);
            assertThat(outline.size()).isEqualTo(rim.size());
            Circle own = (Circle) shapes(drawing, Operation.CUT_INNER).get(0);
            double x = own.xMm() - 5;
            double y = own.yMm() - 3;
            assertThat(own.radiusMm()).isCloseTo(12, within(1e-9));
            for (int c = 0; c < rim.size(); c++) {
                assertThat(outline.x(c)).isCloseTo(rim.x(c) + x, within(1e-9));
                assertThat(outline.y(c)).isCloseTo(rim.y(c) + y, within(1e-9));
                assertThat(outline.bulge(c)).isCloseTo(rim.bulge(c), within(1e-12));
            }
            assertThat(drawing.parts().get(0).description()).doesNotContain("without room");
        }
    }

    /** A disc from a file gives what a disc of the brief gives. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 6})
    void aDiscFromAFileIsTheDisc(double cutter) {
        HubPlate plate = HOLES.withSlot(HubPlate.usualSlotMm(cutter)).withCutter(cutter);
        List<Drawing> own = HubPlates.of(parts(BENT, plate, blank(circle(0, 0, 70))));
        List<Drawing> disc = HubPlates.of(Parts.of(THREE, BENT.withHubPlate(plate)));
        for (int kind = 0; kind < disc.size(); kind++) {
            assertThat(own.get(kind).widthMm()).isCloseTo(disc.get(kind).widthMm(), within(0.03));
            assertThat(Flattened.area(outline(own.get(kind))))
                    .isCloseTo(Flattened.area(outline(disc.get(kind))), within(1e-6));
            assertThat(shapes(own.get(kind), Operation.SCORE)).hasSameSizeAs(shapes(disc.get(kind), Operation.SCORE));
        }
    }

    /** The file's outline less a strip for each slot, from where the bend lines meet to the outside. */
    @ParameterizedTest
    @ValueSource(ints = {6, 7, 8})
    void slotsOpenTheOutlineAndNothingElse(int corners) {
        Polyline rim = rounded(corners, 95, 15);
        Parts parts = parts(BENT, HOLES, blank(rim));
        List<Drawing> drawings = HubPlates.of(parts);
        for (int k = 0; k < drawings.size(); k++) {
            HubKind kind = parts.hubKinds().get(k);
            PlateArms arms = parts.plateArms(kind).orElseThrow();
            Geometry expected = Flattened.of(rim);
            for (PlateArms.Slot slot : arms.slots()) {
                expected = expected.difference(strip(slot, 2));
            }
            Vector2D centre = centre(drawings.get(k));
            Geometry made = org.locationtech.jts.geom.util.AffineTransformation.translationInstance(
                            -centre.getX(), -centre.getY())
                    .transform(Flattened.of(outline(drawings.get(k))));
            assertThat(arms.slots()).hasSizeGreaterThanOrEqualTo(kind.struts().size() - 1);
            assertThat(made.isValid()).isTrue();
            assertThat(made.symDifference(expected).getArea()).isLessThan(0.05);
            for (Shape hole : shapes(drawings.get(k), Operation.DRILL)) {
                LineString edge = Flattened.of(outline(drawings.get(k))).getExteriorRing();
                Circle circle = (Circle) hole;
                assertThat(Flattened.of(outline(drawings.get(k))).contains(Flattened.of(circle)))
                        .isTrue();
                assertThat(edge.distance(JTS.createPoint(new Coordinate(circle.xMm(), circle.yMm()))))
                        .isGreaterThan(15 - 0.02);
            }
            for (Shape letter : shapes(drawings.get(k), Operation.ENGRAVE).subList(0, 3)) {
                assertThat(Flattened.of(outline(drawings.get(k))).contains(Flattened.line((Polyline) letter)))
                        .isTrue();
            }
        }
    }

    /** Half of the way between opposite holes of a hub of six struts, or where the circle through three holes has its centre. */
    private static Vector2D centre(Drawing drawing) {
        List<Shape> holes = shapes(drawing, Operation.DRILL);
        Coordinate[] three = holes.stream()
                .limit(3)
                .map(hole -> new Coordinate(((Circle) hole).xMm(), ((Circle) hole).yMm()))
                .toArray(Coordinate[]::new);
        Coordinate middle = org.locationtech.jts.geom.Triangle.circumcentre(three[0], three[1], three[2]);
        return new Vector2D(middle.x, middle.y);
    }

    private static Geometry strip(PlateArms.Slot slot, double width) {
        Vector2D along = new Vector2D(Math.cos(slot.angleRad()), Math.sin(slot.angleRad()));
        Vector2D left = new Vector2D(-along.getY(), along.getX()).scalarMultiply(width / 2);
        Vector2D from = along.scalarMultiply(slot.fromMm());
        Vector2D to = along.scalarMultiply(300);
        List<Vector2D> ring =
                List.of(from.subtract(left), to.subtract(left), to.add(left), from.add(left), from.subtract(left));
        return JTS.createPolygon(
                ring.stream().map(at -> new Coordinate(at.getX(), at.getY())).toArray(Coordinate[]::new));
    }

    /** Arms that are apart already need no slots: the outline passes nearer to the axis than the bend lines meet. */
    @Test
    void betweenArmsThatAreApartNothingIsSlotted() {
        double[] xy = new double[36];
        for (int arm = 0; arm < 6; arm++) {
            double[] turns = {-0.3, 0.3, Math.PI / 6};
            double[] reaches = {95, 95, 36};
            for (int c = 0; c < 3; c++) {
                xy[6 * arm + 2 * c] = reaches[c] * Math.cos(arm * Math.PI / 3 + turns[c]);
                xy[6 * arm + 2 * c + 1] = reaches[c] * Math.sin(arm * Math.PI / 3 + turns[c]);
            }
        }
        PlateBlank star = blank(Polyline.closed(Operation.CUT_OUTER, xy));
        ByHub<PlateBlank> blanks = new ByHub<>(
                Optional.of(blank(circle(0, 0, 70))), Map.of(6, star), Optional.of(blank(circle(0, 0, 70))));
        Parts parts = Parts.of(THREE, BENT.withHubPlate(HOLES.withBlanks(blanks)));
        for (HubKind kind : parts.hubKinds()) {
            PlateArms arms = parts.plateArms(kind).orElseThrow();
            boolean six = !kind.open() && kind.struts().size() == 6;
            assertThat(arms.slots().isEmpty()).as(kind.mark()).isEqualTo(six);
        }
        assertThat(HubPlates.of(parts)).hasSize(6);
    }

    @Test
    void everyKindWithoutRoomIsNamed() {
        assertThatThrownBy(() -> HubPlates.of(parts(BENT, HOLES, blank(rounded(6, 70, 10)))))
                .isInstanceOfSatisfying(
                        CalotteException.class,
                        refused -> assertThat(refused.problems())
                                .allMatch(problem -> problem.where().equals("frame.hub-plate"))
                                .extracting(Problem::what)
                                .anyMatch(what -> what.contains("of hub H3 for its strut"))
                                .anyMatch(what -> what.contains("and needs 15.0 mm.")));
        assertThatThrownBy(() -> HubPlates.of(parts(BENT, HOLES, blank(circle(0, 0, 70), circle(50, 10, 3)))))
                .hasMessageContaining("mm from its middle to a line of plate.dxf");
        assertThatThrownBy(() -> HubPlates.of(parts(BENT, HOLES, blank(circle(0, 0, 70), circle(0, 40, 2)))))
                .hasMessageContaining("comes nearer to a hole of plate.dxf than 10.0 mm");
        assertThatThrownBy(() -> HubPlates.of(parts(BENT, HOLES, blank(circle(0, 0, 48)))))
                .hasMessageContaining("lies outside the outline of plate.dxf");
        ByHub<PlateBlank> six = new ByHub<>(Optional.empty(), Map.of(6, blank(circle(0, 0, 70))), Optional.empty());
        assertThatThrownBy(() -> HubPlates.of(Parts.of(THREE, BENT.withHubPlate(HOLES.withBlanks(six)))))
                .hasMessageContaining("no outline is given for hubs of the base ring")
                .hasMessageContaining("no outline is given for inner hubs of 5 struts");
    }

    @Test
    void linesThatMakeNoPlateAreToldApart() {
        assertThat(blank(rounded(6, 90, 10), circle(0, 0, 9)).flaw()).isEmpty();
        assertThat(blank(circle(200, 0, 70)).flaw())
                .hasValueSatisfying(flaw -> assertThat(flaw).contains("the origin (0, 0)"));
        assertThat(blank(circle(0, 0, 70), circle(60, 0, 20)).flaw())
                .hasValueSatisfying(flaw -> assertThat(flaw).contains("is not inside the largest outline"));
        assertThat(blank(circle(0, 0, 70), circle(0, 0, 20), circle(0, 0, 10)).flaw())
                .hasValueSatisfying(flaw -> assertThat(flaw).contains("lie in one another"));
    }
}
