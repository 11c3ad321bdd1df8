package dev.calotte.cli.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.assembly.AssemblySpec;
import dev.calotte.contour.Contours;
import dev.calotte.contour.Contours.Closing;
import dev.calotte.contour.Contours.SharedEdges;
import dev.calotte.contour.Contours.Start;
import dev.calotte.document.Operation;
import dev.calotte.dome.Base;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Size.Measure;
import dev.calotte.export.Colour;
import dev.calotte.export.Finish;
import dev.calotte.export.PageSize;
import dev.calotte.model.Board;
import dev.calotte.model.Card;
import dev.calotte.model.ModelKind;
import dev.calotte.model.ModelSpec;
import dev.calotte.output.Extras;
import dev.calotte.parts.Joinery;
import dev.calotte.solid.PrintSpec;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.units.UnitSystem;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BriefTextTest {

    @Test
    void everyKeyThatHasAnEffectIsRead() throws URISyntaxException, IOException {
        Path path = Path.of(BriefTextTest.class.getResource("orchard.yaml").toURI());
        DomeSpec dome = DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(4), new Size(Measure.FLOOR_DIAMETER, 6515.1))
                .withSpacing(Spacing.MIDARC)
                .withKeep(new Keep.Rows(5, 8));
        assertThat(BriefText.read(path).project())
                .isEqualTo(new Project(
                        "Orchard seedling house",
                        UnitSystem.IMPERIAL,
                        dome,
                        0,
                        List.of(),
                        Joinery.gap(19.05),
                        List.of(),
                        new SizeWish.Given(dome.size()),
                        List.of(),
                        new Extras(Optional.of(PrintSpec.body(12.5)), Optional.empty(), Optional.empty()),
                        0.05,
                        AssemblySpec.USUAL,
                        new Output(
                                0,
                                Finish.PLAIN
                                        .withDialects("dxf", List.of("polyline"))
                                        .withDialects("stl", List.of("binary")),
                                List.of(Section.TABLES, Section.STL))));
        assertThat(BriefText.read(path).source()).isEqualTo(Files.readString(path));
    }

    @Test
    void sparesAreAPartOfAll() {
        assertThat(project(Briefs.LEAST + "spares: 7.5 %\n").spareShare()).isEqualTo(0.075);
        assertThat(project(Briefs.LEAST + "spares: 0%\n").spareShare()).isZero();
        assertThat(project(Briefs.LEAST).spareShare()).isEqualTo(0.05);
        assertThatThrownBy(() -> project(Briefs.LEAST + "spares: 5\n"))
                .hasMessageContaining("spares")
                .hasMessageContaining("Write for example 5 %.");
        assertThatThrownBy(() -> project(Briefs.LEAST + "spares: 101 %\n")).hasMessageContaining("more than all");
    }

    @Test
    void openingsAreReadWithTheirMarks() {
        assertThat(project(Briefs.LEAST + """
                        openings:
                          - { name: door, remove: [P1-5.01, P2-5.02] }
                          - name: roof vent
                            struts: remove
                            remove: [P1-1.01]
                        """).openings())
                .containsExactly(
                        new OpeningRequest("door", List.of("P1-5.01", "P2-5.02"), false),
                        new OpeningRequest("roof vent", List.of("P1-1.01"), true));
        assertThat(project(Briefs.LEAST).openings()).isEmpty();
    }

    @Test
    void operationsHaveColoursByNameOrDigits() {
        Finish finish = project(Briefs.LEAST + "output: { operations: { cut: blue, score: '#00C0ff' } }\n")
                .output()
                .finish();
        assertThat(finish.stroke(Operation.CUT_OUTER)).isEqualTo(new Colour(0, 0, 255));
        assertThat(finish.stroke(Operation.CUT_INNER)).isEqualTo(new Colour(0, 0, 255));
        assertThat(finish.stroke(Operation.SCORE)).isEqualTo(new Colour(0, 192, 255));
        assertThat(finish.stroke(Operation.ENGRAVE)).isEqualTo(Finish.PLAIN.stroke(Operation.ENGRAVE));
    }

    @Test
    void aCutHasAWidth() {
        assertThat(project(Briefs.LEAST + "output: { kerf: 0.15 mm }\n")
                        .output()
                        .kerfMm())
                .isEqualTo(0.15);
        assertThat(project(Briefs.LEAST + "output: { kerf: 0 mm }\n").output().kerfMm())
                .isZero();
        assertThat(project(Briefs.LEAST + """
                output: { kerf: 0.2 mm }
                covers: [{ name: a, stock: { sheet: [2 m, 1 m], margin: 0.1 mm }, spacing: 0.2 mm }, { name: b }]
                """).output().kerfMm()).isEqualTo(0.2);
    }

    @Test
    void linesForMachinesHaveAWidth() {
        assertThat(project(Briefs.LEAST + "output: { line-width: 0.01 mm }\n")
                        .output()
                        .finish()
                        .lineMm())
                .hasValue(0.01);
        assertThat(project(Briefs.LEAST).output().finish().lineMm()).isEmpty();
    }

    @Test
    void contoursAreThoseOfTheMachine() {
        assertThat(project(Briefs.LEAST).output().finish().contours()).isEqualTo(Contours.PLAIN);
        assertThat(project(Briefs.LEAST
                                + "output: { start: edge, flatten: 0.05 mm, shared-edges: each, closing: corner }\n")
                        .output()
                        .finish()
                        .contours())
                .isEqualTo(new Contours(Start.EDGE, OptionalDouble.of(0.05), SharedEdges.EACH, Closing.CORNER));
        assertThat(project(Briefs.LEAST + "output: { start: corner, shared-edges: once }\n")
                        .output()
                        .finish()
                        .contours())
                .isEqualTo(new Contours(Start.CORNER, OptionalDouble.empty(), SharedEdges.ONCE, Closing.FLAG));
    }

    @Test
    void aModelIsCutWhereTheBriefSaysOfWhat() {
        assertThat(project(Briefs.LEAST + "model: { scale: 1:15 }\n").extras().model())
                .isEmpty();
        assertThat(project(Briefs.LEAST + "model: { sheet: [600, 300], thickness: 3 }\n")
                        .extras()
                        .model())
                .contains(ModelSpec.of(20, Board.of(600, 300, 3, 0)));
        assertThat(project(Briefs.LEAST + """
                        model:
                          scale: 1:12.5
                          sheet: [2 ft, 1 ft]
                          thickness: 1/8 in
                          kerf: 0.2 mm
                          fit: -0.05 mm
                          disc: 24 mm
                          card: [297 mm, 210 mm]
                          tab: 7 mm
                          kind: [panels, slotted]
                        """).extras().model())
                .contains(new ModelSpec(
                        12.5,
                        new Board(609.6, 304.8, 3.175, 0.2, -0.05, OptionalDouble.of(24)),
                        new Card(297, 210, 7),
                        List.of(ModelKind.PANELS, ModelKind.SLOTTED)));
    }

    @Test
    void templatesAreForThePaperAtHand() {
        assertThat(project(Briefs.LEAST + "output: { page: Letter }\n")
                        .output()
                        .finish()
                        .page())
                .isEqualTo(PageSize.LETTER);
        assertThat(project(Briefs.LEAST).output().finish().page()).isEqualTo(PageSize.A4);
    }

    @Test
    void aRiserHasAHeight() {
        assertThat(project("dome: { breakdown: 3, keep: 5/9, riser: 60 cm }\nsize: { radius: 3 m }")
                        .riserMm())
                .isEqualTo(600);
    }

    @Test
    void aBaseMayBeLevel() {
        assertThat(project("dome: { breakdown: 3, keep: 5/9, base: level }\nsize: { radius: 3 m }")
                        .dome()
                        .base())
                .isEqualTo(Base.LEVEL);
    }

    @Test
    void theLeastBriefHasDefaultsForAllElse() {
        Project project = project(Briefs.LEAST);
        assertThat(project.title()).isEqualTo("Dome");
        assertThat(project.units()).isEqualTo(UnitSystem.METRIC);
        assertThat(project.dome()).isEqualTo(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000)));
        assertThat(project.joinery()).isEqualTo(Joinery.nodeToNode());
        assertThat(project.extras().print().orElseThrow().scale()).isEqualTo(20);
        assertThat(project.output().files()).containsExactly(Section.values());
        assertThat(project.output().wants(Section.DXF)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dome:\n  breakdown: 3\nframe:\noutput:\nmodel:\nsize: {radius: 3000}",
                "{dome: {breakdown: 3}, size: {radius: 300 cm}}"
            })
    void emptySectionsAndFlowStyleAreFine(String text) {
        assertThat(project(text)).isEqualTo(project(Briefs.LEAST));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreFine() {
        assertThat(project("\ufeff" + Briefs.LEAST.replace("\n", "\r\n"))).isEqualTo(project(Briefs.LEAST));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "radius: 3.2 m | RADIUS | 3200",
                "radius: 1 mm | RADIUS | 1",
                "radius: 1000 m | RADIUS | 1000000",
                "floor-diameter: 21 ft | FLOOR_DIAMETER | 6400.8",
                "height: 3200 | HEIGHT | 3200",
                "floor-area: 32 m² | FLOOR_AREA | 32000000",
                "longest-strut: 4' 7 1/4\" | LONGEST_STRUT | 1403.35",
            })
    void everyMeasureSizesTheDome(String size, Measure measure, double value) {
        Size read = project("dome: {breakdown: 3}\nframe: {hub-gap: 45 mm}\nsize:\n  " + size)
                .dome()
                .size();
        assertThat(read.measure()).isEqualTo(measure);
        assertThat(read.value()).isCloseTo(value, within(1e-9));
    }

    @Test
    void aPartAboveAHeightMayReachBelowTheCentre() {
        Keep keep = project("dome: { breakdown: 3, keep: { above: -300 mm } }\nsize: { radius: 3 m }")
                .dome()
                .keep();
        assertThat(keep).isEqualTo(new Keep.AboveHeight(-300));
    }

    @ParameterizedTest
    @CsvSource({"icosahedron, 100", "octahedron, 158", "tetrahedron, 223"})
    void theLargestBreakdownOfEachSolidIsTaken(String solid, int n) {
        String text = "dome: { solid: " + solid + ", breakdown: " + n + " }\nsize: { radius: 3 m }";
        assertThat(project(text).dome().breakdown()).isEqualTo(Breakdown.of(n));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"'[2, 1]' | 2 | 1", "'[0, 2]' | 0 | 2", "'\"3\"' | 3 | 0", "007 | 7 | 0"})
    void breakdownsAreOneNumberOrTwo(String written, int b, int c) {
        String text = "dome: { breakdown: " + written + " }\nsize: { radius: 3 m }";
        assertThat(project(text).dome().breakdown()).isEqualTo(new Breakdown(b, c));
    }

    @Test
    void titlesKeepTheirScriptAndLoseOuterSpace() {
        assertThat(project("title: '  Kuppel № 3 – 果樹園 🌱 '\n" + Briefs.LEAST).title())
                .isEqualTo("Kuppel № 3 – 果樹園 🌱");
        assertThat(project("title: 2026\n" + Briefs.LEAST).title()).isEqualTo("2026");
        assertThat(project("title: no\n" + Briefs.LEAST).title()).isEqualTo("no");
        assertThat(project("title: " + "🌱".repeat(200) + "\n" + Briefs.LEAST).title())
                .hasSize(400);
    }

    @Test
    void filesComeInTheirOwnOrder() {
        assertThat(project("files: [svg, dxf]\n" + Briefs.LEAST).output().files())
                .containsExactly(Section.DXF, Section.SVG);
    }

    @Test
    void aBriefCanBeAskedAgain() {
        BriefText brief = BriefText.of("brief.yaml", Briefs.LEAST);
        assertThat(brief.project()).isEqualTo(brief.project());
    }

    private static Project project(String text) {
        return BriefText.of("brief.yaml", text).project();
    }
}
