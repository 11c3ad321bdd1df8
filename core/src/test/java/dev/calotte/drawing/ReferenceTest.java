package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReferenceTest {

    @Test
    void lineIsAHundredMillimetresLongAndNothingIsWorkedAlongIt() {
        Part part = Reference.at(10);
        Polyline line = (Polyline) part.shapes().get(0);
        assertThat(line.x(1) - line.x(0)).isEqualTo(100);
        assertThat(line.y(1)).isEqualTo(line.y(0));
        assertThat(part.shapes()).extracting(Shape::operation).containsOnly(Operation.REF);
    }

    @Test
    void lengthIsWrittenAboveTheLine() {
        List<Shape> letters = Reference.at(10).shapes();
        assertThat(letters).hasSizeGreaterThan(8);
        for (Shape letter : letters.subList(3, letters.size())) {
            Polyline stroke = (Polyline) letter;
            for (int i = 0; i < stroke.size(); i++) {
                assertThat(stroke.x(i)).isBetween(10.0, 110.0);
                assertThat(stroke.y(i)).isBetween(11.0, 10 + Reference.ABOVE);
            }
        }
    }

    @Test
    void onAnEmptySheetItLiesInTheCorner() {
        assertThat(corner(Reference.on(List.of(), 200, 100))).containsExactly(2.0, 4.0);
    }

    @Test
    void itLiesBesideWhatIsCut() {
        List<Part> left = List.of(part(0, 0, 100, 0, 100, 100, 0, 100));
        assertThat(corner(Reference.on(left, 300, 100))).containsExactly(112.0, 4.0);
        assertThat(corner(Reference.on(left, 110, 200))).containsExactly(2.0, 114.0);
    }

    @Test
    void itLiesInTheFreeHalfOfARectangleWithATriangle() {
        List<Part> triangle = List.of(part(0, 0, 600, 0, 0, 300));
        double[] corner = corner(Reference.on(triangle, 600, 300));
        // its lower left corner, with what is kept clear round it, lies beyond the slanting side
        assertThat((corner[0] - 2) / 600 + (corner[1] - 4) / 300).isGreaterThanOrEqualTo(1);
    }

    @Test
    void onAFullSheetItLiesAcrossAndOnATooSmallOneNowhere() {
        List<Part> full = List.of(part(-5, -5, 305, -5, 305, 105, -5, 105));
        assertThat(corner(Reference.on(full, 300, 100))).containsExactly(2.0, 4.0);
        assertThat(Reference.on(List.of(), 103, 100)).isEmpty();
        assertThat(Reference.on(List.of(), 200, 12)).isEmpty();
    }

    private static Part part(double... xy) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polyline.closed(Operation.CUT_OUTER, xy));
        return new Part("P1", "", shapes);
    }

    private static double[] corner(Optional<Part> part) {
        Polyline line = (Polyline) part.orElseThrow().shapes().get(0);
        return new double[] {line.x(0), line.y(0)};
    }
}
