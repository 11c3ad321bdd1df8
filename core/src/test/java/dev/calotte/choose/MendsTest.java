package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MendsTest {

    private static final Treatment GRAIN = new Treatment(true, true, Splitting.NEVER, false);
    private static final Treatment TURNED = new Treatment(true, false, Splitting.NEVER, false);
    private static final Treatment SEAMS = new Treatment(false, false, Splitting.SEAM, false);
    private static final Joinery JOINERY = Joinery.nodeToNode();
    private static final Cover CLOTH = Cover.of("cloth").with(Allowances.of(12, 30));
    private static final Cover NET = Cover.of("net");

    private static DomeSpec dome(Breakdown breakdown, double radiusMm) {
        return DomeSpec.of(Solid.ICOSAHEDRON, breakdown, Size.radius(radiusMm));
    }

    private static DomeSpec dome(int frequency, double radiusMm) {
        return dome(Breakdown.of(frequency), radiusMm).withKeep(new Keep.AboveHeight(0));
    }

    private static Stock roll(double usable) {
        return new Roll(usable, 0, OptionalDouble.empty(), Terms.OPEN);
    }

    private static Mends mends(DomeSpec spec, Cover cover, double usable) {
        return Mends.of(spec, JOINERY, cover, List.of(roll(usable)));
    }

    private static CoverFit fit(DomeSpec spec, Cover cover, double usable) {
        return CoverFit.of(Patterns.of(Parts.of(Dome.of(spec), JOINERY), cover), List.of(roll(usable)));
    }

    private static boolean fits(DomeSpec spec, Cover cover, double usable) {
        try {
            return fit(spec, cover, usable).misfits().isEmpty();
        } catch (CalotteException refused) {
            return false;
        }
    }

    /** The roll that is just wide enough. */
    private static double needed(DomeSpec spec, Cover cover) {
        return fit(spec, cover, 1).fits().stream()
                .mapToDouble(each -> each.whole().overByMm() + 1)
                .max()
                .orElseThrow();
    }

    @Test
    void turningHelpsExactlyDownToTheWidthOfTheTurnedPieces() {
        DomeSpec spec = dome(3, 3000);
        double grain = needed(spec, CLOTH.with(GRAIN));
        double turned = needed(spec, CLOTH.with(TURNED));
        assertThat(grain - turned).isGreaterThan(50);
        assertThat(mends(spec, CLOTH.with(GRAIN), turned + 0.01).turned()).isTrue();
        assertThat(mends(spec, CLOTH.with(GRAIN), turned - 0.01).turned()).isFalse();
    }

    @Test
    void withoutGrainThereIsNothingToTurn() {
        DomeSpec spec = dome(3, 3000);
        // even where it fits as it is
        assertThat(mends(spec, CLOTH, needed(spec, CLOTH) + 1).turned()).isFalse();
        assertThat(mends(spec, CLOTH, needed(spec, CLOTH) - 1).turned()).isFalse();
    }

    @Test
    void seamsAreCountedOnThePanelThatNeedsMost() {
        DomeSpec spec = dome(3, 3000);
        double whole = needed(spec, CLOTH);
        for (double width : new double[] {whole - 1, 0.6 * whole, 0.45 * whole, 0.3 * whole}) {
            int seams = mends(spec, CLOTH, width).seams().orElseThrow();
            CoverFit divided = fit(spec, CLOTH.with(SEAMS), width);
            assertThat(divided.misfits()).isEmpty();
            // by hand: strips across the roll, each seam costs two allowances of 12 mm
            assertThat(whole + 24 * seams).isLessThanOrEqualTo(width * (seams + 1) + 1e-6);
            assertThat(whole + 24 * (seams - 1)).isGreaterThan(width * seams);
            assertThat(divided.fits()).anySatisfy(f -> assertThat(f.pieces()).hasSize(seams + 1));
            assertThat(divided.fits()).allSatisfy(f -> assertThat(f.pieces()).hasSizeLessThanOrEqualTo(seams + 1));
        }
    }

    @Test
    void seamsThatDoNotHelpAreNotOffered() {
        Stock offcut = new Sheet(500, 400, 0, Terms.OPEN);
        DomeSpec spec = dome(3, 3000);
        assertThat(Mends.of(spec, JOINERY, CLOTH, List.of(offcut)).seams()).isEmpty();
        // nor where they were allowed already
        assertThat(Mends.of(spec, JOINERY, CLOTH.with(SEAMS), List.of(offcut)).seams())
                .isEmpty();
    }

    /** The part above the seam is 100 mm high, too little for holes 40 mm from its edges. */
    @Test
    void seamsThatLeaveNoRoomForHolesAreNotOffered() {
        DomeSpec spec = dome(3, 3000);
        double width = needed(spec, NET) - 5;
        assertThat(mends(spec, NET.with(new Fasteners(6, 25, 400)), width).seams())
                .contains(1);
        assertThat(mends(spec, NET.with(new Fasteners(6, 40, 400)), width).seams())
                .isEmpty();
    }

    @Test
    void theFirstSpacingThatFitsIsNamed() {
        for (int frequency : new int[] {3, 4}) {
            for (Spacing own : List.of(Spacing.CHORD, Spacing.ARC)) {
                DomeSpec spec = dome(frequency, 3000).withSpacing(own);
                double whole = needed(spec, NET);
                Optional<Spacing> some = Optional.empty();
                for (double width : new double[] {whole - 1, 0.99 * whole, 0.97 * whole, 0.95 * whole, 0.8 * whole}) {
                    Optional<Spacing> spacing = mends(spec, NET, width).spacing();
                    assertThat(spacing).isEqualTo(first(spec, width));
                    some = spacing.isPresent() ? spacing : some;
                }
                // the panels of a 3V chord dome are the evenest of all but for the fitted one
                assertThat(some).isPresent();
                assertThat(mends(spec, NET, 0.5 * whole).spacing()).isEmpty();
            }
        }
    }

    private static Optional<Spacing> first(DomeSpec spec, double width) {
        for (Spacing other : Spacing.values()) {
            if (other != spec.spacing() && fits(spec.withSpacing(other), NET, width)) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    @Test
    void aSpacingThatTheBreakdownDoesNotHaveIsNotOffered() {
        DomeSpec spec = dome(3, 3000);
        assertThat(fits(spec.withSpacing(Spacing.MIDARC), NET, 1e6)).isFalse();
        assertThat(mends(spec.withSpacing(Spacing.ARC), NET, 1e6).spacing()).contains(Spacing.CHORD);
        assertThat(mends(spec, NET, 1e6).spacing()).contains(Spacing.ARC);
    }

    /** A spacing is fitted for frequencies up to 8 only; of 9V it would help as well. */
    @Test
    void fittedSpacingsAreOnlyTriedForFewParts() {
        assertThat(mends(dome(8, 3000), NET, narrow(8)).spacing()).contains(Spacing.FITTED);
        assertThat(mends(dome(9, 3000), NET, narrow(9)).spacing()).isEmpty();
        assertThat(fits(dome(9, 3000).withSpacing(Spacing.FITTED), NET, narrow(9)))
                .isTrue();
    }

    /** A roll that is too narrow for the unfitted spacings. */
    private static double narrow(int frequency) {
        DomeSpec spec = dome(frequency, 3000);
        return Math.min(needed(spec, NET), needed(spec.withSpacing(Spacing.ARC), NET)) - 1;
    }

    @Test
    void theNextBreakdownThatFitsIsNamedOfThree() {
        DomeSpec spec = dome(3, 3000);
        double before = needed(spec, CLOTH);
        for (int next = 4; next <= 6; next++) {
            double width = needed(dome(next, 3000), CLOTH);
            assertThat(width).isLessThan(before);
            assertThat(mends(spec, CLOTH, width + 0.01).breakdown()).contains(Breakdown.of(next));
            before = width;
        }
        double seven = needed(dome(7, 3000), CLOTH);
        assertThat(seven).isLessThan(before);
        assertThat(mends(spec, CLOTH, seven + 0.01).breakdown()).isEmpty();
    }

    @Test
    void theLargerNumberOfABreakdownGrowsOrBoth() {
        assertThat(next(new Breakdown(0, 3))).contains(new Breakdown(0, 4));
        assertThat(next(new Breakdown(3, 0))).contains(new Breakdown(4, 0));
        assertThat(next(new Breakdown(1, 1))).contains(new Breakdown(2, 2));
        assertThat(next(new Breakdown(2, 1))).contains(new Breakdown(3, 1));
        assertThat(next(new Breakdown(1, 2))).contains(new Breakdown(1, 3));
    }

    private static Optional<Breakdown> next(Breakdown breakdown) {
        DomeSpec spec = dome(breakdown, 3000);
        return mends(spec, NET, needed(spec, NET) - 1).breakdown();
    }

    /** 5/9 of the rows cannot be kept of a 4V or 5V, of a 6V they can. */
    @Test
    void breakdownsThatCannotKeepTheSameAreSkipped() {
        DomeSpec spec = dome(3, 3000).withKeep(new Keep.Rows(5, 9));
        assertThat(fits(spec.withBreakdown(Breakdown.of(4)), NET, 1e6)).isFalse();
        assertThat(mends(spec, NET, needed(spec, NET) - 1).breakdown()).contains(Breakdown.of(6));
    }

    @Test
    void theRadiusIsTheLargestThatFits() {
        for (Cover cover : List.of(CLOTH, CLOTH.with(GRAIN))) {
            DomeSpec spec = dome(3, 3000);
            double radius = mends(spec, cover, 700).radiusMm().orElseThrow();
            assertThat(fits(spec.withSize(Size.radius(radius)), cover, 700)).isTrue();
            assertThat(fits(spec.withSize(Size.radius(radius + 0.01)), cover, 700))
                    .isFalse();
        }
    }

    /** Also where panels may be divided, and parts of some domes have no room for their holes. */
    @Test
    void theRadiusIsThatOfWholePanels() {
        DomeSpec spec = dome(3, 3000);
        Cover holes = CLOTH.with(new Fasteners(6, 70, 400));
        double whole = mends(spec, holes, 700).radiusMm().orElseThrow();
        assertThat(mends(spec, holes.with(SEAMS), 700).radiusMm().orElseThrow()).isCloseTo(whole, within(1e-5));
    }

    @Test
    void whereNoRadiusCanBeFoundNoneIsGiven() {
        DomeSpec above = dome(3, 3000).withKeep(new Keep.AboveHeight(500));
        assertThat(mends(above, CLOTH, 700).radiusMm()).isEmpty();
        assertThat(mends(above, CLOTH, 700).seams()).isPresent();
        Cover wide = NET.with(Allowances.of(600, 600));
        assertThat(Mends.of(dome(3, 3000), Joinery.gap(200), wide, List.of(roll(1000)))
                        .radiusMm())
                .isEmpty();
    }
}
