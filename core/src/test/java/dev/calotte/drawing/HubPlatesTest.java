package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Path;
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
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

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

    private static double distance(Path path, int corner) {
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
        assertThat(shapes(drawing, Operation.CUT_OUTER)).containsExactly(new Circle(Operation.CUT_OUTER, X, Y, 70));
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
        List<Shape> slots = shapes(drawing, Operation.CUT_INNER);
        assertThat(bends).hasSize(5);
        assertThat(slots).hasSize(5);
        double corner = 35 / Math.cos(Math.toRadians(36));
        for (int i = 0; i < 5; i++) {
            Path bend = (Path) bends.get(i);
            Path next = (Path) bends.get((i + 1) % 5);
            assertThat(bend.isClosed()).isFalse();
            assertThat(distance(bend, 0)).isCloseTo(corner, within(1e-9));
            assertThat(bend.x(1)).isCloseTo(next.x(0), within(1e-9));
            assertThat(bend.y(1)).isCloseTo(next.y(0), within(1e-9));
            Path slot = (Path) slots.get(i);
            assertThat((slot.x(0) + slot.x(3)) / 2).isCloseTo(bend.x(1), within(1e-9));
            assertThat((slot.y(0) + slot.y(3)) / 2).isCloseTo(bend.y(1), within(1e-9));
        }
        Path first = (Path) bends.get(0);
        assertThat(first.x(0)).isCloseTo(X + 35, within(1e-9));
        assertThat(first.y(0)).isCloseTo(Y - 35 * Math.tan(Math.toRadians(36)), within(1e-9));
        assertThat(first.x(1)).isCloseTo(X + 35, within(1e-9));
        assertThat(first.y(1)).isCloseTo(Y + 35 * Math.tan(Math.toRadians(36)), within(1e-9));
    }

    @Test
    void slotsAreNarrowClockwiseRectanglesThatReachTheRim() {
        for (Shape shape : shapes(drawing(PARTS, "H4"), Operation.CUT_INNER)) {
            Path slot = (Path) shape;
            assertThat(slot.isClosed()).isTrue();
            assertThat(slot.size()).isEqualTo(4);
            assertThat(Math.hypot(slot.x(1) - slot.x(2), slot.y(1) - slot.y(2))).isCloseTo(2, within(1e-9));
            assertThat(distance(slot, 1)).isCloseTo(Math.hypot(70, 1), within(1e-9));
            assertThat(distance(slot, 2)).isCloseTo(Math.hypot(70, 1), within(1e-9));
            double turn = (slot.x(1) - slot.x(0)) * (slot.y(2) - slot.y(1))
                    - (slot.y(1) - slot.y(0)) * (slot.x(2) - slot.x(1));
            assertThat(turn).isNegative();
        }
    }

    /** Three struts 120 degrees apart: bend lines 45 mm out end on the rim of 70 mm. */
    @Test
    void bendLinesThatDoNotMeetEndOnTheRim() {
        Dome tetrahedron = Dome.of(DomeSpec.of(Solid.TETRAHEDRON, Breakdown.of(1), Size.radius(3000)));
        Drawing drawing = drawing(Parts.of(tetrahedron, Joinery.gap(45).withHubPlate(PLATE)), "H1");
        assertThat(shapes(drawing, Operation.CUT_INNER)).isEmpty();
        for (Shape shape : shapes(drawing, Operation.SCORE)) {
            assertThat(distance((Path) shape, 0)).isCloseTo(70, within(1e-9));
            assertThat(distance((Path) shape, 1)).isCloseTo(70, within(1e-9));
        }
    }

    @Test
    void aTickMarksTheFirstArm() {
        Path tick = (Path) shapes(drawing(PARTS, "H1L"), Operation.ENGRAVE).get(0);
        assertThat(tick.x(0)).isCloseTo(X + 65, within(1e-9));
        assertThat(tick.x(1)).isCloseTo(X + 70, within(1e-9));
        assertThat(tick.y(0)).isEqualTo(Y);
        assertThat(tick.y(1)).isEqualTo(Y);
        Drawing small = drawing(Parts.of(THREE, Joinery.gap(10).withHubPlate(HubPlate.of(60, 4, 40))), "H4");
        Path shorter = (Path) shapes(small, Operation.ENGRAVE).get(0);
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
        assertThat(drawing.parts().get(0).description()).endsWith("S1 S1 S1 S1 S1, flat");
    }
}
