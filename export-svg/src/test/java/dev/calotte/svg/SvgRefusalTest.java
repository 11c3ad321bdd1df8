package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.calotte.document.Circle;
import dev.calotte.document.Document;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Disc;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.document.Picture.Weight;
import dev.calotte.document.Polyline;
import dev.calotte.document.Wireframe;
import dev.calotte.testing.CountingStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgRefusalTest {

    private static final Polyline SCORE = Polyline.open(Operation.SCORE, 1, 2, 3, 4);

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void refusesNumbersThatAreNotFinite(double wrong) {
        refuses(Samples.drawing(Polyline.open(Operation.SCORE, 0, 0, wrong, 1)), "no file can hold the number");
        refuses(
                Samples.drawing(Polyline.closed(
                        Operation.CUT_OUTER, new double[] {0, 0, 10, 0, 5, 8}, new double[] {0, wrong, 0})),
                "no file can hold the number");
        refuses(Samples.drawing(new Circle(Operation.DRILL, 0, 0, wrong)), "no file can hold the number");
        refuses(new Drawing("x", "", wrong, 10, List.of()), "no file can hold the number");
        refuses(Samples.picture(new Label("a", wrong, 0, 3, Anchor.START)), "no file can hold the number");
        refuses(Samples.picture(new Label("a", 0, 0, wrong, Anchor.START)), "no file can hold the number");
    }

    @Test
    void refusesSidesWithoutLengthAfterRounding() {
        refuses(Samples.drawing(Polyline.open(Operation.SCORE, 10, 0, 10.00004, 0)), "no length at x 10.00004, y 0.0");
        refuses(Samples.drawing(Polyline.closed(Operation.SCORE, 0, 0, 10, 0, 5, 5, 0, 0)), "first corner is repeated");
        refuses(
                Samples.drawing(Polyline.closed(
                        Operation.SCORE, new double[] {0, 0, 0.00004, 0, 5, 8}, new double[] {1, 0, 0})),
                "an arc has no length at x 4.0E-5, y 0.0");
        refuses(Samples.picture(new Line(1, 2, 1, 2, Weight.FINE, false)), "no length at x 1.0, y 2.0");
    }

    @Test
    void refusesWhatWouldBeCutTwice() {
        Polyline triangle = Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8);
        refuses(Samples.drawing(triangle, triangle), ": 3 edges would be cut twice, the first between");
    }

    @Test
    void keepsLinesThatEndWhereTheyBegan() throws IOException {
        assertThat(Samples.bytes(Samples.drawing(Polyline.open(Operation.ENGRAVE, 0, 0, 10, 0, 5, 8, 0, 0))))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 4e-5})
    void refusesCirclesWithoutRadiusAndPagesWithoutArea(double length) {
        refuses(Samples.drawing(new Circle(Operation.DRILL, 1, 2, length)), "no radius at x");
        refuses(Samples.picture(new Disc(1, 2, length, 1, Weight.FINE, "")), "no radius at x 1.0, y 2.0");
        refuses(new Drawing("x", "", 10, length, List.of()), "a page cannot be");
        refuses(new Picture("x", "", length, 10, List.of()), "a page cannot be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "\u00e4", "a:b", "\""})
    void refusesMarksOfOtherCharacters(String mark) {
        refuses(Samples.drawing(mark, SCORE), "the mark \"" + mark + "\" is not allowed");
    }

    @Test
    void refusesMarksThatComeTwice() {
        Drawing.Part part = new Drawing.Part("P1", "", List.of(SCORE));
        refuses(new Drawing("x", "", 10, 10, List.of(part, part)), "the mark \"P1\" is not allowed or used twice");
    }

    @Test
    void refusesFacetsOfFewCornersAndColoursThatAreNone() {
        refuses(
                Samples.picture(new Facet(List.of(0.0, 0.0, 1.0, 1.0), 1, Hatch.NONE, Weight.FINE, "")),
                "a facet needs x and y of three corners at least");
        refuses(Samples.picture(Samples.facet(-1, Hatch.NONE, "")), "there is no colour -1");
        refuses(Samples.picture(new Label("a", 0, 0, 0, Anchor.START)), "the label a has no height");
    }

    @Test
    void refusesDocumentsItDoesNotAccept() {
        Wireframe frame = new Wireframe("frame-3d", "", List.of());
        assertThat(new SvgExporter().accepts(frame)).isFalse();
        refuses(frame, "SVG holds drawings and pictures");
    }

    @Test
    void acceptsDrawingsAndPictures() {
        assertThat(Samples.all()).allMatch(new SvgExporter()::accepts);
    }

    private static void refuses(Document document, String why) {
        CountingStream out = new CountingStream();
        assertThatThrownBy(() -> new SvgExporter().write(document, out))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(document.name())
                .hasMessageContaining(why);
        assertThat(out.count()).as("bytes before the refusal").isZero();
    }
}
