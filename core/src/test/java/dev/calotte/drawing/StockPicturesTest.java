package dev.calotte.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.PieceMarks;
import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Sheet;
import dev.calotte.stock.Stock;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StockPicturesTest {

    private static final Parts PARTS = Parts.of(
            Dome.of(DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(3), Size.radius(3000))
                    .withKeep(new Keep.Rows(5, 9))),
            Joinery.gap(45));

    @Test
    void everyPieceLiesOnOneSheetUnderItsMark() {
        assertThat(drawn(new Sheet(6000, 2100, 10, Terms.OPEN))).containsExactlyInAnyOrderElementsOf(marks());
    }

    @Test
    void aRollIsBrokenBetweenPiecesAndLosesNone() {
        Stock roll = new Roll(1500, 10, OptionalDouble.empty(), Terms.OPEN);
        assertThat(drawn(roll)).containsExactlyInAnyOrderElementsOf(marks());
        assertThat(pictures(roll))
                .hasSizeGreaterThan(3)
                .allSatisfy(picture -> assertThat(picture.items())
                        .allSatisfy(item -> assertThat(isInside(item, picture)).isTrue()));
    }

    @Test
    void barsThatAreCutAlikeAreDrawnOnceWithTheirNumber() {
        List<Picture> pictures =
                StockPictures.ofBars(BarNeeds.plan(PARTS, List.of(new Bar(6000, 3, 0, Terms.OPEN))), UnitSystem.METRIC);
        int cuts = 0;
        for (Picture picture : pictures) {
            int count = 0;
            for (Item item : picture.items()) {
                if (item instanceof Label label && label.text().endsWith(" ×")) {
                    count = Integer.parseInt(label.text().split(" ", -1)[0]);
                } else if (item instanceof Facet facet && facet.title().startsWith("S")) {
                    cuts += count;
                }
            }
            assertThat(picture.items())
                    .allSatisfy(item -> assertThat(isInside(item, picture)).isTrue());
        }
        assertThat(cuts).isEqualTo(165);
    }

    /** Sheets that hold ten of thirty alike come with numbers instead of marks, and a list for each of them. */
    @Test
    void sheetsThatAreLaidAlikeAreDrawnOnce() {
        Sheet stock = new Sheet(6000, 2100, 10, Terms.OPEN);
        CoverPlan plan = plan(stock);
        List<StockPicture> pictures = stockPictures(stock);
        List<StockPicture> shared =
                pictures.stream().filter(each -> !each.sheets().isEmpty()).toList();
        assertThat(shared).isNotEmpty();
        assertThat(shared.stream().mapToInt(each -> each.sheets().size()).sum() + pictures.size() - shared.size())
                .isEqualTo(plan.plan().sheets().size());
        for (StockPicture each : shared) {
            List<String> numbers = IntStream.rangeClosed(1, each.places().size())
                    .mapToObj(Integer::toString)
                    .toList();
            assertThat(names(each.picture())).containsExactlyElementsOf(numbers);
            assertThat(each.sheets())
                    .hasSizeGreaterThan(1)
                    .allSatisfy(sheet -> assertThat(patterns(plan, sheet)).containsExactlyElementsOf(each.places()));
        }
    }

    /** The patterns of the pieces of a sheet, by the plan. */
    private static List<String> patterns(CoverPlan plan, StockPicture.Laid sheet) {
        PieceMarks marks = new PieceMarks(PARTS);
        List<String> here =
                plan.panels().get(sheet.sheet() - 1).stream().map(marks::of).toList();
        return sheet.marks().stream()
                .map(mark -> plan.plan()
                        .sheets()
                        .get(sheet.sheet() - 1)
                        .parts()
                        .get(here.indexOf(mark))
                        .mark())
                .toList();
    }

    private static List<String> marks() {
        PieceMarks marks = new PieceMarks(PARTS);
        return PARTS.dome().panels().stream().map(marks::of).toList();
    }

    private static CoverPlan plan(Stock stock) {
        CoverFit fit = CoverFit.of(Patterns.of(PARTS, Cover.of("cover")), List.of(stock));
        return CoverPlan.of(fit, new Layout(5, 0, 1)).orElseThrow();
    }

    private static List<StockPicture> stockPictures(Stock stock) {
        return StockPictures.ofCover(plan(stock), UnitSystem.METRIC);
    }

    private static List<Picture> pictures(Stock stock) {
        return stockPictures(stock).stream().map(StockPicture::picture).toList();
    }

    private static List<String> drawn(Stock stock) {
        return stockPictures(stock).stream()
                .flatMap(picture -> picture.sheets().isEmpty()
                        ? names(picture.picture())
                        : picture.sheets().stream().flatMap(sheet -> sheet.marks().stream()))
                .toList();
    }

    /** What the pieces of a picture are called, in their order. */
    private static Stream<String> names(Picture picture) {
        return picture.items().stream()
                .flatMap(item -> item instanceof Facet facet ? Stream.of(facet.title()) : Stream.empty())
                .filter(title -> title.contains(", pattern "))
                .map(title -> title.substring(0, title.indexOf(',')));
    }

    private static boolean isInside(Item item, Picture picture) {
        if (item instanceof Facet facet) {
            for (int i = 0; i < facet.xy().size(); i += 2) {
                if (!within(facet.xy().get(i), picture.widthMm())
                        || !within(facet.xy().get(i + 1), picture.heightMm())) {
                    return false;
                }
            }
            return true;
        }
        Box box = Letters.box((Label) item);
        return within(box.left(), picture.widthMm())
                && within(box.right(), picture.widthMm())
                && within(box.low(), picture.heightMm())
                && within(box.high(), picture.heightMm());
    }

    private static boolean within(double value, double most) {
        return value >= -1e-6 && value <= most + 1e-6;
    }
}
