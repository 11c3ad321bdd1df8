package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Shape;
import dev.calotte.drawing.HubPlates;
import dev.calotte.parts.HubPlate;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class PlateCheckTest {

    private static final double WITHIN = 2e-6;
    private static final HubPlate DISC = HubPlate.of(140, 10, 100);
    private static final Parts PARTS =
            Parts.of(CheckedDomes.ICOSAHEDRON.dome(), Joinery.gap(30).withHubPlate(DISC));

    /** A base hub, of which no turn or mirror image is the same. */
    private static final int BASE = 0;

    private static RecordedPlate plate(int kind) {
        return new RecordedPlate(
                Records.dome(PARTS).hubKinds().get(kind),
                DISC.holeMm(),
                DISC.holeCircleMm(),
                OptionalDouble.of(DISC.diameterMm()));
    }

    private static List<Shape> shapes(int kind) {
        return Shapes.of(HubPlates.of(PARTS).get(kind));
    }

    private static List<String> found(List<Shape> shapes) {
        return Found.by(findings -> PlateCheck.of(plate(BASE), shapes, WITHIN, findings));
    }

    private static List<Shape> moved(UnaryOperator<Vector2D> move) {
        return shapes(BASE).stream().map(shape -> Shapes.moved(shape, move)).toList();
    }

    private static String mark() {
        return plate(BASE).kind().mark();
    }

    @Test
    void nothingIsFoundOnRightPlatesWhereverTheyLie() {
        assertThat(HubPlates.of(PARTS)).hasSizeGreaterThan(4);
        for (int kind = 0; kind < HubPlates.of(PARTS).size(); kind++) {
            RecordedPlate plate = plate(kind);
            List<Shape> shapes = shapes(kind);
            assertThat(Found.by(findings -> PlateCheck.of(plate, shapes, WITHIN, findings)))
                    .isEmpty();
        }
        assertThat(found(moved(at -> at.add(new Vector2D(17, -230))))).isEmpty();
    }

    @Test
    void aHoleAtAnotherPlaceIsMissingHereAndForeignThere() {
        List<Shape> shapes = shapes(BASE);
        int hole = Shapes.first(shapes, Operation.DRILL);
        Circle right = (Circle) shapes.get(hole);
        List<Shape> wrong =
                Found.changed(shapes, hole, circle -> Shapes.moved(circle, at -> at.add(new Vector2D(0.001, 0))));
        assertThat(found(wrong))
                .containsExactly(
                        "MISSING " + mark(),
                        "FOREIGN x " + Findings.text(right.xMm() + 0.001) + ", y " + Findings.text(right.yMm()));
    }

    @Test
    void aHoleOfAnotherWidthIsFound() {
        List<Shape> shapes = shapes(BASE);
        int hole = Shapes.first(shapes, Operation.DRILL);
        List<Shape> wrong = Found.changed(shapes, hole, shape -> {
            Circle circle = (Circle) shape;
            return new Circle(circle.operation(), circle.xMm(), circle.yMm(), circle.radiusMm() + 0.25);
        });
        assertThat(found(wrong)).hasSize(2).first().isEqualTo("MISSING " + mark());
    }

    @Test
    void platesTurnedOrMirroredAreFound() {
        assertThat(found(moved(at -> new Vector2D(-at.getX(), at.getY())))).contains("MISSING " + mark());
        assertThat(found(moved(at -> new Vector2D(at.getX(), -at.getY())))).contains("MISSING " + mark());
        assertThat(found(moved(at -> new Vector2D(-at.getY(), at.getX())))).contains("MISSING " + mark());
    }

    @Test
    void aPlateWithoutHolesLacksOneForEachStrut() {
        List<Shape> bare = shapes(BASE).stream()
                .filter(shape -> shape.operation() != Operation.DRILL)
                .toList();
        assertThat(found(bare))
                .filteredOn(finding -> finding.startsWith("MISSING"))
                .hasSameSizeAs(plate(BASE).kind().struts());
    }

    @Test
    void aRimThatIsLargerOrLiesElsewhereIsFound() {
        List<Shape> shapes = new ArrayList<>(shapes(BASE));
        int rim = Shapes.first(shapes, Operation.CUT_OUTER);
        Shape right = shapes.get(rim);
        shapes.set(rim, Shapes.moved(right, at -> at.add(new Vector2D(0.5, 0))));
        assertThat(found(shapes)).containsExactly("DIFFERENT " + mark());
        Vector2D axis = new Vector2D(80, 90);
        shapes.set(rim, Shapes.moved(right, at -> at.scalarMultiply(1.001).subtract(0.001, axis)));
        assertThat(found(shapes)).containsExactly("DIFFERENT " + mark());
    }

    /** The cutter makes holes wider and the rim narrower than its way. */
    @Test
    void aPlateForACutterHasSmallerHolesAndALargerRim() {
        RecordedPlate led = plate(BASE).withCutter(0.2);
        assertThat(led.holeMm()).isEqualTo(DISC.holeMm() - 0.2);
        assertThat(led.holeCircleMm()).isEqualTo(DISC.holeCircleMm());
        assertThat(led.diameterMm()).hasValue(DISC.diameterMm() + 0.2);
        assertThat(Found.by(findings -> PlateCheck.of(led, shapes(BASE), WITHIN, findings)))
                .isNotEmpty();
    }

    /** A shape of someone's own may have holes besides those for the struts, and any rim. */
    @Test
    void ofAPlateOfItsOwnShapeTheHolesForStrutsAreAsked() {
        RecordedPlate own =
                new RecordedPlate(plate(BASE).kind(), DISC.holeMm(), DISC.holeCircleMm(), OptionalDouble.empty());
        List<Shape> more = new ArrayList<>(shapes(BASE));
        more.add(new Circle(Operation.DRILL, 60, 60, 2));
        assertThat(Found.by(findings -> PlateCheck.of(own, more, WITHIN, findings)))
                .isEmpty();
        more.remove(Shapes.first(more, Operation.DRILL));
        assertThat(Found.by(findings -> PlateCheck.of(own, more, WITHIN, findings)))
                .containsExactly("MISSING " + mark());
    }

    /** Whatever a record announces, the time that the search for the axis takes is bounded. */
    @Test
    void aKindOfMoreStrutsThanAnyHubHasIsNotSearchedFor() {
        RecordedDome.HubKind kind = plate(BASE).kind();
        RecordedDome.HubKind crowded = new RecordedDome.HubKind(
                kind.mark(), kind.hand(), 1, Collections.nCopies(50_000, "S1"), kind.gaps(), kind.axialAngles(), true);
        RecordedPlate wrong = new RecordedPlate(crowded, 10, 100, OptionalDouble.empty());
        assertThat(Found.by(findings -> PlateCheck.of(wrong, shapes(BASE), WITHIN, findings)))
                .containsExactly("DIFFERENT " + mark());
    }
}
