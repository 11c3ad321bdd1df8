package dev.calotte.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.choose.WidestFor;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.dome.Strut;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Layout;
import dev.calotte.parts.CloseKinds;
import dev.calotte.parts.HubGaps;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.sphere.Spacing;
import dev.calotte.sphere.Up;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ComparisonTest {

    private static final DomeSpec OWN = DomeSpec.of(
                    Solid.ICOSAHEDRON, Breakdown.of(2), new Size(Size.Measure.FLOOR_DIAMETER, 5000))
            .withKeep(new Keep.Rows(1, 2));
    private static final Joinery GAP = Joinery.gap(40);
    private static final Bar BAR =
            new Bar(6000, 3, 0, new Terms(OptionalDouble.of(18.4), OptionalDouble.of(0.7), OptionalInt.empty()));
    private static final Stock SHEET =
            new Sheet(3000, 1500, 5, new Terms(OptionalDouble.of(46), OptionalDouble.of(9), OptionalInt.empty()));
    private static final Cladding BOARDS =
            new Cladding(Cover.of("boards").with(Allowances.of(-2, 0)), List.of(SHEET), 5);
    private static final Reach FEW = new Reach(
            1,
            24,
            List.of(Solid.values()),
            List.of(1, 2, 3),
            List.of(Spacing.CHORD, Spacing.ARC),
            List.of(Up.values()));

    private static Request request(Cladding... covers) {
        return new Request(OWN, GAP, List.of(BAR), List.of(covers), new InCommon.OfSize(OWN.size()));
    }

    private static Comparison compare(Request request, int plans, int threads) {
        return Comparison.of(
                request, Candidates.of(Dome.of(OWN), FEW), Optional.empty(), new Effort(plans, 0, threads), () -> {});
    }

    private static Compared own(Comparison comparison) {
        return comparison.rows().stream()
                .filter(row -> row.candidate().own())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void threadsChangeNothing() {
        Comparison one = compare(request(BOARDS), 8, 1);
        assertThat(compare(request(BOARDS), 8, 2)).isEqualTo(one);
        assertThat(compare(request(BOARDS), 8, 3)).isEqualTo(one);
        assertThat(one.rows()).isNotEmpty();
    }

    @Test
    void theOwnRowIsWhatPartsAndPlansSay() {
        Compared row = own(compare(request(BOARDS), 4, 2));
        Parts parts = Parts.of(Dome.of(OWN), GAP);
        CoverFit fit = CoverFit.of(Patterns.of(parts, BOARDS.cover()), BOARDS.stocks());
        CoverPlan plan = CoverPlan.of(fit, new Layout(5, 0, 1)).orElseThrow();
        BarPlan bars = BarNeeds.plan(parts, List.of(BAR));
        assertThat(row.spec()).isEqualTo(OWN);
        assertThat(row.measures()).isEqualTo(parts.dome().measures());
        assertThat(row.counts().panelKinds()).isEqualTo(parts.panelKinds().size());
        assertThat(row.counts().strutKinds()).isEqualTo(parts.strutKinds().size());
        assertThat(row.counts().hubs()).isEqualTo(26);
        assertThat(row.planned()).isTrue();
        assertThat(row.stocks().get(0).sheets()).isEqualTo(plan.plan().sheets().size());
        assertThat(row.utilisation().getAsDouble()).isEqualTo(plan.plan().utilisation(), within(1e-12));
        assertThat(row.bars().orElseThrow().count()).isEqualTo(bars.bars().size());
        double price = 18.4 * bars.bars().size() + 46 * plan.plan().sheets().size();
        assertThat(row.price().getAsDouble()).isCloseTo(price, within(1e-9));
        double struts = parts.strutKinds().stream()
                .mapToDouble(kind -> kind.count() * kind.cutLengthMm())
                .sum();
        double panels = plan.plan().sheets().stream()
                .mapToDouble(sheet -> sheet.partsMm2())
                .sum();
        assertThat(row.massKg().getAsDouble()).isCloseTo(0.7 * struts / 1e3 + 9 * panels / 1e6, within(1e-6));
        double joints = parts.dome().struts().stream()
                .filter(strut -> strut.dihedralRad().isPresent())
                .mapToDouble(Strut::lengthMm)
                .sum();
        assertThat(row.work().jointMm()).isEqualTo(joints, within(1e-9));
        assertThat(row.work().spareMm().getAsDouble())
                .isCloseTo(
                        -fit.fits().stream()
                                .mapToDouble(f -> f.whole().overByMm())
                                .max()
                                .orElseThrow(),
                        within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Size.Measure.class)
    void allHaveTheirMeasureInCommon(Size.Measure measure) {
        Size size = new Size(measure, measure == Size.Measure.FLOOR_AREA ? 2e7 : 2000);
        Request request =
                new Request(OWN.withSize(size), Joinery.nodeToNode(), List.of(), List.of(), new InCommon.OfSize(size));
        Dome own = Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), size).withKeep(new Keep.Rows(5, 9)));
        List<Candidate> candidates = Candidates.of(own, FEW);
        assertThat(candidates).anyMatch(candidate -> candidate.levelMm() != 0);
        for (Candidate candidate : candidates) {
            Dome dome = Dome.of(new CandidateSize(request).of(candidate));
            assertThat(CandidateSize.measured(dome, measure)).isCloseTo(size.value(), within(1e-8 * size.value()));
        }
    }

    @Test
    void cutStrutsAreEquallyLongWhereThatIsInCommon() {
        for (Joinery joinery : List.of(GAP, Joinery.gap(40).withHubGaps(HubGaps.all(40)))) {
            Request request = new Request(OWN, joinery, List.of(), List.of(), new InCommon.LongestCut(1500));
            Comparison comparison = compare(request, 1, 2);
            assertThat(comparison.rows())
                    .hasSize(24)
                    .allSatisfy(row -> assertThat(Parts.of(Dome.of(row.spec()), joinery).strutKinds().stream()
                                    .mapToDouble(StrutKind::cutLengthMm)
                                    .max()
                                    .orElseThrow())
                            .isCloseTo(1500, within(1e-6)));
        }
    }

    @Test
    void eachIsAsLargeAsTheStockAllows() {
        Request request = new Request(OWN, GAP, List.of(), List.of(BOARDS), new InCommon.StockOf("boards"));
        Comparison comparison = compare(request, 1, 2);
        double own =
                WidestFor.of(OWN, GAP, BOARDS.cover(), BOARDS.stocks()).size().value();
        assertThat(own(comparison).measures().radiusMm()).isEqualTo(own);
        assertThat(comparison.rows()).allSatisfy(row -> {
            assertThat(row.work().fits()).isEqualTo(Work.Fits.WHOLE);
            assertThat(row.work().spareMm().getAsDouble()).isBetween(-1e-6, 1e-3);
        });
        assertThat(comparison.criteria()).containsExactly(Column.PER_ROOM, Column.KINDS, Column.ROOM);
    }

    @Test
    void leadersAreLaidAndOthersEstimated() {
        Comparison comparison = compare(request(BOARDS), 5, 2);
        assertThat(comparison.rows())
                .filteredOn(row -> row.planned() && row.fits())
                .hasSize(5);
        assertThat(own(comparison).planned()).isTrue();
        Comparison all = compare(request(BOARDS), 24, 2);
        assertThat(all.rows()).allMatch(Compared::planned);
        for (Compared estimate : comparison.rows()) {
            Compared plan = all.rows().stream()
                    .filter(row -> row.candidate().equals(estimate.candidate()))
                    .findFirst()
                    .orElseThrow();
            assertThat(estimate.work()).isEqualTo(plan.work());
            assertThat(estimate.massKg()).isEqualTo(plan.massKg());
            assertThat(estimate.stocks()).hasSameSizeAs(plan.stocks());
            if (estimate.fits()) {
                assertThat(estimate.stocks().get(0).partsMm2())
                        .isCloseTo(plan.stocks().get(0).partsMm2(), within(1.0));
            }
        }
    }

    /** By hand: twice the area on as close sheets takes twice the sheets, rounded up. */
    @Test
    void estimatesAreWholeSheets() {
        StockUse use = new StockUse("boards", 5, 0, 5e6, 4e6, OptionalDouble.of(50));
        assertThat(use.scaled(4e6)).isEqualTo(use);
        assertThat(use.scaled(8.1e6)).isEqualTo(new StockUse("boards", 11, 0, 11e6, 8.1e6, OptionalDouble.of(110)));
        StockUse roll = new StockUse("cloth", 0, 10_000, 1.5e7, 1e7, OptionalDouble.empty());
        assertThat(roll.scaled(5e6)).isEqualTo(new StockUse("cloth", 0, 5000, 7.5e6, 5e6, OptionalDouble.empty()));
    }

    @Test
    void whatDoesNotFitStaysAndComesLast() {
        Stock narrow = new Sheet(3000, 1100, 5, Terms.OPEN);
        Comparison comparison = compare(request(new Cladding(BOARDS.cover(), List.of(narrow), 5)), 8, 2);
        assertThat(comparison.rows()).hasSize(24).anyMatch(row -> !row.fits()).anyMatch(Compared::fits);
        Compared last = comparison.rows().get(23);
        assertThat(last.fits()).isFalse();
        assertThat(last.best()).isFalse();
        assertThat(last.price()).isEmpty();
        assertThat(last.work().spareMm().getAsDouble()).isNegative();
    }

    @Test
    void seamsAreCountedOnce() {
        Treatment seams = new Treatment(false, false, Splitting.SEAM, false);
        Stock narrow = new Sheet(3000, 1100, 5, Terms.OPEN);
        Cladding divided = new Cladding(BOARDS.cover().with(seams), List.of(narrow), 5);
        Compared row = own(compare(request(divided), 2, 1));
        assertThat(row.work().fits()).isEqualTo(Work.Fits.SEAMS);
        CoverFit fit = CoverFit.of(Patterns.of(Parts.of(Dome.of(OWN), GAP), divided.cover()), divided.stocks());
        double seamMm = fit.fits().stream()
                .mapToDouble(f -> f.pattern().count()
                        * f.pieces().subList(1, f.pieces().size()).stream()
                                .mapToDouble(piece -> piece.seams().get(0))
                                .sum())
                .sum();
        assertThat(row.work().seamMm()).isPositive().isCloseTo(seamMm, within(1e-6));
    }

    @Test
    void whoCannotBeBuiltIsNamedWithTheReasonAndStopsNobody() {
        Request shortBars = new Request(
                OWN, GAP, List.of(new Bar(1300, 3, 0, Terms.OPEN)), List.of(BOARDS), new InCommon.OfSize(OWN.size()));
        AtomicInteger done = new AtomicInteger();
        Comparison comparison = Comparison.of(
                shortBars,
                Candidates.of(Dome.of(OWN), FEW),
                Optional.of(Column.NEAR),
                new Effort(4, 0, 2),
                done::incrementAndGet);
        assertThat(comparison.rows())
                .isNotEmpty()
                .noneMatch(row -> row.candidate().own());
        assertThat(comparison.ruledOut()).anyMatch(out -> out.candidate().own());
        assertThat(comparison.rows().size() + comparison.ruledOut().size()).isEqualTo(24);
        assertThat(comparison.ruledOut())
                .extracting(out -> out.problem().where())
                .containsOnly("frame.bar.length");
        assertThat(done).hasValueGreaterThanOrEqualTo(24);
    }

    @Test
    void stockThatIsNotEnoughRulesOut() {
        Terms two = new Terms(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.of(2));
        Cladding scarce = new Cladding(BOARDS.cover(), List.of(new Sheet(3000, 1500, 5, two)), 5);
        Comparison comparison = compare(request(scarce), 24, 2);
        assertThat(comparison.ruledOut())
                .isNotEmpty()
                .allSatisfy(out -> assertThat(out.problem().where()).startsWith("covers.stock"));
        assertThat(comparison.rows().size() + comparison.ruledOut().size()).isEqualTo(24);
    }

    @Test
    void withoutCoversAndBarsKindsAreCompared() {
        Request bare = new Request(OWN, Joinery.nodeToNode(), List.of(), List.of(), new InCommon.OfSize(OWN.size()));
        Comparison comparison = compare(bare, 4, 2);
        assertThat(comparison.sortedBy()).isEqualTo(Column.KINDS);
        assertThat(comparison.rows()).allSatisfy(row -> {
            assertThat(row.work().fits()).isEqualTo(Work.Fits.UNKNOWN);
            assertThat(row.price()).isEmpty();
            assertThat(row.massKg()).isEmpty();
            assertThat(row.bars()).isEmpty();
            assertThat(row.perRoom()).isEmpty();
            assertThat(row.utilisation()).isEmpty();
        });
        assertThat(compare(new Request(OWN, GAP, List.of(BAR), List.of(), bare.common()), 4, 2)
                        .rows())
                .allSatisfy(row -> assertThat(row.perRoom()).isPresent());
    }

    /** Where the base is level, room is all that is inside. */
    @Test
    void wallsBelowHighBaseHubsAreNoRoom() {
        Comparison comparison = compare(request(), 4, 2);
        Compared level = own(comparison);
        assertThat(level.measures().baseSpreadMm()).isLessThan(1e-6);
        assertThat(level.roomMm3()).isCloseTo(level.measures().volumeMm3(), within(1.0));
        assertThat(comparison.rows())
                .filteredOn(row -> row.measures().baseSpreadMm() > 1)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.roomMm3())
                        .isPositive()
                        .isLessThan(row.measures().volumeMm3()));
    }

    /** The workshop's list of close kinds knows the least difference, where it is below what is listed. */
    @Test
    void theLeastDifferenceIsThatOfTheClosestKinds() {
        for (Breakdown breakdown :
                List.of(Breakdown.of(3), Breakdown.of(5), new Breakdown(3, 1), new Breakdown(2, 2))) {
            DomeSpec spec = DomeSpec.of(Solid.OCTAHEDRON, breakdown, Size.radius(3000));
            Parts parts = Parts.of(Dome.of(spec), GAP.withCutTolerance(1000));
            double least = parts.closeKinds().stream()
                    .mapToDouble(CloseKinds::differenceMm)
                    .min()
                    .orElseThrow();
            assertThat(LeastDifference.ofMm(parts).getAsDouble()).isEqualTo(least);
        }
        Parts alike = Parts.of(Dome.of(DomeSpec.of(Solid.OCTAHEDRON, Breakdown.of(1), Size.radius(3000))), GAP);
        assertThat(LeastDifference.ofMm(alike)).isEmpty();
    }
}
