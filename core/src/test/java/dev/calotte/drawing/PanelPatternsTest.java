package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Panel;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.PanelKind;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PanelPatternsTest {

    static List<Parts> domes() {
        return List.of(
                parts(new Breakdown(4, 0), 2600), parts(new Breakdown(2, 1), 30), parts(new Breakdown(5, 0), 9e5));
    }

    private static Parts parts(Breakdown breakdown, double radiusMm) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, breakdown, Size.radius(radiusMm));
        return Parts.of(Dome.of(spec), Joinery.nodeToNode());
    }

    /** The sides of a real panel, counter-clockwise from outside, are those of its pattern in the same sense. */
    @ParameterizedTest
    @MethodSource("domes")
    void aPatternIsThePanelSeenFromOutside(Parts parts) {
        List<Drawing> drawings = PanelPatterns.of(parts, UnitSystem.METRIC);
        double slack = 1e-8 * parts.dome().radiusMm();
        for (Panel panel : parts.dome().panels()) {
            double[] sides = sides(outline(drawings.get(parts.panelKinds().indexOf(parts.kindOf(panel)))));
            double[] wanted = panel.struts().stream()
                    .mapToDouble(s -> parts.dome().struts().get(s).lengthMm())
                    .toArray();
            assertThat(List.of(0, 1, 2)).anySatisfy(turn -> {
                for (int k = 0; k < 3; k++) {
                    assertThat(sides[(k + turn) % 3]).isCloseTo(wanted[k], within(slack));
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void everyShapeLiesInsideTheSheetAndOutlinesRunCounterClockwise(Parts parts) {
        for (Drawing drawing : PanelPatterns.of(parts, UnitSystem.METRIC)) {
            for (Drawing.Part part : drawing.parts()) {
                part.shapes().forEach(shape -> checkInside((Polyline) shape, drawing));
            }
            Polyline outline = outline(drawing);
            double twice = 0;
            for (int k = 0; k < 3; k++) {
                int next = (k + 1) % 3;
                twice += outline.x(k) * outline.y(next) - outline.x(next) * outline.y(k);
            }
            assertThat(twice).isPositive();
        }
    }

    @Test
    void theReferenceIsExactlyAHundredMillimetres() {
        for (Drawing drawing : PanelPatterns.of(domes().get(0), UnitSystem.METRIC)) {
            Polyline line = (Polyline) drawing.parts().get(1).shapes().get(0);
            assertThat(line.operation()).isEqualTo(Operation.REF);
            assertThat(line.x(1) - line.x(0)).isEqualTo(100);
        }
    }

    @Test
    void aPatternIsNamedAfterItsKindAndSaysHowMany() {
        Parts parts = domes().get(0);
        List<Drawing> drawings = PanelPatterns.of(parts, UnitSystem.METRIC);
        assertThat(drawings.stream().map(Drawing::name))
                .containsExactlyElementsOf(parts.panelKinds().stream()
                        .map(PanelKind::mark)
                        .map("panels/"::concat)
                        .toList());
        Drawing left = drawings.stream()
                .filter(d -> d.name().equals("panels/P3L"))
                .findFirst()
                .orElseThrow();
        assertThat(left.title()).contains("P3L", "cut 60", "net");
        assertThat(left.parts().get(0).description()).startsWith("left hand, 60 pieces, sides ");
    }

    /**
     * Struts carry the marks of the lengths that they lie below. Written here by the width of the text: a label's strokes
     * are those of the mark, along the side that is as long as the strut.
     */
    @Test
    void alongEachSideStandsTheMarkOfItsStrut() {
        Parts parts = domes().get(0);
        List<Drawing> drawings = PanelPatterns.of(parts, UnitSystem.METRIC);
        for (int i = 0; i < drawings.size(); i++) {
            PanelKind kind = parts.panelKinds().get(i);
            Polyline outline = outline(drawings.get(i));
            List<Shape> engraved = drawings.get(i).parts().get(0).shapes().stream()
                    .filter(shape -> shape.operation() == Operation.ENGRAVE)
                    .toList();
            int from = List.of(kind.mark(), "cut " + kind.count(), "OUT").stream()
                    .mapToInt(text -> StrokeText.of(text, 1).left(0, 0, 0).size())
                    .sum();
            for (int side = 0; side < 3; side++) {
                double length = sides(outline)[side];
                String mark = parts.strutKinds().stream()
                        .filter(strut -> Math.abs(strut.lengthMm() - length) < 1e-6)
                        .findFirst()
                        .orElseThrow()
                        .mark();
                double turn = Math.atan2(
                        outline.y((side + 1) % 3) - outline.y(side), outline.x((side + 1) % 3) - outline.x(side));
                double x = (outline.x(side) + outline.x((side + 1) % 3)) / 2 - 8 * Math.sin(turn);
                double y = (outline.y(side) + outline.y((side + 1) % 3)) / 2 + 8 * Math.cos(turn);
                for (Polyline expected : StrokeText.of(mark, 5).middle(x, y, turn)) {
                    Polyline stroke = (Polyline) engraved.get(from++);
                    assertThat(stroke.size()).isEqualTo(expected.size());
                    assertThat(stroke.x(0)).isCloseTo(expected.x(0), within(1e-9));
                    assertThat(stroke.y(1)).isCloseTo(expected.y(1), within(1e-9));
                }
            }
            assertThat(from).isEqualTo(engraved.size());
        }
    }

    private static Polyline outline(Drawing drawing) {
        List<Shape> cut = drawing.parts().get(0).shapes().stream()
                .filter(shape -> shape.operation() == Operation.CUT_OUTER)
                .toList();
        assertThat(cut).hasSize(1);
        return (Polyline) cut.get(0);
    }

    private static double[] sides(Polyline outline) {
        double[] sides = new double[3];
        for (int k = 0; k < 3; k++) {
            double x = outline.x((k + 1) % 3) - outline.x(k);
            double y = outline.y((k + 1) % 3) - outline.y(k);
            sides[k] = Math.sqrt(x * x + y * y);
        }
        return sides;
    }

    private static void checkInside(Polyline path, Drawing drawing) {
        for (int k = 0; k < path.size(); k++) {
            assertThat(path.x(k)).isBetween(0.0, drawing.widthMm());
            assertThat(path.y(k)).isBetween(0.0, drawing.heightMm());
        }
    }
}
