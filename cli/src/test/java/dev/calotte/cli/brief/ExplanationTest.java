package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.dome.Dome;
import dev.calotte.parts.Parts;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.problem.Problem.Code;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExplanationTest {

    @Test
    void aProblemIsToldWithItsMendAndItsLine() {
        BriefText brief = Briefs.of("title: Shed\ndome:\n  breakdown: 3\n  solid: cubus\nsize: { radius: 3 m }\n");
        assertThat(brief.explain(Briefs.problems(brief).get(0)))
                .containsExactly(
                        "brief.yaml:4:3  dome.solid: cubus is not a word for this key.",
                        "  The words are tetrahedron, octahedron and icosahedron.",
                        "      solid: cubus",
                        "      ^");
    }

    @ParameterizedTest
    @CsvSource({
        "dome.keep, 4:3",
        "dome.spacing, 2:1",
        "dome.breakdown, 3:3",
        "size.height, 5:9",
        "size.longest-strut, 5:1",
        "frame.hub-gap, 7:3",
        "frame.bar.length, 6:1",
        "files[1], 8:14",
        "files[7], 8:1",
        "files[0].x, 8:9",
        "'line 3, column 5', 3:5",
    })
    void aPathLeadsToItsKeyOrTheNearestAboveIt(String where, String place) {
        assertThat(explained(where).get(0)).startsWith("brief.yaml:" + place + "  ");
        assertThat(explained(where)).hasSize(4);
    }

    @ParameterizedTest
    @CsvSource({"''", "model.scale", "nothing", "'line 3'", "'line x, column y'", "[0]", "dom"})
    void whatHasNoPlaceIsToldWithoutALine(String where) {
        assertThat(explained(where)).hasSize(2);
        assertThat(explained(where).get(0)).startsWith("brief.yaml  ").endsWith("It is wrong.");
    }

    private static List<String> explained(String where) {
        BriefText brief = Briefs.of("""
                title: Shed
                dome:
                  breakdown: 3
                  keep: 5/7
                size: { height: 3 m }
                frame:
                  hub-gap: 900 mm
                files: [svg, stl]
                """);
        return brief.explain(new Problem(Code.IMPOSSIBLE, where, "It is wrong.", "Mend it."));
    }

    @Test
    void problemsOfTheComputationShowTheirPlaceToo() {
        BriefText brief = Briefs.of("dome:\n  breakdown: 3\n  keep: 5/7\nsize: { height: 3 m }\n");
        assertThat(explained(brief, () -> Dome.of(brief.project().dome())))
                .startsWith("brief.yaml:3:3  dome.keep: 5/7 of 9");
        BriefText whole = Briefs.of("dome: { breakdown: 3 }\nsize: { floor-area: 3 m2 }\n");
        assertThat(explained(whole, () -> Dome.of(whole.project().dome())))
                .startsWith("brief.yaml:2:9  size.floor-area: ");
        BriefText gap = Briefs.of("dome: { breakdown: 3 }\nsize: { radius: 1 m }\nframe:\n  hub-gap: 900 mm\n");
        assertThat(explained(
                        gap,
                        () -> Parts.of(
                                Dome.of(gap.project().dome()), gap.project().joinery())))
                .startsWith("brief.yaml:4:3  frame.hub-gap: ");
    }

    private static String explained(BriefText brief, Runnable computation) {
        try {
            computation.run();
            return "";
        } catch (CalotteException e) {
            return brief.explain(e.problems().get(0)).get(0);
        }
    }

    @Test
    void longLinesAreShownAroundThePlace() {
        BriefText brief =
                Briefs.of("{ title: " + "x".repeat(150) + ", units: wrong, dome: {breakdown: 3}, size: {radius: 3 m}}");
        List<String> told = brief.explain(Briefs.problems(brief).get(0));
        String line = told.get(2);
        String caret = told.get(3);
        assertThat(line).hasSizeLessThan(80).contains("units: wrong");
        assertThat(caret.indexOf('^')).isEqualTo(line.indexOf("units: wrong"));
    }

    @Test
    void nothingThatMovesTheCursorReachesTheTerminal() {
        BriefText brief = BriefText.of(
                "a\u001b[2Jb.yaml",
                "title: \"x\\e[31m\\u202e\"\n# \u202e\ndome: {breakdown: 3}\nsize: {radius: 3\u202e m}\n\"\\e[1m\": 1\n");
        for (Problem problem : Briefs.problems(brief)) {
            assertThat(problem.line()).doesNotContain("\u001b", "\u202e");
            assertThat(String.join("\n", brief.explain(problem))).doesNotContain("\u001b", "\u202e");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void everyLineEndCountsOnceAndSeparatorsInsideALineDoNot(String end) {
        BriefText brief = Briefs.of("title: a" + end + "# \u2028 \u2029" + end + end + "colour: b" + end);
        Problem problem = Briefs.problems(brief).get(0);
        assertThat(brief.explain(problem).get(0)).startsWith("brief.yaml:4:1  colour: ");
        assertThat(brief.explain(problem).get(2)).isEqualTo("    colour: b");
    }

    @Test
    void tabsInsideALineDoNotShiftTheCaret() {
        BriefText brief = Briefs.of("dome: {\tbreakdown: x }\nsize: { radius: 3 m }\n");
        assertThat(brief.explain(Briefs.problems(brief).get(0)).subList(2, 4))
                .containsExactly("    dome: { breakdown: x }", "            ^");
    }
}
