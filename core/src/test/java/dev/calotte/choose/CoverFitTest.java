package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.geometry.Polygon;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Corner;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Seams;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Outline;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class CoverFitTest {

    private static final Treatment SEAMS = new Treatment(false, false, Splitting.SEAM, false);
    private static final Treatment GRAIN = new Treatment(false, true, Splitting.NEVER, false);

    private static Patterns patterns(double radiusMm, Cover cover) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(radiusMm))
                .withKeep(new Keep.Rows(5, 9));
        return Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), cover);
    }

    private static Roll roll(double width) {
        return new Roll(width, 10, OptionalDouble.empty(), Terms.OPEN);
    }

    @Test
    void aPatternIsOverByWhatItsNarrowestWidthExceedsTheRoll() {
        Patterns patterns = patterns(4000, Cover.of("cloth").with(Allowances.of(10, 10)));
        CoverFit fit = CoverFit.of(patterns, List.of(roll(1400)));
        for (PatternFit each : fit.fits()) {
            double width = each.pattern().cutAltitudesMm().get(0);
            assertThat(each.whole().overByMm()).isCloseTo(width - 1380, within(1e-9));
            assertThat(each.canBeCut()).isEqualTo(width <= 1380);
        }
        assertThat(fit.misfits()).extracting(f -> f.pattern().mark()).containsExactly("P2");
        assertThat(CoverFit.of(patterns, List.of()).misfits()).isEmpty();
    }

    @Test
    void withGrainOnlyOneDirectionIsTried() {
        Patterns patterns = patterns(3000, Cover.of("flutes").with(GRAIN));
        for (Pattern pattern : patterns.list()) {
            double across = pattern.whole().grainRad().orElseThrow() + Math.PI / 2;
            double width = pattern.whole().blank().extent(new Vector2D(Math.cos(across), Math.sin(across)));
            assertThat(Fit.of(pattern.whole(), roll(1520)).overByMm()).isCloseTo(width - 1500, within(1e-9));
            Stock sheet = new Sheet(1000, 3000, 0, Terms.OPEN);
            double length = pattern.whole().blank().extent(new Vector2D(Math.sin(across), -Math.cos(across)));
            assertThat(Fit.of(pattern.whole(), sheet).overByMm()).isCloseTo(length - 1000, within(1e-9));
        }
    }

    @Test
    void aShortRollIsASheet() {
        CutPiece piece = patterns(3000, Cover.of("cloth")).list().get(1).whole();
        Stock shortRoll = new Roll(1220, 5, OptionalDouble.of(1300), Terms.OPEN);
        Stock sheet = new Sheet(1300, 1220, 5, Terms.OPEN);
        assertThat(Fit.of(piece, shortRoll)).isEqualTo(Fit.of(piece, sheet));
        assertThat(Fit.of(piece, List.of(sheet, roll(1500)))).isEqualTo(Fit.of(piece, roll(1500)));
        assertThatIllegalArgumentException().isThrownBy(() -> Fit.of(piece, new Bar(6000, 3, 0, Terms.OPEN)));
    }

    @Test
    void touchingIsFitting() {
        assertThat(new Fit(1e-7).fits()).isTrue();
        assertThat(new Fit(1e-5).fits()).isFalse();
    }

    @Test
    void partsBetweenSeamsFitAndMakeUpThePanel() {
        Cases.each(12, (random, size) -> {
            double edge = 24 * random.nextDouble() - 4;
            Cover cover = Cover.of("cloth").with(Allowances.of(edge, 30)).with(SEAMS);
            double width = 450 + 600 * random.nextDouble();
            CoverFit fit = CoverFit.of(patterns(4000, cover), List.of(roll(width)));
            assertThat(fit.misfits()).isEmpty();
            for (PatternFit each : fit.fits()) {
                assertThat(each.whole().fits()).isFalse();
                assertThat(each.pieces()).hasSizeGreaterThan(1);
                double net =
                        each.pieces().stream().mapToDouble(p -> p.net().area()).sum();
                double whole = each.pattern().whole().net().area();
                assertThat(net).isCloseTo(whole, within(1e-9 * whole));
                assertThat(each.pieces())
                        .allSatisfy(
                                p -> assertThat(Fit.of(p, roll(width)).fits()).isTrue());
                // no way to do with one part less: each is as wide as the roll, but for the last two
                double height = each.pattern().cutAltitudesMm().get(0)
                        + 2 * edge * (each.pieces().size() - 1);
                assertThat(each.pieces().size()).isEqualTo((int) Math.ceil(height / (width - 20) - 1e-6));
            }
        });
    }

    @Test
    void seamsHaveTheAllowanceOnBothSides() {
        Cover cover = Cover.of("cloth").with(Allowances.of(12, 12)).with(SEAMS);
        PatternFit fit =
                CoverFit.of(patterns(4000, cover), List.of(roll(1000))).fits().get(1);
        CutPiece low = fit.pieces().get(0);
        CutPiece high = fit.pieces().get(1);
        assertThat(fit.pieces()).extracting(CutPiece::mark).containsExactly("P2s1", "P2s2");
        double seam = low.net().reach(new Vector2D(0, 1));
        assertThat(low.outline().reach(new Vector2D(0, 1))).isCloseTo(seam + 12, within(1e-9));
        assertThat(high.outline().reach(new Vector2D(0, -1))).isCloseTo(12 - seam, within(1e-9));
        assertThat(low.seams()).hasSize(1).isEqualTo(high.seams());
        double side = low.seams().get(0);
        assertThat(high.net().extent(new Vector2D(1, 0))).isCloseTo(side, within(1e-9));
        // the lower part is as wide as the roll
        assertThat(low.outline().extent(new Vector2D(0, 1))).isCloseTo(980, within(1e-6));
    }

    @Test
    void noSliverIsLeft() {
        Cover cover = Cover.of("cloth").with(SEAMS);
        double width = patterns(4000, cover).list().get(1).whole().net().narrowestWidth();
        PatternFit fit = CoverFit.of(patterns(4000, cover), List.of(roll(width + 20 - 5)))
                .fits()
                .get(1);
        assertThat(fit.whole().overByMm()).isCloseTo(5, within(1e-6));
        assertThat(fit.pieces().get(1).net().extent(new Vector2D(0, 1))).isCloseTo(100, within(1e-6));
    }

    @Test
    void seamsThatDoNotHelpAreNotMade() {
        Cover cover = Cover.of("cloth").with(SEAMS);
        Stock offcut = new Sheet(700, 600, 0, Terms.OPEN);
        CoverFit fit = CoverFit.of(patterns(4000, cover), List.of(offcut));
        assertThat(fit.misfits()).hasSize(2);
        assertThat(fit.misfits().get(0).whole().overByMm())
                .isGreaterThan(fit.misfits().get(1).whole().overByMm());
        assertThat(fit.misfits().get(0).pieces()).hasSize(1);
    }

    @Test
    void partsHaveHolesOfTheirOwn() {
        Cover cover = Cover.of("glass").with(new Fasteners(6, 30, 400)).with(SEAMS);
        PatternFit fit =
                CoverFit.of(patterns(4000, cover), List.of(roll(1000))).fits().get(1);
        assertThat(fit.pieces().get(0).holes()).hasSizeGreaterThan(9);
        assertThat(fit.pieces().get(1).holes()).hasSize(3);
    }

    /** A strip along the foot whose gaps leave nothing of it fits everywhere, and is no part. */
    @Test
    void aStripThatItsGapsUseUpIsNoPart() {
        Cover cover =
                Cover.of("flutes").with(Allowances.of(-9, 0)).with(new Treatment(false, true, Splitting.SEAM, false));
        CoverFit fit = CoverFit.of(patterns(4000, cover), List.of(roll(920)));
        assertThat(fit.misfits())
                .isNotEmpty()
                .allSatisfy(each ->
                        assertThat(each.pieces()).containsExactly(each.pattern().whole()));
    }

    /** Gaps of twice 60 mm leave nothing above a seam in the upper half of a panel that a narrow roll divides. */
    @Test
    void aTipThatItsGapsUseUpIsNoPart() {
        Cover cover = Cover.of("gaps").with(Allowances.of(-60, 0)).with(SEAMS);
        for (double width = 20; width < 700; width += 17) {
            for (PatternFit each : CoverFit.of(equilateral(700, cover), List.of(roll(20 + width)))
                    .fits()) {
                Stock roll = roll(20 + width);
                assertThat(each.canBeCut())
                        .isEqualTo(each.pieces().stream()
                                .allMatch(piece -> Fit.of(piece, roll).fits()));
            }
        }
    }

    /** The patterns of an icosahedron of frequency 1 without allowances: equilateral, so high over every side. */
    private static Patterns equilateral(double altitudeMm, Cover cover) {
        Size size = new Size(Size.Measure.LONGEST_STRUT, altitudeMm / Math.sqrt(0.75));
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), size);
        return Patterns.of(Parts.of(Dome.of(spec), Joinery.nodeToNode()), cover);
    }

    private static List<CutPiece> strips(double altitudeMm, double usable) {
        Cover cover = Cover.of("cloth").with(SEAMS);
        CoverFit fit = CoverFit.of(equilateral(altitudeMm, cover), List.of(roll(20 + usable)));
        return fit.fits().get(0).pieces();
    }

    private static double height(CutPiece piece) {
        return piece.net().extent(new Vector2D(0, 1));
    }

    /** By hand: one seam in each of the twenty panels, told by the parts on both its sides. */
    @Test
    void seamsAreCountedOnce() {
        Cover cover = Cover.of("cloth").with(SEAMS);
        CoverFit fit = CoverFit.of(equilateral(900, cover), List.of(roll(520)));
        List<CutPiece> parts = fit.fits().get(0).pieces();
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).seams()).hasSize(1);
        assertThat(fit.seamMm()).isCloseTo(20 * parts.get(0).seams().get(0), within(1e-6));
        assertThat(CoverFit.of(equilateral(900, cover), List.of(roll(2000))).seamMm())
                .isZero();
    }

    /** There are only so many offcuts: what only they take does not fit. */
    @Test
    void irregularOutlinesCountOnlyWhereThereIsNothingElse() {
        Outline offcut = new Outline("offcut", Polygon.of(0, 0, 3000, 0, 3000, 3000, 0, 3000), 0, Terms.OPEN);
        CutPiece piece = equilateral(900, Cover.of("cloth")).list().get(0).whole();
        assertThat(Fit.of(piece, List.of(offcut)).fits()).isTrue();
        assertThat(Fit.of(piece, List.of(roll(520), offcut)).fits()).isFalse();
    }

    /** By hand: 21 strips of 101 mm are more than 2100 mm, of 99 mm they are less. */
    @Test
    void aPanelHasTwentySeamsAtMost() {
        assertThat(strips(2100, 101)).hasSize(21);
        assertThat(strips(2100, 99)).hasSize(1);
    }

    /** By hand: what a seam leaves above it is 100 mm high at least, or as high as the strip below it. */
    @Test
    void onlySliversAreMadeWider() {
        assertThat(strips(900, 750)).hasSize(2);
        assertThat(height(strips(900, 750).get(1))).isCloseTo(150, within(1e-5));
        assertThat(height(strips(900, 799).get(1))).isCloseTo(101, within(1e-5));
        assertThat(height(strips(900, 801).get(1))).isCloseTo(100, within(1e-5));
        assertThat(height(strips(130, 90).get(0))).isCloseTo(65, within(1e-5));
        assertThat(height(strips(130, 90).get(1))).isCloseTo(65, within(1e-5));
        List<CutPiece> three = strips(260, 110);
        assertThat(three).hasSize(3);
        assertThat(height(three.get(0))).isCloseTo(110, within(1e-5));
        assertThat(height(three.get(1))).isCloseTo(75, within(1e-5));
        assertThat(height(three.get(2))).isCloseTo(75, within(1e-5));
    }

    /** By hand: a seam at a third of the height is two thirds of the side long; the middle part has both. */
    @Test
    void seamsAreAsLongAsTheFinishedShapeIsWideThere() {
        Patterns patterns = equilateral(900, Cover.of("cloth"));
        Seams seams = new Seams(patterns.cover(), patterns.list().get(0));
        double side = 900 / Math.sqrt(0.75);
        assertThat(seams.topMm()).isCloseTo(900, within(1e-9));
        assertThat(seams.lengthMm(0)).isCloseTo(side, within(1e-9));
        assertThat(seams.lengthMm(300)).isCloseTo(side * 2 / 3, within(1e-9));
        List<CutPiece> parts = seams.at(List.of(300.0, 600.0));
        assertThat(parts.get(0).seams()).containsExactly(seams.lengthMm(300));
        assertThat(parts.get(1).seams()).containsExactly(seams.lengthMm(300), seams.lengthMm(600));
        assertThat(parts.get(2).seams()).containsExactly(seams.lengthMm(600));
        assertThat(parts.get(0).holes()).isEmpty();
    }

    /** Outside the hub centres the finished shape is larger, and begins below them. */
    @Test
    void seamsOfAPanelOutsideTheHubsAreLonger() {
        Patterns patterns = patterns(4000, Cover.of("skin").with(new Sheeting(50, 0, false)));
        for (Pattern pattern : patterns.list()) {
            Seams seams = new Seams(patterns.cover(), pattern);
            double seam = 0.4 * seams.topMm();
            CutPiece upper = seams.at(List.of(seam)).get(1);
            assertThat(seams.lengthMm(seam)).isCloseTo(upper.net().extent(new Vector2D(1, 0)), within(1e-9));
            assertThat(upper.net().reach(new Vector2D(0, -1))).isCloseTo(-seam, within(1e-9));
        }
    }

    @Test
    void aSeamOutsideThePanelIsRefused() {
        Patterns patterns = equilateral(900, Cover.of("cloth"));
        Seams seams = new Seams(patterns.cover(), patterns.list().get(0));
        assertThatIllegalArgumentException().isThrownBy(() -> seams.at(List.of(900.0)));
        assertThatIllegalArgumentException().isThrownBy(() -> seams.at(List.of(-1.0)));
        assertThat(seams.at(List.of())).hasSize(1);
        assertThat(seams.between(901, Double.POSITIVE_INFINITY)).isEmpty();
        assertThat(seams.between(899, Double.POSITIVE_INFINITY)).isPresent();
    }

    /** Bevelled boards are divided at both faces, with the wide allowance above the seam and the narrow one below. */
    @Test
    void partsOfBevelledBoardsHaveBothFaces() {
        Cover board =
                Cover.of("board").with(new Sheeting(0, 18, true)).with(new Allowances(4, 7, 0, Corner.POINTED, 0));
        Patterns patterns = equilateral(900, board);
        List<CutPiece> parts = new Seams(board, patterns.list().get(0)).at(List.of(400.0));
        for (CutPiece part : parts) {
            assertThat(part.outer().orElseThrow().area())
                    .isGreaterThan(part.outline().area());
        }
        assertThat(parts.get(0).outer().orElseThrow().reach(new Vector2D(0, 1))).isCloseTo(404, within(1e-9));
        assertThat(parts.get(1).outer().orElseThrow().reach(new Vector2D(0, -1)))
                .isCloseTo(-393, within(1e-9));
        assertThat(parts.get(1).outline().reach(new Vector2D(0, -1))).isCloseTo(-393, within(1e-9));
    }
}
