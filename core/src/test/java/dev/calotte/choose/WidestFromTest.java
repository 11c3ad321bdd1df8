package dev.calotte.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.choose.WidestFrom.Question;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.nest.Layout;
import dev.calotte.nest.Measure;
import dev.calotte.nest.Placed;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Splitting;
import dev.calotte.pattern.Treatment;
import dev.calotte.problem.CalotteException;
import dev.calotte.problem.Problem;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class WidestFromTest {

    /** As high as an equilateral triangle with sides of a metre, and half as long again as such a side. */
    private static final Stock SHEET = new Sheet(1500, 1000 * Math.sqrt(0.75), 0, Terms.OPEN);

    private static final Stock ROLL = new Roll(1000 * Math.sqrt(0.75), 0, OptionalDouble.empty(), Terms.OPEN);
    private static final Cover NET = Cover.of("net");
    private static final Cover SEAMED = NET.with(new Treatment(false, false, Splitting.SEAM, false));

    private static Function<Size, Parts> domes(DomeSpec spec, Joinery joinery) {
        return size -> Parts.of(Dome.of(spec.withSize(size)), joinery);
    }

    /** Twenty equilateral triangles. */
    private static Function<Size, Parts> icosahedra() {
        return domes(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), Size.radius(1)), Joinery.nodeToNode());
    }

    private static Function<Size, Parts> fiveNinths() {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(1));
        return domes(spec.withKeep(new Keep.Rows(5, 9)), Joinery.gap(40));
    }

    private static WidestFrom widest(Cover cover, Stock stock, Supply supply) {
        return WidestFrom.of(icosahedra(), new Question(cover, stock, 0, supply), 2);
    }

    private static double side(WidestFrom widest) {
        return widest.size().value() / Math.sin(2 * Math.PI / 5);
    }

    /** By hand: two triangles with sides of a metre lie head to tail on a sheet, and no larger one fits it. */
    @Test
    void twoTrianglesASheetAreFound() {
        WidestFrom ten = widest(NET, SHEET, Supply.sheets(10));
        assertThat(side(ten)).isCloseTo(1000, within(1e-3));
        assertThat(ten.plan().plan().sheets()).hasSize(10);
        assertThat(ten.proven()).isTrue();
        WidestFrom more = widest(NET, SHEET, Supply.sheets(30));
        assertThat(side(more)).isCloseTo(1000, within(1e-3));
        assertThat(more.proven()).isTrue();
    }

    /** By hand: twenty triangles head to tail are ten and a half sides long; a wider one does not fit the roll. */
    @Test
    void aRollOfTrianglesHeadToTailIsFound() {
        assertThat(side(widest(NET, ROLL, Supply.roll(10_501)))).isCloseTo(1000, within(1e-3));
        WidestFrom less = widest(NET, ROLL, Supply.roll(9_975));
        // by hand: where one row no longer does, 5 % shorter sides still do in one row
        assertThat(side(less)).isBetween(949.0, 1000.0);
        assertThat(less.plan().plan().sheets().get(0).lengthMm()).isLessThanOrEqualTo(9_975 + 1e-4);
    }

    @Test
    void fewerSheetsMakeSmallerDomes() {
        double before = Double.POSITIVE_INFINITY;
        for (int count : new int[] {10, 4, 1}) {
            WidestFrom widest = widest(NET, SHEET, Supply.sheets(count));
            assertThat(widest.plan().plan().sheets()).hasSizeLessThanOrEqualTo(count);
            assertThat(widest.size().value())
                    .isLessThan(before)
                    .isLessThanOrEqualTo(widest.boundMm().orElseThrow());
            // more than half of what there is becomes panels, and no more than all of it
            double sheet = 1500 * 1000 * Math.sqrt(0.75);
            double panels = 20 * Math.sqrt(0.1875) * side(widest) * side(widest);
            assertThat(panels).isBetween(0.5 * count * sheet, count * sheet);
            before = widest.size().value();
        }
    }

    @Test
    void thePlanIsWhatItSays() {
        Terms priced = new Terms(OptionalDouble.of(46), OptionalDouble.empty(), Terms.OPEN.have());
        Stock sheet = new Sheet(2440, 1220, 10, priced);
        Cover cover = Cover.of("ply").with(Allowances.of(-2, 5));
        Question question = new Question(cover, sheet, 6, Supply.sheets(25));
        WidestFrom widest = WidestFrom.of(fiveNinths(), question, 2);
        assertThat(widest.plan().plan().sheets()).hasSizeLessThanOrEqualTo(25);
        assertThat(widest.plan().plan().sheets().stream()
                        .mapToInt(s -> s.parts().size())
                        .sum())
                .isEqualTo(105);
        Parts parts = fiveNinths().apply(widest.size());
        CoverFit fit = CoverFit.of(Patterns.of(parts, cover), List.of(sheet));
        CoverPlan again = CoverPlan.of(fit, new Layout(6, widest.steps(), 1)).orElseThrow();
        assertThat(outlines(again)).isEqualTo(outlines(widest.plan()));
        assertThat(widest.proven()).isFalse();
        // the bound is where the area is used up or a panel no longer fits: ten percent beyond, both are past
        double beyond = widest.boundMm().orElseThrow() * 1.1;
        CoverFit larger = CoverFit.of(Patterns.of(fiveNinths().apply(Size.radius(beyond)), cover), List.of(sheet));
        double area = larger.fits().stream()
                .mapToDouble(
                        f -> f.pattern().count() * f.pattern().whole().blank().area())
                .sum();
        assertThat(!larger.misfits().isEmpty() || area > 25 * 2426 * 1206).isTrue();
    }

    private static List<String> outlines(CoverPlan plan) {
        return plan.plan().sheets().stream()
                .flatMap(sheet -> sheet.parts().stream())
                .map(Placed::outline)
                .map(outline -> outline.corners().toString())
                .toList();
    }

    @Test
    void threadsChangeNothing() {
        Question question = new Question(NET, new Sheet(2000, 1000, 5, Terms.OPEN), 4, Supply.sheets(6));
        WidestFrom one = WidestFrom.of(icosahedra(), question, 1);
        WidestFrom three = WidestFrom.of(icosahedra(), question, 3);
        assertThat(three.size()).isEqualTo(one.size());
        assertThat(three.boundMm()).isEqualTo(one.boundMm());
    }

    /** Where panels may be divided, no panel is too wide, and nothing is proven. */
    @Test
    void seamsMakeLargerDomes() {
        WidestFrom whole = widest(NET, ROLL, Supply.roll(40_000));
        WidestFrom divided = widest(SEAMED, ROLL, Supply.roll(40_000));
        assertThat(whole.proven()).isTrue();
        assertThat(divided.size().value()).isGreaterThan(1.3 * whole.size().value());
        assertThat(divided.plan().fit().fits().get(0).pieces()).hasSizeGreaterThan(1);
        assertThat(divided.boundMm()).isEmpty();
        assertThat(divided.proven()).isFalse();
    }

    /** By area alone fifteen panels may be larger than twenty by the root of 4/3, 15 %. */
    @Test
    void whatIsLeftOutNeedsNoStock() {
        Function<Size, Parts> whole = icosahedra();
        Function<Size, Parts> open = size -> Parts.of(
                whole.apply(size).dome().withOpenings(List.of(new Opening("door", List.of(15, 16, 17, 18, 19), false))),
                Joinery.nodeToNode());
        Question question = new Question(NET, SHEET, 0, Supply.sheets(4));
        double all = WidestFrom.of(whole, question, 2).size().value();
        WidestFrom less = WidestFrom.of(open, question, 2);
        assertThat(less.size().value()).isGreaterThan(1.05 * all);
        assertThat(less.plan().plan().sheets().stream()
                        .mapToInt(s -> s.parts().size())
                        .sum())
                .isEqualTo(15);
    }

    @Test
    void whatCannotBeIsRefused() {
        Cover wide = NET.with(Allowances.of(300, 300));
        assertThat(refusal(icosahedra(), wide)).contains("allowances alone");
        assertThat(refusal(
                        domes(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(1), Size.radius(1)), Joinery.gap(400)), NET))
                .contains("joints use up the parts");
        // what is wrong with the dome is told as such
        DomeSpec fine = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(2), Size.radius(1));
        Function<Size, Parts> broken = domes(fine.withKeep(new Keep.Rows(5, 9)), Joinery.nodeToNode());
        assertThatExceptionOfType(CalotteException.class)
                .isThrownBy(() -> WidestFrom.of(broken, new Question(NET, SHEET, 0, Supply.sheets(3)), 1))
                .satisfies(e -> assertThat(e.problems().get(0).where()).isEqualTo("dome.keep"));
    }

    private static String refusal(Function<Size, Parts> domes, Cover cover) {
        try {
            WidestFrom widest = WidestFrom.of(domes, new Question(cover, SHEET, 0, Supply.sheets(1)), 1);
            throw new AssertionError("not refused: " + widest.size());
        } catch (CalotteException e) {
            Problem problem = e.problems().get(0);
            assertThat(problem.where()).isEqualTo("size.widest-from");
            return problem.what();
        }
    }

    @Test
    void suppliesAreWholeSheetsOrLengths() {
        assertThat(Supply.sheets(3)).isEqualTo(new Supply(Measure.PIECES, 3));
        assertThat(Supply.sheets(3).holds(3)).isTrue();
        assertThat(Supply.sheets(3).holds(4)).isFalse();
        assertThat(Supply.roll(40_000).holds(40_000.00001)).isTrue();
        assertThat(Supply.roll(40_000).holds(40_000.1)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> new Supply(Measure.PIECES, 1.5));
        assertThatIllegalArgumentException().isThrownBy(() -> Supply.sheets(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Supply.roll(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Supply(Measure.PRICE, 3));
    }
}
