package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Line;
import dev.calotte.dome.Dome;
import dev.calotte.dome.Panel;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LayoutTest {

    private static final List<Vector2D> TRIANGLE =
            List.of(new Vector2D(0, 0), new Vector2D(30, 0), new Vector2D(4, 25));

    static Stream<Named<Dome>> domes() {
        return DrawnDomes.all();
    }

    /** ISO 216 and ASME Y14.1; beyond A0 each next size is as wide as the last is high. */
    @Test
    void papersAreTheStandardOnes() {
        assertThat(PaperSize.of(UnitSystem.METRIC))
                .startsWith(new PaperSize(210, 297), new PaperSize(297, 420))
                .contains(new PaperSize(841, 1189), new PaperSize(1189, 1682));
        assertThat(PaperSize.of(UnitSystem.IMPERIAL).get(1).widthMm()).isEqualTo(11 * 25.4);
        assertThat(new PaperSize(210, 297).onItsSide()).isEqualTo(new PaperSize(297, 210));
    }

    @ParameterizedTest
    @CsvSource({
        "6400, 190, METRIC, 1:40",
        "7600, 190, METRIC, 1:40",
        "7601, 190, METRIC, 1:50",
        "100, 190, METRIC, 1.67:1",
        "190, 190, METRIC, 1:1",
        "4560, 190, IMPERIAL, 1:24",
        "4561, 190, IMPERIAL, 1:32"
    })
    void scaleIsTheLargestRoundOneThatFits(double length, double room, UnitSystem units, String text) {
        assertThat(DrawnScale.fitting(length, room, units).text()).isEqualTo(text);
    }

    @Test
    void nothingWithoutSizeIsScaled() {
        assertThatIllegalArgumentException().isThrownBy(() -> DrawnScale.fitting(Double.NaN, 1, UnitSystem.METRIC));
    }

    @Test
    void markHasRoomExactlyUpToTheTriangle() {
        Box box = new Box(0, 0, 8, 3);
        Vector2D at = MarkSpot.in(TRIANGLE, box).orElseThrow();
        for (int k = 0; k < 3; k++) {
            for (double x : new double[] {-4, 4}) {
                for (double y : new double[] {-1.5, 1.5}) {
                    Vector2D corner = at.add(new Vector2D(x, y));
                    assertThat(MarkSpot.cross(TRIANGLE.get(k), TRIANGLE.get((k + 1) % 3), corner))
                            .isPositive();
                }
            }
        }
        assertThat(MarkSpot.in(TRIANGLE, new Box(0, 0, 25, 8))).isEmpty();
    }

    @Test
    void spreadKeepsOrderAndPitchAndMovesNothingThatHasRoom() {
        assertThat(Leaders.spread(new double[] {10, 20, 30}, 4, 0, 40)).containsExactly(10, 20, 30);
        double[] crowded = Leaders.spread(new double[] {38, 38.5, 39, 39}, 4, 0, 40);
        assertThat(crowded).containsExactly(26, 30, 34, 38);
    }

    @Test
    void leadersStandOnTheNearerSideAndEndAtTheirPieces() {
        Paper paper = new Paper(new PaperSize(210, 297), "A sheet");
        Leaders leaders = new Leaders();
        leaders.add("P1", new Vector2D(80, 100));
        leaders.add("P2", new Vector2D(120, 100));
        leaders.draw(paper, new Box(50, 50, 150, 150));
        Draft draft = paper.draft("x", "x", "x", 50);
        List<Line> lines = draft.items().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
        assertThat(lines).extracting(Line::x1).containsExactly(80.0, 120.0);
        assertThat(lines).extracting(Line::x2).containsExactly(50.0, 150.0);
        assertThat(leaders.misfits(new Box(0, 0, 10, 4))).isEqualTo(2);
    }

    @Test
    void crowdedLabelsAreCounted() {
        Label one = new Label("P1", 10, 10, 3.5, Anchor.MIDDLE);
        assertThat(Crowding.count(List.of(one, new Label("P2", 30, 10, 3.5, Anchor.MIDDLE))))
                .isZero();
        assertThat(Crowding.count(List.of(one, new Label("P2", 12, 11, 3.5, Anchor.MIDDLE))))
                .isEqualTo(1);
    }

    @Test
    void wordsAreBrokenAndTitlesShortened() {
        String text = "one two three four five six seven";
        assertThat(Letters.wrapped(text, 3.5, 40))
                .hasSizeGreaterThan(1)
                .allSatisfy(line -> assertThat(Letters.widthMm(line, 3.5)).isLessThanOrEqualTo(40));
        assertThat(String.join(" ", Letters.wrapped(text, 3.5, 40))).isEqualTo(text);
        assertThat(Letters.shortened("Observatory", 5, 20)).isEqualTo("Ob…");
        assertThat(Letters.shortened("Dome", 5, 40)).isEqualTo("Dome");
    }

    /** What is known of the widths may not be less than that of a common typeface. */
    @Test
    void lettersAreTakenAsWideAsThoseOfACommonTypeface() {
        for (String text : List.of("P12L-10.35", "S3", "H1R-5.15", "1319.7", "row 12", "start ray")) {
            assertThat(Letters.widthMm(text, 1)).as(text).isGreaterThan(DrawingCheck.width(text));
        }
    }

    @ParameterizedTest
    @MethodSource("domes")
    void spreadPanelsLieSideBySideAndFaceTheReader(Dome dome) {
        for (Spread spread : Spread.of(dome)) {
            for (Panel panel : spread.panels()) {
                List<Vector2D> at = spread.corners(panel);
                assertThat(MarkSpot.cross(at.get(0), at.get(1), at.get(2)))
                        .as("panel %s", panel)
                        .isPositive();
            }
        }
        assertThat(Spread.of(dome).stream().mapToInt(s -> s.panels().size()).sum())
                .isEqualTo(dome.panels().size());
    }

    /** A strip keeps the area of its panels, and every panel is seen from outside. */
    @ParameterizedTest
    @MethodSource("domes")
    void stripsKeepTheAreaOfTheirPanels(Dome dome) {
        for (RowStrip strip : RowStrip.of(dome)) {
            double flat = 0;
            double real = 0;
            for (int i = 0; i < strip.panels().size(); i++) {
                List<Vector2D> at = strip.corners(i);
                double twice = MarkSpot.cross(at.get(0), at.get(1), at.get(2));
                assertThat(twice).as("panel %s", strip.panels().get(i)).isPositive();
                flat += twice / 2;
                real += area(dome, strip.panels().get(i));
            }
            assertThat(flat).isCloseTo(real, within(1e-9 * real));
        }
    }

    private static double area(Dome dome, Panel panel) {
        List<Vector3D> at =
                panel.hubs().stream().map(h -> dome.hubs().get(h).position()).toList();
        return at.get(1)
                        .subtract(at.get(0))
                        .crossProduct(at.get(2).subtract(at.get(0)))
                        .getNorm()
                / 2;
    }
}
