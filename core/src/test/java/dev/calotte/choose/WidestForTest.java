package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Corner;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Sheeting;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.testing.Cases;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WidestForTest {

    private static final DomeSpec FIVE_NINTHS =
            DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(1)).withKeep(new Keep.Rows(5, 9));
    private static final Stock ROLL = new Roll(1500, 10, OptionalDouble.empty(), Terms.OPEN);
    private static final Stock SHEET = new Sheet(2440, 1220, 5, Terms.OPEN);

    private static CoverFit fit(DomeSpec spec, Cover cover, Stock stock, double radiusMm) {
        Parts parts = Parts.of(Dome.of(spec.withSize(Size.radius(radiusMm))), Joinery.nodeToNode());
        return CoverFit.of(Patterns.of(parts, cover), List.of(stock));
    }

    @Test
    void aHundredthOfAMillimetreMoreNoLongerFits() {
        Cases.each(16, (random, size) -> {
            Allowances allowances =
                    new Allowances(15 * random.nextDouble(), 20, 40 * random.nextDouble(), Corner.BLUNT, 0);
            Cover cover = Cover.of("cloth")
                    .with(new Sheeting(30 * random.nextDouble(), 0, false))
                    .with(allowances)
                    .with(new Treatment(false, random.nextBoolean(), Splitting.NEVER, false));
            Stock stock = random.nextBoolean() ? ROLL : SHEET;
            WidestFor widest = WidestFor.of(FIVE_NINTHS, Joinery.nodeToNode(), cover, List.of(stock));
            double radius = widest.size().value();
            assertThat(fit(FIVE_NINTHS, cover, stock, radius).misfits()).isEmpty();
            List<PatternFit> tooWide =
                    fit(FIVE_NINTHS, cover, stock, radius + 0.01).misfits();
            assertThat(tooWide).isNotEmpty();
            assertThat(tooWide).extracting(f -> f.pattern().mark()).contains(widest.limiting());
        });
    }

    /** By hand: the equilateral panel's altitude grows by three times the allowance and must be 1480 mm. */
    @Test
    void allowancesAreTakenOffTheStockNotOnce() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), Size.radius(1));
        Cover cover = Cover.of("cloth").with(Allowances.of(12, 12));
        double radius = WidestFor.of(spec, Joinery.nodeToNode(), cover, List.of(ROLL))
                .size()
                .value();
        double edge = (1480 - 36) / Math.sqrt(0.75);
        assertThat(radius).isCloseTo(edge * Math.sin(2 * Math.PI / 5), within(1e-5));
    }

    @Test
    void theBestOfSeveralStocksCounts() {
        Cover cover = Cover.of("cloth");
        double roll = WidestFor.of(FIVE_NINTHS, Joinery.nodeToNode(), cover, List.of(ROLL))
                .size()
                .value();
        double both = WidestFor.of(FIVE_NINTHS, Joinery.nodeToNode(), cover, List.of(SHEET, ROLL))
                .size()
                .value();
        double sheet = WidestFor.of(FIVE_NINTHS, Joinery.nodeToNode(), cover, List.of(SHEET))
                .size()
                .value();
        assertThat(both).isCloseTo(roll, within(1e-5)).isGreaterThan(sheet);
    }

    @Test
    void whatCannotBeAnsweredIsRefused() {
        Cover cover = Cover.of("cloth");
        DomeSpec above = FIVE_NINTHS.withKeep(new Keep.AboveHeight(200));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> WidestFor.of(above, Joinery.nodeToNode(), cover, List.of(ROLL)))
                .satisfies(e -> assertThat(e.problems().get(0).where()).isEqualTo("size.widest-for"));
        Cover wide = cover.with(Allowances.of(600, 600));
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> WidestFor.of(FIVE_NINTHS, Joinery.gap(200), wide, List.of(ROLL)))
                .satisfies(e -> assertThat(e.problems().get(0).what()).contains("too wide"));
        DomeSpec half = FIVE_NINTHS.withKeep(new Keep.AboveHeight(0));
        assertThat(WidestFor.of(half, Joinery.nodeToNode(), cover, List.of(ROLL))
                        .limiting())
                .startsWith("P2");
    }
}
