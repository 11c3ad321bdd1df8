package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.calotte.check.RecordedCover.Piece;
import dev.calotte.geometry.ConvexPolygon;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Sheeting;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClosureTest {

    private static final RecordedDome DOME = Records.dome(CheckedDomes.ICOSAHEDRON);
    private static final RecordedCover BOARDS = RecordedCovers.of(RecordedCovers.BOARDS_PLAN);
    private static final RecordedCover CLOTH = RecordedCovers.of(RecordedCovers.CLOTH_PLAN);
    private static final RecordedDome HANDED = Records.dome(CheckedDomes.CLASS_THREE);

    private static List<String> found(RecordedDome dome, RecordedCover cover) {
        return Found.by(findings -> Closure.of(dome, cover, findings));
    }

    /** On the hubs, inside them and outside, on flat and hollow edges too. */
    @ParameterizedTest
    @MethodSource("dev.calotte.check.CheckedDomes#all")
    void neighboursMeetOnEveryPlane(Parts parts) {
        RecordedDome dome = Records.dome(parts);
        for (double planeMm : new double[] {0, -6, 25}) {
            Cover cover = Cover.of("cover").with(new Sheeting(planeMm, 0, false));
            Findings findings = new Findings("dome.json", "");
            Mismatch mismatch = Closure.of(dome, RecordedCovers.unplanned(parts, cover), findings);
            assertThat(findings.list()).as(planeMm + " mm").isEmpty();
            assertThat(mismatch.mm()).isLessThanOrEqualTo(4 * parts.mergeErrorMm() + 1e-7);
            assertThat(mismatch.where()).matches("cover P.* against P.*");
        }
    }

    @Test
    void piecesThatAreLaidMeetWithSeamsAndBevelsToo() {
        assertThat(CLOTH.pieces()).extracting(Piece::parts).contains(true);
        assertThat(BOARDS.pieces())
                .allSatisfy(piece -> assertThat(piece.outer()).isPresent());
        assertThat(found(DOME, CLOTH)).isEmpty();
        assertThat(found(DOME, BOARDS)).isEmpty();
        assertThat(found(HANDED, RecordedCovers.of(RecordedCovers.HANDED_PLAN))).isEmpty();
        assertThat(found(Records.dome(CheckedDomes.OCTAHEDRON), RecordedCovers.of(RecordedCovers.HOLLOW_PLAN)))
                .isEmpty();
    }

    private static RecordedCover changed(RecordedCover cover, int at, Ring net) {
        return RecordedCovers.with(
                cover, Found.changed(cover.pieces(), at, p -> RecordedCovers.piece(p, net, p.outline(), p.count())));
    }

    @Test
    void aShapeThatIsTurnedOverIsFound() {
        Piece piece = BOARDS.pieces().get(0);
        assertThat(found(DOME, changed(BOARDS, 0, piece.net().mirrored()))).contains("MIRRORED boards " + piece.mark());
        RecordedCover outline = RecordedCovers.with(
                BOARDS,
                Found.changed(
                        BOARDS.pieces(),
                        0,
                        p -> RecordedCovers.piece(p, p.net(), p.outline().reversed(), p.count())));
        assertThat(found(DOME, outline)).containsExactly("MIRRORED boards " + piece.mark());
    }

    /** It runs counter-clockwise as it should, but is the shape of the panels of the other hand. */
    @Test
    void aShapeOfTheOtherHandIsFoundAtEachOfItsPanels() {
        RecordedCover cover = RecordedCovers.of(RecordedCovers.HANDED_PLAN);
        int at = 0;
        while (!cover.pieces().get(at).panelKind().endsWith("L")) {
            at++;
        }
        Piece piece = cover.pieces().get(at);
        assertThat(found(HANDED, changed(cover, at, piece.net().mirrored().reversed())))
                .hasSize(piece.count())
                .containsOnly("MIRRORED net " + piece.mark());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.01, -5})
    void aShapeOfAnotherSizeGapes(double mm) {
        Piece piece = BOARDS.pieces().get(1);
        Ring net = new Ring(Found.changed(piece.net().corners(), 2, c -> c.add(new Vector2D(0, mm))));
        RecordedCover cover = changed(BOARDS, 1, net);
        assertThat(found(DOME, cover)).hasSize(piece.count()).containsOnly("GAPING boards " + piece.mark());
        Mismatch mismatch = Closure.of(DOME, cover, new Findings("dome.json", ""));
        assertThat(mismatch.mm()).isBetween(Math.abs(mm) / 3, 2 * Math.abs(mm));
    }

    /** Panels of a kind have other shapes at the base, where no neighbour's plane ends them. */
    @Test
    void withoutAPlanAnyPatternOfTheKindMayFit() {
        RecordedCover cover = RecordedCovers.unplanned(CheckedDomes.ICOSAHEDRON, RecordedCovers.BOARDS);
        Piece larger = cover.pieces().stream()
                .filter(piece -> cover.pieces().stream()
                        .anyMatch(other -> other.panelKind().equals(piece.panelKind())
                                && other.net().area() < piece.net().area() - 1))
                .findFirst()
                .orElseThrow();
        RecordedCover without = RecordedCovers.with(
                cover,
                cover.pieces().stream().filter(piece -> !piece.equals(larger)).toList());
        String others = cover.pieces().stream()
                .filter(piece -> piece.panelKind().equals(larger.panelKind()) && !piece.equals(larger))
                .map(Piece::mark)
                .collect(Collectors.joining(" or "));
        assertThat(found(DOME, cover)).isEmpty();
        assertThat(found(DOME, without))
                .startsWith("DIFFERENT boards " + larger.panelKind())
                .contains("GAPING boards " + others);
    }

    @Test
    void anotherCountIsFound() {
        RecordedCover cover = RecordedCovers.with(
                BOARDS,
                Found.changed(BOARDS.pieces(), 0, p -> RecordedCovers.piece(p, p.net(), p.outline(), p.count() + 1)));
        assertThat(found(DOME, cover))
                .containsExactly("DIFFERENT boards " + BOARDS.pieces().get(0).panelKind());
    }

    /** Its panels are not looked for any further. */
    @Test
    void aShapeWithFourCornersIsFound() {
        Piece piece = BOARDS.pieces().get(0);
        Ring net = new Ring(Found.with(piece.net().corners(), new Vector2D(-10, 10)));
        assertThat(found(DOME, changed(BOARDS, 0, net))).containsExactly("DIFFERENT boards " + piece.mark());
    }

    /** A number of its own is missing from the mark of a part: it is no part of its pattern then. */
    @Test
    void aPartWithoutANumberIsFound() {
        int at = 0;
        while (!CLOTH.pieces().get(at).parts()) {
            at++;
        }
        Piece part = CLOTH.pieces().get(at);
        Piece other = new Piece(
                "P7",
                part.panelKind(),
                part.count(),
                part.net(),
                part.outline(),
                part.drawn(),
                part.outer(),
                part.holes(),
                part.allowances(),
                true);
        assertThat(found(DOME, RecordedCovers.with(CLOTH, Found.changed(CLOTH.pieces(), at, p -> other))))
                .contains("DIFFERENT cloth " + part.panelKind());
    }

    /** So far inside the hubs that nothing would be left of any panel. */
    @Test
    void aPlaneThatCannotBeIsFound() {
        RecordedCover deep = new RecordedCover("boards", -1e5, 0, BOARDS.pieces(), BOARDS.sheets(), true);
        assertThat(found(DOME, deep)).hasSize(DOME.panels().size()).allMatch(each -> each.startsWith("GAPING "));
    }

    /** One smaller than it is, so that a corner is cut off, and one as large as the whole, so that it lies on the others. */
    @Test
    void partsThatAreNotTheWholeAreFound() {
        int at = 0;
        while (!CLOTH.pieces().get(at).parts()) {
            at++;
        }
        Piece part = CLOTH.pieces().get(at);
        assertThat(part.mark()).isEqualTo(part.pattern() + "s1");
        Vector2D middle = part.net().middle();
        Ring smaller = new Ring(part.net().corners().stream()
                .map(corner -> middle.add(0.9, corner.subtract(middle)))
                .toList());
        Ring whole = new Ring(ConvexPolygon.round(CLOTH.pieces().stream()
                        .filter(piece -> piece.pattern().equals(part.pattern()))
                        .flatMap(piece -> piece.net().corners().stream())
                        .toList())
                .corners());
        assertThat(whole.size()).isEqualTo(3);
        assertThat(found(DOME, changed(CLOTH, at, smaller))).containsExactly("DIFFERENT cloth " + part.pattern());
        RecordedCover doubled = changed(CLOTH, at, whole);
        assertThat(Found.list(findings -> Closure.of(DOME, doubled, findings)))
                .extracting(Finding::place, Finding::what)
                .containsExactly(tuple("cloth " + part.pattern(), "its parts together are not the whole."));
    }
}
