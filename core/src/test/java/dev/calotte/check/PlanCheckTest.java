package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.RecordedCover.Part;
import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.check.RecordedCover.Sheet;
import dev.calotte.choose.CoverPlan;
import dev.calotte.parts.Parts;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PlanCheckTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final RecordedCover COVER = RecordedCovers.of(RecordedCovers.BOARDS_PLAN);
    private static final Part FIRST = COVER.sheets().get(0).parts().get(0);
    private static final String AT_FIRST = "boards sheet 1, " + FIRST.panel();

    private static List<String> found(RecordedCover cover) {
        return Found.by(findings -> PlanCheck.of(DOME, cover, findings));
    }

    static Stream<Arguments> plans() {
        return Stream.of(
                Arguments.of(CheckedDomes.ICOSAHEDRON, RecordedCovers.BOARDS_PLAN),
                Arguments.of(CheckedDomes.ICOSAHEDRON, RecordedCovers.CLOTH_PLAN),
                Arguments.of(CheckedDomes.OCTAHEDRON, RecordedCovers.HOLLOW_PLAN),
                Arguments.of(CheckedDomes.CLASS_THREE, RecordedCovers.HANDED_PLAN));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void nothingIsFoundInARightPlan(Parts parts, CoverPlan plan) {
        assertThat(Found.list(findings -> PlanCheck.of(Records.dome(parts), RecordedCovers.of(plan), findings)))
                .isEmpty();
    }

    private static RecordedCover first(UnaryOperator<List<Part>> change) {
        return new RecordedCover(
                COVER.name(),
                COVER.plane(),
                COVER.spacing(),
                COVER.pieces(),
                Found.changed(COVER.sheets(), 0, sheet -> sheet.with(change.apply(sheet.parts()))),
                true);
    }

    private static RecordedCover firstPart(UnaryOperator<Part> change) {
        return first(parts -> Found.changed(parts, 0, change));
    }

    /** The part with its outline: where both say the same it lies somewhere else, and that is no fault by itself. */
    private static Part shifted(Part p, double x, double y) {
        return new Part(
                p.mark(),
                p.panel(),
                p.x() + x,
                p.y() + y,
                p.rotation(),
                p.mirrored(),
                p.outline().shifted(new Vector2D(x, y)));
    }

    @Test
    void aPartOfNoPatternIsFoundWithWhatIsMissingForIt() {
        assertThat(found(firstPart(
                        p -> new Part("P9.1", p.panel(), p.x(), p.y(), p.rotation(), p.mirrored(), p.outline()))))
                .containsExactly(
                        "FOREIGN " + AT_FIRST, "DIFFERENT boards " + FIRST.mark(), "MISSING boards " + FIRST.panel());
    }

    @Test
    void aPartThatIsGoneIsFound() {
        assertThat(found(first(parts -> Found.without(parts, 0))))
                .containsExactly("DIFFERENT boards " + FIRST.mark(), "MISSING boards " + FIRST.panel());
    }

    @Test
    void aPanelThatIsLaidTwiceIsFound() {
        Part second = COVER.sheets().get(0).parts().get(1);
        List<String> found = found(firstPart(
                p -> new Part(p.mark(), second.panel(), p.x(), p.y(), p.rotation(), p.mirrored(), p.outline())));
        assertThat(found).contains("DOUBLED boards sheet 1, " + second.panel(), "MISSING boards " + FIRST.panel());
    }

    @Test
    void aPartForAPanelThatIsNotThereIsFound() {
        assertThat(found(firstPart(
                        p -> new Part(p.mark(), "P1-9.01", p.x(), p.y(), p.rotation(), p.mirrored(), p.outline()))))
                .containsExactly("DIFFERENT boards sheet 1, P1-9.01", "MISSING boards " + FIRST.panel());
    }

    @Test
    void aPatternForPanelsOfAnotherKindIsFound() {
        Piece other = COVER.pieces().stream()
                .filter(piece -> !piece.panelKind()
                        .equals(Records.piece(COVER, FIRST.mark()).orElseThrow().panelKind()))
                .findFirst()
                .orElseThrow();
        assertThat(found(firstPart(
                        p -> new Part(other.mark(), p.panel(), p.x(), p.y(), p.rotation(), p.mirrored(), p.outline()))))
                .contains("DIFFERENT " + AT_FIRST, "MOVED " + AT_FIRST);
    }

    static Stream<UnaryOperator<Part>> elsewhere() {
        return Stream.of(
                p -> new Part(p.mark(), p.panel(), p.x() + 1e-3, p.y(), p.rotation(), p.mirrored(), p.outline()),
                p -> new Part(p.mark(), p.panel(), p.x(), p.y() - 40, p.rotation(), p.mirrored(), p.outline()),
                p -> new Part(p.mark(), p.panel(), p.x(), p.y(), p.rotation() + 0.1, p.mirrored(), p.outline()),
                p -> new Part(p.mark(), p.panel(), p.x(), p.y(), p.rotation(), !p.mirrored(), p.outline()));
    }

    @ParameterizedTest
    @MethodSource("elsewhere")
    void anOutlineThatLiesElsewhereThanItsNumbersIsFound(UnaryOperator<Part> change) {
        assertThat(found(firstPart(change))).containsExactly("MOVED " + AT_FIRST);
    }

    /** What is said of the first part, moved along until its left end is at x. */
    private static String outside(double x) {
        double by = x - FIRST.outline().least().getX();
        List<Finding> found =
                Found.list(findings -> PlanCheck.of(DOME, firstPart(p -> shifted(p, by, 0)), findings)).stream()
                        .filter(each -> each.fault() == Fault.OUTSIDE)
                        .toList();
        assertThat(found).singleElement().extracting(Finding::place).isEqualTo(AT_FIRST);
        return found.get(0).what();
    }

    @Test
    void aPartBeyondTheStockIsFound() {
        assertThat(outside(-30)).isEqualTo("it reaches 30 mm beyond the stock.");
    }

    @Test
    void aPartInTheMarginIsFound() {
        assertThat(outside(RecordedCovers.MARGIN_MM - 2))
                .isEqualTo("it lies 3 mm from the edge of the stock, less than the margin of 5 mm.");
    }

    /** The hollow corner of the stock is at 1500, 1500; what covers it is nowhere outside the corners' bounding box. */
    @Test
    void aPartOverTheHollowOfTheStockIsFound() {
        RecordedDome dome = Records.dome(CheckedDomes.OCTAHEDRON);
        RecordedCover cover = RecordedCovers.of(RecordedCovers.HOLLOW_PLAN);
        List<Sheet> sheets = Found.changed(cover.sheets(), 0, sheet -> {
            Part part = sheet.parts().get(0);
            Vector2D by = new Vector2D(1500, 1500).subtract(part.outline().middle());
            return sheet.with(Found.changed(sheet.parts(), 0, p -> shifted(p, by.getX(), by.getY())));
        });
        RecordedCover moved =
                new RecordedCover(cover.name(), cover.plane(), cover.spacing(), cover.pieces(), sheets, true);
        assertThat(Found.by(findings -> PlanCheck.of(dome, moved, findings)))
                .contains("OUTSIDE net sheet 1, "
                        + cover.sheets().get(0).parts().get(0).panel());
    }

    /** One outline on another: the second is moved so that both middles are the same. */
    @Test
    void aPartOnAnotherIsFound() {
        Part second = COVER.sheets().get(0).parts().get(1);
        Vector2D by = second.outline().middle().subtract(FIRST.outline().middle());
        assertThat(Found.list(findings ->
                        PlanCheck.of(DOME, firstPart(p -> shifted(p, by.getX(), by.getY())), findings)))
                .filteredOn(finding -> finding.fault() == Fault.OVERLAPPING)
                .anySatisfy(finding -> assertThat(finding.what())
                        .matches("it lies [0-9.]+ mm over (" + FIRST.panel() + "|" + second.panel() + ")\\."));
    }

    @Test
    void aPartTooNearToAnotherIsFound() {
        RecordedCover asked =
                new RecordedCover(COVER.name(), COVER.plane(), 1000, COVER.pieces(), COVER.sheets(), true);
        List<Finding> found = Found.list(findings -> PlanCheck.of(DOME, asked, findings));
        assertThat(found).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.fault()).isEqualTo(Fault.OVERLAPPING);
            assertThat(finding.what()).endsWith("less than the spacing of 1000 mm.");
        });
        RecordedCover little = new RecordedCover(
                COVER.name(), COVER.plane(), RecordedCovers.SPACING_MM + 1e-3, COVER.pieces(), COVER.sheets(), true);
        assertThat(found(little)).as("neighbours as near as the spacing").isNotEmpty();
    }

    @Test
    void onePartOfAPatternWithSeamsTwiceIsFound() {
        RecordedCover cloth = RecordedCovers.of(RecordedCovers.CLOTH_PLAN);
        List<Part> parts = new ArrayList<>(cloth.sheets().get(0).parts());
        Part seamed =
                parts.stream().filter(p -> p.mark().endsWith("s1")).findFirst().orElseThrow();
        RecordedCover twice = new RecordedCover(
                cloth.name(),
                cloth.plane(),
                cloth.spacing(),
                cloth.pieces(),
                Found.with(cloth.sheets(), cloth.sheets().get(0).with(List.of(seamed))),
                true);
        int number = cloth.sheets().size() + 1;
        assertThat(found(twice))
                .containsExactly(
                        "DOUBLED cloth sheet " + number + ", " + seamed.panel(), "DIFFERENT cloth " + seamed.mark());
    }
}
