package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class StrokeTextTest {

    private static final GeometryFactory JTS = new GeometryFactory();
    private static final double SAME = 1e-12;
    private static final String PROMISED = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
            + " .,-+/_():'\"%=#&*\u00d7\u00b0\u2190\u2191\u2192\u2193";

    static List<String> letters() {
        return PROMISED.codePoints()
                .filter(letter -> letter != ' ')
                .mapToObj(Character::toString)
                .toList();
    }

    /** Twelve millimetres high, so that the figures are those of the grid. */
    private static List<Polyline> strokes(String text) {
        return StrokeText.of(text, 12).left(0, 0, 0);
    }

    private static LineString line(Polyline path) {
        Coordinate[] places = new Coordinate[path.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = new Coordinate(path.x(i), path.y(i));
        }
        return JTS.createLineString(places);
    }

    private static Geometry ink(String text) {
        return JTS.createMultiLineString(
                strokes(text).stream().map(StrokeTextTest::line).toArray(LineString[]::new));
    }

    private static List<LineString> segments(String text) {
        List<LineString> segments = new ArrayList<>();
        for (Polyline path : strokes(text)) {
            for (int i = 1; i < path.size(); i++) {
                segments.add(
                        line(Polyline.open(Operation.ENGRAVE, path.x(i - 1), path.y(i - 1), path.x(i), path.y(i))));
            }
        }
        return segments;
    }

    @Test
    void theAlphabetIsThePromisedOne() {
        assertThat(StrokeAlphabet.letters())
                .containsExactlyInAnyOrderElementsOf(
                        PROMISED.codePoints().boxed().toList());
    }

    /** The box is as wide as the letter, from what hangs below the base line by a third to what brackets rise by. */
    @ParameterizedTest
    @MethodSource("letters")
    void everyLetterIsDrawnInsideItsBox(String letter) {
        assertThat(strokes(letter)).isNotEmpty().allMatch(path -> !path.isClosed());
        assertThat(strokes(letter)).allMatch(path -> path.operation() == Operation.ENGRAVE);
        assertThat(ink(letter).getLength()).isGreaterThan(2);
        assertThat(ink(letter).getEnvelopeInternal().getMinX()).isZero();
        assertThat(ink(letter).getEnvelopeInternal().getMaxX()).isCloseTo(StrokeText.width(letter, 12), within(SAME));
        assertThat(ink(letter).getEnvelopeInternal().getMinY()).isGreaterThanOrEqualTo(-4);
        assertThat(ink(letter).getEnvelopeInternal().getMaxY()).isLessThanOrEqualTo(13.5);
    }

    @Test
    void capitalsAndDigitsStandOnTheBaseLineAndAreOneCapitalHigh() {
        for (String letter : letters()) {
            if (letter.matches("[A-Z0-9]")) {
                assertThat(ink(letter).getEnvelopeInternal().getMinY())
                        .as(letter)
                        .isZero();
                assertThat(ink(letter).getEnvelopeInternal().getMaxY())
                        .as(letter)
                        .isEqualTo(12);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("letters")
    void nothingIsBurntTwice(String letter) {
        List<LineString> segments = segments(letter);
        for (int i = 0; i < segments.size(); i++) {
            assertThat(segments.get(i).getLength()).isGreaterThan(0.1);
            for (int j = 0; j < i; j++) {
                Geometry shared = segments.get(i).intersection(segments.get(j));
                assertThat(shared.getLength())
                        .as("%s and %s", segments.get(i), segments.get(j))
                        .isZero();
            }
        }
    }

    /** Of any two letters one has a stroke that keeps a ninth of a capital's height from all of the other. */
    @ParameterizedTest
    @MethodSource("letters")
    void lettersAreTold(String letter) {
        for (String other : letters()) {
            if (!other.equals(letter)) {
                assertThat(DiscreteHausdorffDistance.distance(ink(letter), ink(other), 0.1))
                        .as("%s and %s", letter, other)
                        .isGreaterThan(12.0 / 9);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u00d8", "\u00e4", "\u3042", "\n", "\ud83d\ude00"})
    void aLetterThatIsMissingIsNamedAndNeverDropped(String letter) {
        assertThatThrownBy(() -> StrokeText.of("P1" + letter, 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"" + letter + "\" (U+")
                .hasMessageContaining(Integer.toHexString(letter.codePointAt(0)).toUpperCase(Locale.ROOT));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void lettersHaveAHeight(double height) {
        assertThatThrownBy(() -> StrokeText.of("P1", height)).isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: H is 8 of 12 wide, letters keep 3.5 apart, a space is 4 wide. */
    @Test
    void widthsAddUp() {
        assertThat(StrokeText.width("H", 6)).isCloseTo(4, within(SAME));
        assertThat(StrokeText.width("HH", 6)).isCloseTo(9.75, within(SAME));
        assertThat(StrokeText.width("H H", 6)).isCloseTo(13.5, within(SAME));
        assertThat(StrokeText.width("", 6)).isZero();
        assertThat(StrokeText.of("", 6).left(0, 0, 0)).isEmpty();
    }

    @Test
    void lettersFollowOneAnother() {
        Geometry one = ink("HT");
        assertThat(one.getEnvelopeInternal().getMaxX()).isEqualTo(8 + 3.5 + 8);
        assertThat(strokes("HT")).hasSize(5);
        assertThat(strokes("HT").get(4).x(0)).isEqualTo(8 + 3.5 + 4);
    }

    /** An H is symmetric, so the middle of its strokes is that of the text. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 1.5707963267948966, 3, -2})
    void theMiddleOfTheTextLiesWhereItIsPut(double turn) {
        Geometry ink = JTS.createMultiLineString(StrokeText.of("H", 5).middle(30, 40, turn).stream()
                .map(StrokeTextTest::line)
                .toArray(LineString[]::new));
        assertThat(ink.getCentroid().getX()).isCloseTo(30, within(1e-9));
        assertThat(ink.getCentroid().getY()).isCloseTo(40, within(1e-9));
    }

    /** The stem of an L runs from its top to the base line, its foot along the direction of reading. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 1.5707963267948966, 3, -2})
    void textIsReadInTheDirectionAskedFor(double turn) {
        Polyline letter = StrokeText.of("L", 12).left(30, 40, turn).get(0);
        Vector2D along = new Vector2D(Math.cos(turn), Math.sin(turn));
        Vector2D up = new Vector2D(-Math.sin(turn), Math.cos(turn));
        assertThat(place(letter, 1).distance(new Vector2D(30, 40))).isLessThan(SAME);
        assertThat(place(letter, 0).subtract(place(letter, 1)).distance(up.scalarMultiply(12)))
                .isLessThan(1e-9);
        assertThat(place(letter, 2).subtract(place(letter, 1)).distance(along.scalarMultiply(7)))
                .isLessThan(1e-9);
    }

    private static Vector2D place(Polyline path, int corner) {
        return new Vector2D(path.x(corner), path.y(corner));
    }
}
