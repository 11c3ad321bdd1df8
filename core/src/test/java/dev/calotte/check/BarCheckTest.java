package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.check.BarCheck.Bar;
import dev.calotte.check.BarCheck.Cut;
import dev.calotte.check.BarCheck.Need;
import dev.calotte.choose.BarNeeds;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class BarCheckTest {

    private static final List<Need> NEEDS = Records.needs(CheckedDomes.ICOSAHEDRON);
    private static final List<Bar> BARS = Records.bars(
            BarNeeds.plan(CheckedDomes.ICOSAHEDRON, List.of(new dev.calotte.stock.Bar(4000, 3, 10, Terms.OPEN))));

    private static List<String> found(List<Need> needs, List<Bar> bars) {
        return Found.by(findings -> BarCheck.of(needs, bars, findings));
    }

    private static List<Bar> first(UnaryOperator<Bar> change) {
        return Found.changed(BARS, 0, change);
    }

    @Test
    void nothingIsFoundInARightPlan() {
        assertThat(NEEDS).hasSize(3);
        assertThat(found(NEEDS, BARS)).isEmpty();
    }

    @Test
    void aCutOfNoKindIsFoundWithWhatIsMissingForIt() {
        Cut cut = BARS.get(0).cuts().get(0);
        assertThat(found(
                        NEEDS,
                        first(bar -> new Bar(
                                bar.length(),
                                Found.changed(bar.cuts(), 0, c -> new Cut("S9", c.length())),
                                bar.left()))))
                .containsExactly("FOREIGN bar 1", "DIFFERENT " + cut.mark());
    }

    @Test
    void aCutOfAnotherLengthIsFound() {
        assertThat(found(
                        NEEDS,
                        first(bar -> new Bar(
                                bar.length(),
                                Found.changed(bar.cuts(), 0, c -> new Cut(c.mark(), c.length() - 0.1)),
                                bar.left()))))
                .containsExactly("DIFFERENT bar 1");
    }

    @Test
    void aCutTooFewOrTooManyIsFound() {
        Cut cut = BARS.get(0).cuts().get(0);
        assertThat(found(NEEDS, first(bar -> new Bar(bar.length(), Found.without(bar.cuts(), 0), bar.left()))))
                .containsExactly("DIFFERENT " + cut.mark());
        assertThat(found(NEEDS, Found.with(BARS, new Bar(4000, List.of(cut), 0))))
                .containsExactly("DIFFERENT " + cut.mark());
    }

    @Test
    void moreThanABarHasIsFound() {
        assertThat(found(NEEDS, first(bar -> new Bar(bar.length(), bar.cuts(), bar.left() + 100))))
                .containsExactly("OUTSIDE bar 1");
        assertThat(found(NEEDS, first(bar -> new Bar(1000, bar.cuts(), bar.left()))))
                .containsExactly("OUTSIDE bar 1");
    }

    @Test
    void anUnknownLengthIsNotCompared() {
        List<Need> unknown = NEEDS.stream()
                .map(need -> new Need(need.mark(), Double.NaN, need.count()))
                .toList();
        assertThat(found(unknown, BARS)).isEmpty();
    }
}
