package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
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
}
