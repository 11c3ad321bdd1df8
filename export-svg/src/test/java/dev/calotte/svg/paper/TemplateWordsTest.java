package dev.calotte.svg.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Polyline;
import dev.calotte.export.PageSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Where the words of a template stand. */
class TemplateWordsTest {

    private static final double ROUNDING_MM = 1e-6;

    private static Drawing triangle(double side) {
        Polyline outline = Polyline.closed(Operation.CUT_OUTER, 0, 0, side, 0, side / 2, 0.866 * side);
        Drawing.Part part = new Drawing.Part("P1", "inner face up, cut five, drill and countersink", List.of(outline));
        return new Drawing("panels/P1", "Cover glazing, P1, cut 5", side, side, List.of(part));
    }

    /** One page, several, and an overview of too many. */
    private static List<PaperPage> pages(PageSize size) {
        return Stream.of(100.0, 500.0, 2000.0)
                .flatMap(side -> Template.of(triangle(side), size).leaves().stream())
                .map(Leaf::page)
                .toList();
    }

    private static Window box(Label word) {
        double width = Letters.widthMm(word.text(), word.heightMm());
        double left = switch (word.anchor()) {
            case START -> word.x();
            case MIDDLE -> word.x() - width / 2;
            case END -> word.x() - width;
        };
        double half = word.heightMm() / 2;
        return new Window(left, word.y() - half, left + width, word.y() + half);
    }

    private static boolean overlap(Window a, Window b) {
        return a.left() < b.right() && b.left() < a.right() && a.bottom() < b.top() && b.bottom() < a.top();
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void wordsLieOnThePaperAndNoneOnAnother(PageSize size) {
        for (PaperPage page : pages(size)) {
            List<Label> words = page.words();
            for (int i = 0; i < words.size(); i++) {
                Window box = box(words.get(i));
                String word = words.get(i).text();
                assertThat(box.left()).as(word).isGreaterThanOrEqualTo(PageLayout.MARGIN - ROUNDING_MM);
                assertThat(box.bottom()).as(word).isGreaterThanOrEqualTo(PageLayout.MARGIN - ROUNDING_MM);
                assertThat(box.right()).as(word).isLessThanOrEqualTo(size.widthMm() - PageLayout.MARGIN + ROUNDING_MM);
                assertThat(box.top()).as(word).isLessThanOrEqualTo(size.heightMm() - PageLayout.MARGIN + ROUNDING_MM);
                for (Label other : words.subList(0, i)) {
                    assertThat(overlap(box, box(other)))
                            .as(word + " on " + other.text())
                            .isFalse();
                }
            }
        }
    }

    /** A mark may cross a line where there is no room beside it; nothing else may. */
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void wordsCrossNoLine(PageSize size) {
        for (PaperPage page : pages(size)) {
            List<double[]> lines =
                    page.inks().stream().flatMap(ink -> ink.chains().stream()).toList();
            for (Label word : page.words()) {
                if (!word.text().matches("r\\d+c\\d+")) {
                    assertThat(box(word).of(lines)).as(word.text()).isEmpty();
                }
            }
        }
    }

    private static Window round(PaperPage page, String id) {
        return Window.round(page.inks().stream()
                .filter(ink -> ink.id().equals(id))
                .findFirst()
                .orElseThrow()
                .chains());
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void everyRulersLengthStandsAtItsEnd(PageSize size) {
        for (PaperPage page : pages(size)) {
            for (String unit : List.of("100 mm", "4 in")) {
                String id = "RULER-" + unit.replace(" ", "").toUpperCase(Locale.ROOT);
                Window across = round(page, id + "-X");
                assertThat(page.words())
                        .filteredOn(word -> word.text().equals(unit))
                        .anySatisfy(word -> {
                            assertThat(box(word).left()).isBetween(across.right() + 1, across.right() + 4);
                            assertThat(box(word).bottom()).isCloseTo(across.bottom(), within(ROUNDING_MM));
                        });
                Window upwards = round(page, id + "-Y");
                String[] words = unit.split(" ", -1);
                double below = upwards.top();
                for (int i = words.length - 1; i >= 0; i--) {
                    String text = words[i];
                    double least = below;
                    Label word = page.words().stream()
                            .filter(w -> w.text().equals(text) && box(w).bottom() >= least)
                            .min(Comparator.comparingDouble(Label::y))
                            .orElseThrow();
                    assertThat(box(word).bottom()).isBetween(below + 1, below + 2.5);
                    assertThat(box(word).left()).isLessThan(upwards.right());
                    below = box(word).top();
                }
            }
        }
    }

    private static double length(double[] line) {
        return Math.hypot(line[2] - line[0], line[3] - line[1]);
    }

    /** By the drawing: a line of its length, then a tick at a right angle at each step, longer at both ends. */
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void rulersHaveATickAtEachStep(PageSize size) {
        for (Ruler ruler : List.of(Ruler.METRIC, Ruler.INCHES)) {
            for (boolean across : new boolean[] {true, false}) {
                List<double[]> lines = (across ? ruler.across(30, 50) : ruler.upwards(30, 50)).chains();
                int along = across ? 0 : 1;
                assertThat(lines).hasSize(6);
                assertThat(lines.get(0)[along + 2] - lines.get(0)[along]).isEqualTo(ruler.lengthMm());
                for (int tick = 0; tick <= 4; tick++) {
                    double[] line = lines.get(tick + 1);
                    double at = (across ? 30 : 50) + tick * ruler.stepMm();
                    assertThat(line[along]).isEqualTo(at);
                    assertThat(line[along + 2]).isEqualTo(at);
                    assertThat(line[1 - along]).isEqualTo(across ? 50 : 30);
                    double aside = line[3 - along] - line[1 - along];
                    assertThat(across ? aside : -aside)
                            .as("upwards, or to the left")
                            .isEqualTo(length(line));
                    assertThat(length(line)).isEqualTo(tick % 4 == 0 ? 3.5 : 2);
                }
            }
        }
    }

    private static FreeSpot among(double[]... lines) {
        return new FreeSpot(List.of(new Ink("X", Pen.CUT, List.of(lines))));
    }

    @Test
    void aMarkStandsInTheMiddleWhereNothingIsInItsWay() {
        Label label = among(new double[] {0, 0, 100, 0}).label("r1c1", new Window(10, 20, 70, 60));
        assertThat(label.x()).isCloseTo(40, within(ROUNDING_MM));
        assertThat(label.y()).isCloseTo(40, within(ROUNDING_MM));
    }

    /** By hand: upwards it may go by 18.15 mm either way in twelve steps, and must go by more than 1.85 mm. */
    @Test
    void aMarkMovesNoFurtherThanItMust() {
        Window room = new Window(10, 20, 70, 60);
        double step = (40 - 2.5 - 2 * 0.6) / 24;
        Label below = among(new double[] {0, 40.5, 100, 40.5}).label("r1c1", room);
        assertThat(below.x()).isCloseTo(40, within(ROUNDING_MM));
        assertThat(40 - below.y()).isCloseTo(step, within(ROUNDING_MM));
        Label above = among(new double[] {0, 39.5, 100, 39.5}).label("r1c1", room);
        assertThat(above.y() - 40).isCloseTo(step, within(ROUNDING_MM));
        Label aside = among(new double[] {41, 0, 41, 100}).label("r1c1", room);
        double width = Letters.widestMm("r1c1", 2.5) + 2 * 0.6;
        double sideways = (60 - width) / 24;
        assertThat((40 - aside.x()) / sideways).isCloseTo(Math.ceil((width / 2 - 1) / sideways), within(ROUNDING_MM));
        assertThat(aside.y()).isCloseTo(40, within(ROUNDING_MM));
    }

    @Test
    void aMarkReachesEveryCornerOfItsRoomAndStaysInIt() {
        Window room = new Window(10, 20, 70, 60);
        double width = Letters.widestMm("r1c1", 2.5) + 2 * 0.6;
        List<double[]> lines = new ArrayList<>();
        for (double y = 20.5; y < 56; y += 1) {
            lines.add(new double[] {0, y, 100, y});
        }
        for (double x = 10.5; x < 69.5 - width; x += 1) {
            lines.add(new double[] {x, 0, x, 100});
        }
        Label label = among(lines.toArray(new double[0][])).label("r1c1", room);
        assertThat(label.x()).isCloseTo(70 - width / 2, within(ROUNDING_MM));
        assertThat(label.y()).isCloseTo(60 - 1.85, within(ROUNDING_MM));
    }

    @Test
    void whereEveryPlaceIsCrossedAMarkCrossesAsFewLinesAsItCan() {
        Window room = new Window(0, 0, 60, 40);
        List<double[]> lines = new ArrayList<>();
        for (double x = 0.5; x < 60; x += 1) {
            lines.add(new double[] {x, x < 40 ? 0 : 10, x, 40});
        }
        lines.add(new double[] {40, 5, 60, 5});
        Label label = among(lines.toArray(new double[0][])).label("r1c1", room);
        assertThat(box(label).left()).isGreaterThan(39.5);
        assertThat(box(label).top()).isLessThan(10);
    }
}
