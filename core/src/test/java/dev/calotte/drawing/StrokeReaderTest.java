package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.PieceLabels.Label;
import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Drawing.Part;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.testing.Cases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StrokeReaderTest {

    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789"
            + ".,-+/_():'\"%=#&*\u00d7\u00b0\u2190\u2191\u2192\u2193";

    static List<Drawing> drawings() {
        return LetteringTest.drawings();
    }

    private static List<String> words(List<? extends Shape> shapes) {
        return StrokeReader.texts(shapes).stream().map(Label::text).toList();
    }

    /** Rounded as SVG is. */
    private static Polyline rounded(Polyline path) {
        double[] xy = new double[2 * path.size()];
        for (int i = 0; i < path.size(); i++) {
            xy[2 * i] = Math.rint(1e4 * path.x(i)) / 1e4;
            xy[2 * i + 1] = Math.rint(1e4 * path.y(i)) / 1e4;
        }
        return Polyline.open(path.operation(), xy);
    }

    private static void assertSame(Label read, Label written) {
        assertThat(read.text()).isEqualTo(written.text());
        assertThat(read.xMm()).isCloseTo(written.xMm(), within(1e-3));
        assertThat(read.yMm()).isCloseTo(written.yMm(), within(1e-3));
        assertThat(read.heightMm()).isCloseTo(written.heightMm(), within(1e-3));
        assertThat(Math.cos(read.turnRad() - written.turnRad())).isCloseTo(1, within(1e-5));
    }

    /** Any letters in any height and direction, rounded to four decimals. */
    @Test
    void whatIsWrittenIsReadBack() {
        Cases.each(400, (random, size) -> {
            StringBuilder text = new StringBuilder("R");
            for (int i = 0; i < random.nextInt(12); i++) {
                text.append(random.nextInt(8) == 0 ? " " : "").append(LETTERS.charAt(random.nextInt(LETTERS.length())));
            }
            Label label = new Label(
                    text.toString(),
                    3000 * random.nextDouble(),
                    2000 * random.nextDouble(),
                    7 * random.nextDouble() - 3.5,
                    0.5 + 20 * random.nextDouble());
            List<Polyline> strokes =
                    StrokeText.of(label.text(), label.heightMm())
                            .middle(label.xMm(), label.yMm(), label.turnRad())
                            .stream()
                            .map(StrokeReaderTest::rounded)
                            .toList();
            assertThat(words(strokes)).containsExactly(label.text());
            assertSame(StrokeReader.texts(strokes).get(0), label);
        });
    }

    /** Every letter with more than one side, alone and upright. */
    @Test
    void lettersAreReadAlone() {
        for (String letter : LETTERS.codePoints().mapToObj(Character::toString).toList()) {
            List<Polyline> strokes = StrokeText.of(letter, 7).left(30, 40, 0);
            boolean certain = strokes.size() > 1 || strokes.get(0).size() > 2;
            assertThat(words(strokes)).isEqualTo(certain ? List.of(letter) : List.of());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"-5", "/8", "'A", "_x", "--R", "69", "96", "+4", "\u00d7 2", "6-9", "1  2", "ll", "I", "row 7"})
    void firstLettersOfOneSideAndThoseThatTurnIntoOthersAreRead(String text) {
        for (double turn = -3; turn < 3.2; turn += 0.1) {
            assertThat(words(StrokeText.of(text, 3.5).middle(10, 20, turn)))
                    .as(text + " at " + turn)
                    .isEqualTo(
                            text.equals("I") && Math.abs(turn) > 1.5
                                    ? words(StrokeText.of("I", 3.5).middle(10, 20, turn))
                                    : List.of(text));
        }
    }

    /** All pieces and sheets of the lettering's own test: what is read, written again, gives the strokes that were read. */
    @ParameterizedTest
    @MethodSource("drawings")
    void everyLabelOfAPieceIsReadBack(Drawing drawing) {
        for (Part part : drawing.parts()) {
            List<Label> labels = StrokeReader.texts(part.shapes());
            if (part.shapes().stream().anyMatch(shape -> shape.operation() == Operation.CUT_OUTER)) {
                assertThat(labels).as(part.mark()).isNotEmpty();
                assertThat(labels.get(0).text()).isEqualTo(part.mark());
                assertThat(labels).extracting(Label::text).containsAnyOf("OUT", "IN");
                assertThat(writtenAgain(labels))
                        .as(part.mark())
                        .isEqualTo(LetteringTest.letters(part).size());
            }
        }
    }

    private static int writtenAgain(List<Label> labels) {
        return labels.stream()
                .mapToInt(label -> StrokeText.of(label.text(), 1).left(0, 0, 0).size())
                .sum();
    }

    /** They are told apart, and each is found where it stands. */
    @Test
    void twoMarksThatAreSwappedAreTold() {
        List<Shape> right = new ArrayList<>();
        right.addAll(StrokeText.of("P2-5.02", 7).middle(100, 100, 0.3));
        right.add(new Circle(Operation.DRILL, 5, 5, 2));
        right.add(Polyline.open(Operation.ENGRAVE, 0, 0, 5, 0));
        right.addAll(StrokeText.of("P2-5.03", 7).middle(300, 100, -2));
        List<Label> read = StrokeReader.texts(right);
        assertThat(read).hasSize(2);
        assertSame(read.get(0), new Label("P2-5.02", 100, 100, 0.3, 7));
        assertSame(read.get(1), new Label("P2-5.03", 300, 100, -2, 7));
    }

    /** Half of them from their ends, all in one path each, as some readers give them. */
    @Test
    void directionsOfSidesDoNotMatter() {
        List<Polyline> turned = new ArrayList<>();
        for (Polyline path : StrokeText.of("\u2192 P4L-3.07 x8", 5).middle(50, 60, 1)) {
            for (int i = 1; i < path.size(); i++) {
                double[] ends = {path.x(i - 1), path.y(i - 1), path.x(i), path.y(i)};
                double[] back = {ends[2], ends[3], ends[0], ends[1]};
                turned.add(Polyline.open(Operation.ENGRAVE, i % 2 == 0 ? ends : back));
            }
        }
        assertThat(words(turned)).containsExactly("\u2192 P4L-3.07 x8");
    }

    @Test
    void whatIsNotEngravedIsNotRead() {
        List<Shape> shapes = new ArrayList<>(Reference.at(10).shapes());
        assertThat(shapes).isNotEmpty();
        assertThat(words(shapes)).isEmpty();
    }

    /** A row of equal lines is a text of hyphens at most, which is none; and the time does not grow with its square. */
    @Test
    void linesInARowAreNoText() {
        List<Polyline> row = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            row.add(Polyline.open(Operation.ENGRAVE, 8.5 * i, 0, 8.5 * i + 5, 0));
        }
        assertThat(words(row)).isEmpty();
        assertThat(words(Collections.emptyList())).isEmpty();
    }
}
