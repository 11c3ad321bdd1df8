package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.nest.CutSheet;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Fasteners;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class SeamSavingTest {

    private static final Treatment SAVING = new Treatment(false, false, Splitting.WHEN_IT_SAVES, false);
    private static final Cover NET = Cover.of("net").with(SAVING);
    private static final Layout FIRST = new Layout(0, 0, 1);
    private static final double ALTITUDE = 1000 * Math.sqrt(0.75);

    /** Twenty equilateral triangles with sides of a metre. */
    private static CoverFit icosahedron(Cover cover, Stock... stocks) {
        Size size = new Size(Size.Measure.LONGEST_STRUT, 1000);
        Dome dome = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), size));
        return CoverFit.of(Patterns.of(Parts.of(dome, Joinery.nodeToNode()), cover), List.of(stocks));
    }

    private static SeamSaving saving(CoverFit fit) {
        return SeamSaving.of(fit, FIRST).orElseThrow();
    }

    /**
     * By hand: on a sheet just as large as a triangle lies one, 20 sheets for all. Divided at half their height, two lower
     * parts fill a sheet between them, and six upper parts another: 10 and 4 sheets, with 20 seams of half a metre.
     */
    @Test
    void sixSheetsAreSavedAtLeastWhereTrianglesWasteHalfOfThem() {
        SeamSaving saving = saving(icosahedron(NET, new Sheet(1000.001, ALTITUDE + 0.001, 0, Terms.OPEN)));
        assertThat(saving.measure()).isEqualTo(Measure.PIECES);
        assertThat(saving.saved()).isBetween(6.0, 10.0);
        assertThat(saving.plan().plan().sheets()).hasSize(20 - (int) saving.saved());
        assertThat(saving.seamMm()).isCloseTo(saving.plan().fit().seamMm(), within(1e-6));
        CoverFit fit = saving.plan().fit();
        assertThat(fit.fits().get(0).pieces()).hasSize(2);
        double seam = fit.fits().get(0).pieces().get(0).seams().get(0);
        assertThat(saving.seamMm()).isCloseTo(20 * seam, within(1e-6));
        assertThat(parts(saving)).isEqualTo(40);
    }

    private static int parts(SeamSaving saving) {
        return saving.plan().plan().sheets().stream()
                .map(CutSheet::parts)
                .mapToInt(List::size)
                .sum();
    }

    /** By hand: what lies on one sheet whole cannot lie on less. */
    @Test
    void seamsThatSaveNothingAreNotMade() {
        CoverFit whole = icosahedron(NET, new Sheet(6000, 4000, 0, Terms.OPEN));
        SeamSaving saving = saving(whole);
        assertThat(saving.saved()).isZero();
        assertThat(saving.seamMm()).isZero();
        assertThat(saving.plan().fit()).isEqualTo(whole);
        assertThat(parts(saving)).isEqualTo(20);
        // head to tail nearly all of a roll becomes panels, so that a hundredth of it cannot be saved
        Stock roll = new Roll(ALTITUDE + 0.001, 0, OptionalDouble.empty(), Terms.OPEN);
        assertThat(saving(icosahedron(NET, roll)).saved())
                .satisfiesAnyOf(
                        saved -> assertThat(saved).isZero(),
                        saved -> assertThat(saved).isBetween(105.0, 500.0));
    }

    /** Whatever is chosen, no part is a sliver, all fit, and the plan spends less by what is said. */
    @Test
    void whatIsSavedIsTheDifferenceOfTwoPlans() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(2000))
                .withKeep(new Keep.Rows(1, 2));
        Cover cover = NET.with(Allowances.of(-2, 5)).with(new Fasteners(6, 25, 400));
        Terms priced = new Terms(OptionalDouble.of(46), OptionalDouble.empty(), OptionalInt.empty());
        Stock large = new Sheet(2440, 1250, 5, priced);
        Stock small = new Sheet(1500, 1400, 5, priced);
        int saved = 0;
        for (List<Stock> stocks : List.of(List.of(large), List.of(small), List.of(small, large))) {
            Parts parts = Parts.of(Dome.of(spec), Joinery.nodeToNode());
            CoverFit fewest = CoverFit.of(Patterns.of(parts, cover), stocks);
            SeamSaving saving = SeamSaving.of(fewest, new Layout(6, 20, 2)).orElseThrow();
            CoverPlan before = CoverPlan.of(fewest, new Layout(6, 20, 1)).orElseThrow();
            double difference = stocks.size() == 1
                    ? before.plan().sheets().size()
                            - saving.plan().plan().sheets().size()
                    : before.plan().goal().reached()
                            - saving.plan().plan().goal().reached();
            assertThat(saving.saved()).isCloseTo(difference, within(1e-6)).isNotNegative();
            assertThat(saving.measure()).isEqualTo(stocks.size() == 1 ? Measure.PIECES : Measure.PRICE);
            double seams = saving.plan().fit().seamMm() - fewest.seamMm();
            assertThat(saving.seamMm()).isCloseTo(seams, within(1e-6));
            assertThat(saving.saved() > 0).isEqualTo(seams > 0);
            for (PatternFit fit : saving.plan().fit().fits()) {
                for (CutPiece piece : fit.pieces()) {
                    assertThat(Fit.of(piece, stocks).fits()).isTrue();
                    assertThat(piece.net().extent(new Vector2D(0, 1))).isGreaterThan(99.9);
                }
            }
            saved += saving.saved() > 0 ? 1 : 0;
        }
        assertThat(saved).isPositive();
    }

    /** A panel too wide for its stock is divided as with {@code split: seam}. */
    @Test
    void whatDoesNotFitIsDividedAnyway() {
        Stock narrow = new Roll(700, 0, OptionalDouble.empty(), Terms.OPEN);
        CoverFit fit = icosahedron(NET, narrow);
        CoverFit seamed = icosahedron(Cover.of("net").with(new Treatment(false, false, Splitting.SEAM, false)), narrow);
        assertThat(fit.misfits()).isEmpty();
        assertThat(fit.seamMm()).isEqualTo(seamed.seamMm()).isPositive();
        assertThat(saving(fit).plan().fit()).isEqualTo(fit);
    }

    /** By hand: one seam at 700 mm of 866 mm, 20 times. */
    @Test
    void seamsAreCountedOnce() {
        CoverFit fit = icosahedron(NET, new Roll(700, 0, OptionalDouble.empty(), Terms.OPEN));
        assertThat(fit.seamMm()).isCloseTo(20 * 1000 * (1 - 700 / ALTITUDE), within(1e-3));
        assertThat(icosahedron(NET, new Sheet(6000, 4000, 0, Terms.OPEN)).seamMm())
                .isZero();
    }

    @Test
    void withoutStockOrWithTooLittleThereIsNoPlan() {
        assertThat(SeamSaving.of(icosahedron(NET), FIRST)).isEqualTo(Optional.empty());
        Terms three = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(3));
        CoverFit fit = icosahedron(NET, new Sheet(1000.001, ALTITUDE + 0.001, 0, three));
        assertThatExceptionOfType(CalotteException.class).isThrownBy(() -> SeamSaving.of(fit, FIRST));
    }
}
