package dev.calotte.dxf;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.contour.Contours;
import dev.calotte.contour.Contours.Closing;
import dev.calotte.document.Circle;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DxfDrawingTest {

    @Test
    void entitiesStandInWorkingOrderOnLayersOfTheirOperation() throws IOException {
        List<String> layers = Tags.of(Samples.letterF()).entities().stream()
                .map(entity -> entity.text(8))
                .distinct()
                .toList();
        assertThat(layers).containsExactly("ENGRAVE", "SCORE", "DRILL", "CUT_INNER", "CUT_OUTER", "REF");
    }

    @Test
    void outlineIsOneClosedPolylineThatDoesNotRepeatItsFirstCorner() throws IOException {
        List<Tags.Entry> entities = Tags.of(Samples.drawing(Polyline.closed(Operation.CUT_OUTER, 0, 0, 10, 0, 5, 8)))
                .entities();
        assertThat(entities)
                .extracting(Tags.Entry::type)
                .containsExactly("POLYLINE", "VERTEX", "VERTEX", "VERTEX", "SEQEND");
        assertThat(entities.get(0).text(66)).isEqualTo("1");
        assertThat(entities.get(0).text(70)).isEqualTo("1");
        assertThat(corners(entities)).containsExactly("0.0 0.0 0.0", "10.0 0.0 0.0", "5.0 8.0 0.0");
    }

    /** Group 42 of a vertex is the tangent of a quarter of the sweep of the side after it (Release 12 manual, VERTEX). */
    @Test
    void arcsAreBulgesOfTheCornerTheyBeginAt() throws IOException {
        double[] corners = {10, 0, 0, 10, -10, 0};
        List<Tags.Entry> vertices = Tags.of(Samples.drawing(
                        Polyline.closed(Operation.CUT_OUTER, corners, new double[] {0.41421356237, 0, -0.5})))
                .entries("VERTEX");
        assertThat(vertices.get(0).text(42)).isEqualTo("0.414213562");
        assertThat(vertices.get(1).tags().tags()).noneMatch(tag -> tag.code() == 42);
        assertThat(vertices.get(2).text(42)).isEqualTo("-0.5");
    }

    @Test
    void aBulgeThatRoundsToNothingIsLeftOut() throws IOException {
        double[] corners = {10, 0, 0, 10, -10, 0};
        assertThat(Tags.of(Samples.drawing(
                                Polyline.closed(Operation.CUT_OUTER, corners, new double[] {1e-8, -1e-8, 0})))
                        .tags())
                .noneMatch(tag -> tag.code() == 42);
    }

    /** For readers that pass over the flag. */
    @ParameterizedTest
    @EnumSource(
            value = Dialect.class,
            names = {"POLYLINE", "LWPOLYLINE"})
    void outlineThatIsClosedByItsCornerHasNoFlagAndReadsBackClosed(Dialect dialect) throws IOException {
        Polyline outline =
                Polyline.closed(Operation.CUT_OUTER, new double[] {0, 0, 10, 0, 5, 8}, new double[] {0, 0, 0.25});
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DxfWriter(dialect, Contours.PLAIN.withClosing(Closing.CORNER)).write(Samples.drawing(outline), out);
        Tags tags = Tags.parse(out.toByteArray());
        assertThat(tags.entities().get(0).text(70)).isEqualTo("0");
        assertThat(tags.entities().stream()
                        .flatMap(entity -> entity.tags().tags().stream())
                        .filter(tag -> tag.code() == 10)
                        .map(Tags.Tag::value))
                .endsWith("0.0", "10.0", "5.0", "0.0");
        Polyline read = (Polyline) DxfOutlines.read(new ByteArrayInputStream(out.toByteArray()))
                .all()
                .get(0)
                .shape();
        assertThat(read.isClosed()).isTrue();
        assertThat(read.size()).isEqualTo(3);
        assertThat(read.bulge(2)).isEqualTo(0.25);
    }

    @Test
    void lineWithTwoEndsIsAnOpenPolyline() throws IOException {
        List<Tags.Entry> entities = Tags.of(Samples.drawing(Polyline.open(Operation.SCORE, 1, 2, 3, 4)))
                .entities();
        assertThat(entities.get(0).text(70)).isEqualTo("0");
        assertThat(corners(entities)).containsExactly("1.0 2.0 0.0", "3.0 4.0 0.0");
    }

    @Test
    void holeIsACircle() throws IOException {
        List<Tags.Entry> entities = Tags.of(Samples.drawing(new Circle(Operation.DRILL, 7, 6.5, 4.25)))
                .entities();
        assertThat(entities).hasSize(1);
        assertThat(entities.get(0).type()).isEqualTo("CIRCLE");
        assertThat(List.of(10, 20, 30, 40)).extracting(entities.get(0)::number).containsExactly(7.0, 6.5, 0.0, 4.25);
    }

    @Test
    void cornersThatTwoOutlinesShareAreTheSameText() throws IOException {
        double x = 1000.0 / 3;
        double y = Math.nextUp(700.0 / 9);
        List<String> corners = corners(Tags.of(Samples.drawing(
                        Polyline.closed(Operation.CUT_OUTER, 0, 0, x, y, 0, 200),
                        Polyline.closed(Operation.CUT_OUTER, Math.nextDown(x), 700.0 / 9, 400, 50, 400, 200)))
                .entities());
        assertThat(corners.get(1)).isEqualTo(corners.get(3)).isEqualTo("333.333333 77.777778 0.0");
    }

    /** A fixed seed names the case; it is shown if the test fails. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void numbersReadBackToHalfAMillionthOfAMillimetre(long seed) throws IOException {
        double[] xy = new Random(seed).doubles(60, -3000, 3000).toArray();
        List<Double> read = new ArrayList<>();
        for (Tags.Entry vertex :
                Tags.of(Samples.drawing(Polyline.open(Operation.ENGRAVE, xy))).entries("VERTEX")) {
            read.add(vertex.number(10));
            read.add(vertex.number(20));
        }
        assertThat(read).hasSize(xy.length);
        for (int i = 0; i < xy.length; i++) {
            assertThat(read.get(i)).isBetween(xy[i] - 0.5000001e-6, xy[i] + 0.5000001e-6);
        }
    }

    @Test
    void coloursOfOperationsDiffer() {
        assertThat(Arrays.stream(Operation.values()).map(Layer::of).map(Layer::colour))
                .doesNotHaveDuplicates()
                .allMatch(colour -> colour >= 1 && colour <= 255);
    }

    private static List<String> corners(List<Tags.Entry> entities) {
        return entities.stream()
                .filter(entity -> entity.type().equals("VERTEX"))
                .map(vertex -> vertex.text(10) + " " + vertex.text(20) + " " + vertex.text(30))
                .toList();
    }
}
