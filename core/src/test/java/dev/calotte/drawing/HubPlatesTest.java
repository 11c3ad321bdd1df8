package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Arc;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Ends;
import dev.calotte.parts.HubKind;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.PlateArms;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

class HubPlatesTest {

    private static final Dome THREE = Dome.of(
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)).withKeep(new Keep.Rows(5, 9)));
    private static final HubPlate PLATE = HubPlate.of(140, 10, 100);
    private static final Parts PARTS = Parts.of(THREE, Joinery.gap(35).withHubPlate(PLATE));
    private static final double X = 80;
    private static final double Y = 90;

    private static Drawing drawing(Parts parts, String mark) {
        return HubPlates.of(parts).stream()
                .filter(d -> d.name().equals("hubs/" + mark))
                .findFirst()
                .orElseThrow();
    }

    private static List<Shape> shapes(Drawing drawing, Operation operation) {
        return drawing.parts().get(0).shapes().stream()
                .filter(shape -> shape.operation() == operation)
                .toList();
    }

    private static double distance(Polyline path, int corner) {
        return Math.hypot(path.x(corner) - X, path.y(corner) - Y);
    }

    @Test
    void everyKindOfHubHasItsPlate() {
        assertThat(HubPlates.of(PARTS))
                .extracting(Drawing::name)
                .containsExactly("hubs/H1L", "hubs/H1R", "hubs/H2", "hubs/H3", "hubs/H4", "hubs/H5");
        assertThat(HubPlates.of(Parts.of(THREE, Joinery.gap(35)))).isEmpty();
    }

    @Test
    void theSheetHoldsTheDiscAndAReference() {
        Drawing drawing = drawing(PARTS, "H4");
        assertThat(drawing.title()).isEqualTo("Hub plate H4, cut 30, seen from outside");
        assertThat(drawing.widthMm()).isEqualTo(160);
        assertThat(drawing.heightMm()).isEqualTo(170);
        assertThat(drawing.parts()).extracting(Drawing.Part::mark).containsExactly("H4", "REF-100");
        assertThat(drawing.parts().get(0).description())
                .startsWith(
                        "30 pieces, struts counter-clockwise from the tick S1 S2 S3 S2 S3 S2, arms bent inwards by 10.0° 11.6° 11.9°");
        assertThat(shapes(drawing, Operation.CUT_OUTER)).hasSize(1);
        Drawing small = drawing(Parts.of(THREE, Joinery.gap(10).withHubPlate(HubPlate.of(60, 6, 40))), "H4");
        assertThat(small.widthMm()).isEqualTo(120);
        assertThat(small.heightMm()).isEqualTo(90);
    }

    @Test
    void shapesComeInTheOrderOfTheWork() {
        for (Drawing drawing : HubPlates.of(PARTS)) {
            List<Operation> order = drawing.parts().get(0).shapes().stream()
                    .map(Shape::operation)
                    .toList();
            assertThat(order).isSorted();
        }
    }

    @Test
    void holesStandOnTheCircleInTheDirectionsOfTheStruts() {
        for (HubKind kind : PARTS.hubKinds()) {
            List<Shape> holes = shapes(drawing(PARTS, kind.mark()), Operation.DRILL);
            assertThat(holes).hasSameSizeAs(kind.struts());
            double angle = 0;
            for (int i = 0; i < holes.size(); i++) {
                Circle hole = (Circle) holes.get(i);
                assertThat(hole.radiusMm()).isEqualTo(5);
                assertThat(hole.xMm()).isCloseTo(X + 50 * Math.cos(angle), within(1e-9));
                assertThat(hole.yMm()).isCloseTo(Y + 50 * Math.sin(angle), within(1e-9));
                angle += i < kind.gapsRad().size() ? kind.gapsRad().get(i) : 0;
            }
        }
    }

    /** Five struts 72 degrees apart: a pentagon of bend lines 35 mm from the centre, its corners on the bisectors. */
    @Test
    void bendLinesMeetWhereTheSlotsEnd() {
        Drawing drawing = drawing(PARTS, "H3");
        List<Shape> bends = shapes(drawing, Operation.SCORE);
        Polyline outline = (Polyline) shapes(drawing, Operation.CUT_OUTER).get(0);
        assertThat(bends).hasSize(5);
        assertThat(outline.size()).isEqualTo(25);
        double corner = 35 / Math.cos(Math.toRadians(36));
        for (int i = 0; i < 5; i++) {
            Polyline bend = (Polyline) bends.get(i);
            Polyline next = (Polyline) bends.get((i + 1) % 5);
            assertThat(bend.isClosed()).isFalse();
            assertThat(distance(bend, 0)).isCloseTo(corner, within(1e-9));
            assertThat(bend.x(1)).isCloseTo(next.x(0), within(1e-9));
            assertThat(bend.y(1)).isCloseTo(next.y(0), within(1e-9));
            assertThat((outline.x(5 * i + 1) + outline.x(5 * i + 2)) / 2).isCloseTo(bend.x(1), within(1e-9));
            assertThat((outline.y(5 * i + 1) + outline.y(5 * i + 2)) / 2).isCloseTo(bend.y(1), within(1e-9));
        }
        Polyline first = (Polyline) bends.get(0);
        assertThat(first.x(0)).isCloseTo(X + 35, within(1e-9));
        assertThat(first.y(0)).isCloseTo(Y - 35 * Math.tan(Math.toRadians(36)), within(1e-9));
        assertThat(first.x(1)).isCloseTo(X + 35, within(1e-9));
        assertThat(first.y(1)).isCloseTo(Y + 35 * Math.tan(Math.toRadians(36)), within(1e-9));
    }

    /** Nothing of a plate is cut but its one outline and its holes. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 2, 6})
    void aPlateIsOneSimpleOutlineWithItsHolesInside(double cutter) {
        HubPlate plate = PLATE.withSlot(HubPlate.usualSlotMm(cutter)).withCutter(cutter);
        for (Drawing drawing : HubPlates.of(Parts.of(THREE, Joinery.gap(35).withHubPlate(plate)))) {
            assertThat(shapes(drawing, Operation.CUT_INNER)).isEmpty();
            assertThat(shapes(drawing, Operation.CUT_OUTER)).hasSize(1);
            Polygon flat =
                    Flattened.of((Polyline) shapes(drawing, Operation.CUT_OUTER).get(0));
            assertThat(flat.isValid()).isTrue();
            for (Shape hole : shapes(drawing, Operation.DRILL)) {
                Circle circle = (Circle) hole;
                assertThat(flat.contains(Flattened.of(circle))).isTrue();
            }
            for (Shape bend : shapes(drawing, Operation.SCORE)) {
                assertThat(flat.buffer(1e-6).contains(Flattened.line((Polyline) bend)))
                        .isTrue();
            }
            Polyline outline = (Polyline) shapes(drawing, Operation.CUT_OUTER).get(0);
            for (int corner = 0; corner < outline.size(); corner++) {
                assertThat(distance(outline, corner)).isLessThan(70 + 1e-9);
            }
        }
    }

    /**
     * By hand: the disc's 4900 π without, for each slot, the piece of the disc as wide as the slot, less what of it lies
     * nearer the centre than the slot's end, and plus the two corners that a round end leaves.
     */
    @ParameterizedTest
    @CsvSource({"2, 0", "2, 2", "6.2, 6", "9, 6"})
    void theAreaOfAPlateIsThatOfItsDiscWithoutTheSlots(double slot, double cutter) {
        HubPlate plate = PLATE.withSlot(slot).withCutter(cutter);
        Parts parts = Parts.of(THREE, Joinery.gap(35).withHubPlate(plate));
        double half = slot / 2;
        double strip = half * Math.sqrt(4900 - half * half) + 4900 * Math.asin(half / 70);
        double corners = cutter > 0 ? half * half * (2 - Math.PI / 2) : 0;
        for (HubKind kind : parts.hubKinds()) {
            double expected = 4900 * Math.PI;
            for (PlateArms.Slot each : parts.plateArms(kind).orElseThrow().slots()) {
                expected -= strip - 2 * half * each.fromMm() - corners;
            }
            Polyline outline = (Polyline)
                    shapes(drawing(parts, kind.mark()), Operation.CUT_OUTER).get(0);
            assertThat(Flattened.area(outline)).isCloseTo(expected, within(1e-7));
        }
    }

    /** A cutter makes no corner in a slot, a beam two; the arcs that are left are those of the rim and of the ends. */
    @Test
    void slotsForACutterEndRound() {
        HubPlate plate = PLATE.withSlot(6.2).withCutter(6);
        Polyline outline = (Polyline) shapes(
                        drawing(Parts.of(THREE, Joinery.gap(35).withHubPlate(plate)), "H3"), Operation.CUT_OUTER)
                .get(0);
        for (int slot = 0; slot < 5; slot++) {
            assertThat(outline.bulge(5 * slot)).isZero();
            Arc end = outline.arc(5 * slot + 1).orElseThrow();
            assertThat(end.radiusMm()).isCloseTo(3.1, within(1e-9));
            assertThat(end.sweepRad()).isCloseTo(-Math.PI, within(1e-9));
            assertThat(outline.bulge(5 * slot + 2)).isZero();
            double whole = Math.toRadians(72) - 2 * Math.asin(3.1 / 70);
            for (int half = 3; half < 5; half++) {
                Arc rim = outline.arc(5 * slot + half).orElseThrow();
                assertThat(rim.radiusMm()).isCloseTo(70, within(1e-9));
                assertThat(rim.xMm()).isCloseTo(X, within(1e-9));
                assertThat(rim.yMm()).isCloseTo(Y, within(1e-9));
                assertThat(rim.sweepRad()).isCloseTo(whole / 2, within(1e-9));
            }
        }
    }

    @Test
    void aPlateWithoutSlotsIsACircle() {
        Dome tetrahedron = Dome.of(DomeSpec.of(Solid.TETRAHEDRON, Breakdown.of(1), Size.radius(3000)));
        assertThat(shapes(
                        drawing(Parts.of(tetrahedron, Joinery.gap(45).withHubPlate(PLATE)), "H1"), Operation.CUT_OUTER))
                .containsExactly(new Circle(Operation.CUT_OUTER, X, Y, 70));
    }

    /** The mark in the middle, the strut at each arm, all of them clear of what is cut, drilled and bent. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 6})
    void marksStandOnTheDiscAndOnItsArms(double cutter) {
        HubPlate plate = PLATE.withSlot(HubPlate.usualSlotMm(cutter)).withCutter(cutter);
        Parts parts = Parts.of(THREE, Joinery.gap(35).withHubPlate(plate));
        for (HubKind kind : parts.hubKinds()) {
            Drawing drawing = drawing(parts, kind.mark());
            assertThat(drawing.parts().get(0).description()).doesNotContain("without room");
            List<Shape> engraved = shapes(drawing, Operation.ENGRAVE);
            List<Shape> letters = engraved.subList(0, engraved.size() - 1);
            int strokes = Stream.concat(
                            Stream.of(kind.mark(), "cut " + kind.count(), "OUT"), kind.strutMarks().stream())
                    .mapToInt(text -> StrokeText.of(text, 1).left(0, 0, 0).size())
                    .sum();
            assertThat(letters).hasSize(strokes);
            Polygon flat =
                    Flattened.of((Polyline) shapes(drawing, Operation.CUT_OUTER).get(0));
            for (Shape letter : letters) {
                LineString line = Flattened.line((Polyline) letter);
                assertThat(flat.contains(line)).isTrue();
                assertThat(flat.getBoundary().distance(line)).isGreaterThan(2 - 1e-3);
                for (Shape hole : shapes(drawing, Operation.DRILL)) {
                    assertThat(Flattened.of((Circle) hole).distance(line)).isGreaterThan(2 - 1e-3);
                }
                for (Shape bend : shapes(drawing, Operation.SCORE)) {
                    assertThat(Flattened.line((Polyline) bend).distance(line)).isGreaterThan(2 - 1e-3);
                }
            }
        }
    }

    /** Three struts 120 degrees apart: bend lines 45 mm out end on the rim of 70 mm. */
    @Test
    void bendLinesThatDoNotMeetEndOnTheRim() {
        Dome tetrahedron = Dome.of(DomeSpec.of(Solid.TETRAHEDRON, Breakdown.of(1), Size.radius(3000)));
        Drawing drawing = drawing(Parts.of(tetrahedron, Joinery.gap(45).withHubPlate(PLATE)), "H1");
        assertThat(shapes(drawing, Operation.CUT_INNER)).isEmpty();
        for (Shape shape : shapes(drawing, Operation.SCORE)) {
            assertThat(distance((Polyline) shape, 0)).isCloseTo(70, within(1e-9));
            assertThat(distance((Polyline) shape, 1)).isCloseTo(70, within(1e-9));
        }
    }

    private static Polyline tick(Drawing drawing) {
        List<Shape> engraved = shapes(drawing, Operation.ENGRAVE);
        return (Polyline) engraved.get(engraved.size() - 1);
    }

    @Test
    void aTickMarksTheFirstArm() {
        Polyline tick = tick(drawing(PARTS, "H1L"));
        assertThat(tick.x(0)).isCloseTo(X + 65, within(1e-9));
        assertThat(tick.x(1)).isCloseTo(X + 70, within(1e-9));
        assertThat(tick.y(0)).isEqualTo(Y);
        assertThat(tick.y(1)).isEqualTo(Y);
        Drawing small = drawing(Parts.of(THREE, Joinery.gap(10).withHubPlate(HubPlate.of(60, 4, 40))), "H4");
        Polyline shorter = tick(small);
        assertThat(shorter.x(1) - shorter.x(0)).isCloseTo(4, within(1e-9));
    }

    @Test
    void plateForBentTubesIsFlat() {
        Ends flat = new Ends.Flattened(60, 10, 20, OptionalDouble.empty());
        Drawing drawing =
                drawing(Parts.of(THREE, Joinery.nodeToNode().withEnds(flat).withHubPlate(PLATE)), "H3");
        assertThat(shapes(drawing, Operation.SCORE)).isEmpty();
        assertThat(shapes(drawing, Operation.CUT_INNER)).isEmpty();
        assertThat(shapes(drawing, Operation.DRILL)).hasSize(5);
        assertThat(drawing.parts().get(0).description()).contains("S1 S1 S1 S1 S1, flat");
    }
}
