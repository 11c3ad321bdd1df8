package dev.calotte.book;

import static org.assertj.core.api.Assertions.assertThat;

import dev.calotte.assembly.Patches;
import dev.calotte.assembly.PieceMarks;
import dev.calotte.bill.Bill;
import dev.calotte.bill.Needs;
import dev.calotte.caution.Caution;
import dev.calotte.caution.Cautions;
import dev.calotte.caution.Circumstances;
import dev.calotte.choose.BarNeeds;
import dev.calotte.choose.CoverFit;
import dev.calotte.choose.CoverPlan;
import dev.calotte.document.Book;
import dev.calotte.document.Book.Chapter;
import dev.calotte.document.Book.Figure;
import dev.calotte.document.Book.Row;
import dev.calotte.document.Book.Source;
import dev.calotte.document.Book.Table;
import dev.calotte.document.Book.Tick;
import dev.calotte.document.Book.Ticks;
import dev.calotte.document.Scene.Piece;
import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Opening;
import dev.calotte.dome.Size;
import dev.calotte.drawing.DomeDrawings;
import dev.calotte.drawing.Subject;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Layout;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RiserWall;
import dev.calotte.pattern.Allowances;
import dev.calotte.pattern.Cover;
import dev.calotte.pattern.Patterns;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import dev.calotte.stock.Bar;
import dev.calotte.stock.Roll;
import dev.calotte.stock.Terms;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BuildBookTest {

    private static final Terms TERMS = new Terms(OptionalDouble.of(7.5), OptionalDouble.of(0.32), OptionalInt.empty());

    @Test
    void chaptersStandInTheOrderOfTheWork() {
        assertThat(book(parts(3, Joinery.gap(45)), UnitSystem.METRIC).chapters())
                .extracting(Chapter::title)
                .containsExactly("At a glance", "Buy", "Cut", "Mark", "Join", "Raise", "Check", "Take care");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void ticksAreToldApartAndMarksAreInTheScene(UnitSystem units) {
        Book book = book(parts(4, Joinery.gap(45)), units);
        assertThat(ticks(book)).extracting(Tick::id).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z0-9.-]+"));
        List<Piece> pieces = book.scene().orElseThrow().pieces();
        List<String> marks = Stream.concat(
                        pieces.stream().map(Piece::mark), pieces.stream().map(Piece::kind))
                .toList();
        assertThat(rows(book)).extracting(Row::about).allMatch(about -> about.isEmpty() || marks.contains(about));
    }

    @Test
    void everyPieceIsInTheSceneOnce() {
        Parts parts = parts(3, Joinery.gap(45));
        PieceMarks marks = new PieceMarks(parts);
        Dome dome = parts.dome();
        List<String> all = new ArrayList<>();
        dome.panels().forEach(panel -> all.add(marks.of(panel)));
        dome.struts().forEach(strut -> all.add(marks.of(strut)));
        dome.hubs().forEach(hub -> all.add(marks.of(hub)));
        assertThat(book(parts, UnitSystem.METRIC).scene().orElseThrow().pieces())
                .extracting(Piece::mark)
                .containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void everyPanelIsMadeIntoOnePatchAndEveryPatchIsJoined() {
        Parts parts = parts(3, Joinery.gap(45));
        PieceMarks marks = new PieceMarks(parts);
        Book book = book(parts, UnitSystem.METRIC);
        List<String> made = ticks(book).stream()
                .filter(tick -> tick.id().startsWith("make-"))
                .flatMap(tick -> Arrays.stream(tick.text().split(": ", -1)[1].split(", ", -1)))
                .toList();
        assertThat(made)
                .containsExactlyInAnyOrderElementsOf(
                        parts.dome().panels().stream().map(marks::of).toList());
        int patches = Patches.of(parts).patches().size();
        assertThat(ticks(book).stream().filter(tick -> tick.id().startsWith("join-")))
                .hasSize(patches - 1)
                .last()
                .satisfies(tick -> assertThat(tick.text()).endsWith("this closes the whole"));
    }

    @Test
    void setUpsCutEveryStrutAndItsSpares() {
        Book book = book(parts(3, Joinery.gap(45)), UnitSystem.METRIC);
        assertThat(ticks(book))
                .extracting(Tick::text)
                .contains(
                        "Stop at 1042.4 mm: cut 30 of S1 and 2 spare",
                        "Stop at 1220.8 mm: cut 55 of S2 and 3 spare",
                        "Stop at 1249.6 mm: cut 80 of S3 and 4 spare");
    }

    @Test
    void imperialBooksHaveFractionsOfAnInch() {
        Book book = book(parts(3, Joinery.gap(45)), UnitSystem.IMPERIAL);
        assertThat(table(book, "Struts").rows().get(0).cells()).contains("3' 5 1/16\"");
        assertThat(tables(book))
                .filteredOn(table -> !table.columns().get(0).heading().equals("About"))
                .flatExtracting(Table::rows)
                .extracting(row -> String.join("|", row.cells()))
                .noneMatch(cells -> cells.matches(".*\\d mm.*"));
    }

    @Test
    void barsAddUpToAllStruts() {
        Book book = book(parts(3, Joinery.gap(45)), UnitSystem.METRIC);
        int cuts = 0;
        for (Row row : table(book, "Bars in the order of cutting").rows()) {
            int each = Arrays.stream(row.cells().get(2).split(", ", -1))
                    .mapToInt(run -> run.contains(" × ") ? Integer.parseInt(run.split(" ", -1)[0]) : 1)
                    .sum();
            cuts += Integer.parseInt(row.cells().get(0)) * each;
        }
        assertThat(cuts).isEqualTo(165);
    }

    @Test
    void stepsHoldEveryPieceAndTheHeaviestLift() {
        List<Tick> steps = ticks(book(parts(3, Joinery.gap(45)), UnitSystem.METRIC)).stream()
                .filter(tick -> tick.id().startsWith("step-"))
                .toList();
        assertThat(steps).allMatch(step -> step.picture().isPresent());
        assertThat(steps).allMatch(step -> step.text().contains("kg, the heaviest piece"));
        assertThat(steps.stream().mapToInt(step -> number(step.text(), "strut")).sum())
                .isEqualTo(165);
        assertThat(steps.stream().mapToInt(step -> number(step.text(), "panel")).sum())
                .isEqualTo(105);
    }

    private static int number(String text, String thing) {
        String all = text.substring(text.lastIndexOf(". ", text.indexOf(" in all")) + 2);
        String[] words = all.split(" ", -1);
        for (int i = 1; i < words.length; i++) {
            if (words[i].startsWith(thing)) {
                return Integer.parseInt(words[i - 1]);
            }
        }
        return 0;
    }

    @Test
    void twinsAndNearKindsAreCalledOut() {
        Table pairs = table(book(parts(4, Joinery.gap(45)), UnitSystem.METRIC), "Pairs easily confused");
        List<String> marks = pairs.rows().stream()
                .map(row -> row.cells().get(0) + " " + row.cells().get(1))
                .toList();
        // of a 4V, 0.2945 and 0.2952 of the radius are the nearest lengths: 2.1 mm at 3 m
        assertThat(marks).anyMatch(pair -> pair.matches("P\\dL P\\dR")).anyMatch(pair -> pair.matches("S\\d S\\d"));
        assertThat(pairs.rows()).extracting(row -> row.cells().get(2)).anyMatch(how -> how.equals("2.3 mm in length"));
    }

    @Test
    void flattenedEndsRailsWallsAndOpeningsHaveTheirSections() {
        Parts flat = parts(2, Joinery.nodeToNode().withEnds(new Ends.Flattened(55, 8.5, 20, OptionalDouble.of(1.2))));
        assertThat(table(book(flat, UnitSystem.METRIC), "Struts").columns()).hasSize(10);
        Parts rails = parts(2, Joinery.nodeToNode().withEnds(new Ends.Mitred(45, 95)));
        Book framed = book(rails, UnitSystem.METRIC);
        assertThat(ticks(framed).stream().filter(tick -> tick.id().startsWith("cut-rail-")))
                .isNotEmpty()
                .allMatch(tick -> tick.text().startsWith("Blade, gauge "));
        Dome dome = dome(2).withOpenings(List.of(new Opening("door", List.of(30, 31), false)));
        Parts open = Parts.of(dome, Joinery.gap(45));
        Book book = book(open, UnitSystem.METRIC);
        assertThat(tables(book)).anyMatch(table -> table.heading().startsWith("Opening door"));
        assertThat(tables(book)).anyMatch(table -> table.heading().startsWith("The wall under it"));
    }

    @Test
    void allCautionsStandAtTheEndWithWhomToAsk() {
        Parts parts = parts(3, Joinery.gap(45));
        Book book = book(parts, UnitSystem.METRIC);
        List<Caution> cautions = Cautions.of(Circumstances.of(parts));
        assertThat(table(book, "What to mind with this dome").rows())
                .extracting(Row::cells)
                .containsExactlyElementsOf(cautions.stream()
                        .map(caution -> List.of(caution.topic(), caution.text(), caution.deferTo()))
                        .toList());
        assertThat(book.chapters().get(7).blocks()).anyMatch(Source.class::isInstance);
    }

    @Test
    void domesOfManyPanelsHaveABookWithoutPictures() {
        Parts parts = parts(3, Joinery.gap(45));
        Book book = BuildBook.of(matter(parts, UnitSystem.METRIC, "brief"), List.of());
        assertThat(book.scene()).isEmpty();
        assertThat(book.chapters()).hasSize(8);
    }

    @Test
    void anotherDesignHasAnotherKey() {
        Parts three = parts(3, Joinery.gap(45));
        String key =
                BuildBook.of(matter(three, UnitSystem.METRIC, "one"), List.of()).key();
        assertThat(key).matches("[0-9a-f]{16}");
        assertThat(BuildBook.of(matter(three, UnitSystem.METRIC, "one"), List.of())
                        .key())
                .isEqualTo(key);
        assertThat(BuildBook.of(matter(three, UnitSystem.METRIC, "two"), List.of())
                        .key())
                .isNotEqualTo(key);
        assertThat(BuildBook.of(matter(parts(2, Joinery.gap(45)), UnitSystem.METRIC, "one"), List.of())
                        .key())
                .isNotEqualTo(key);
    }

    private static Dome dome(int frequency) {
        return Dome.of(
                DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), new Size(Size.Measure.FLOOR_DIAMETER, 6400))
                        .withKeep(frequency == 3 ? new Keep.Rows(5, 9) : new Keep.Rows(1, 2)));
    }

    private static Parts parts(int frequency, Joinery joinery) {
        return Parts.of(dome(frequency), joinery);
    }

    private static Book book(Parts parts, UnitSystem units) {
        return BuildBook.of(
                matter(parts, units, "title: Test\n"), DomeDrawings.of(new Subject("Test", parts, units, 600)));
    }

    private static Matter matter(Parts parts, UnitSystem units, String source) {
        Cover cloth = Cover.of("cloth").with(Allowances.of(10, 40));
        CoverFit fit =
                CoverFit.of(Patterns.of(parts, cloth), List.of(new Roll(2400, 10, OptionalDouble.empty(), TERMS)));
        BarPlan bars = BarNeeds.plan(parts, List.of(new Bar(6000, 3, 0, TERMS)));
        Needs needs = new Needs(
                parts,
                Optional.of(RiserWall.of(parts.dome(), 600)),
                Optional.of(bars),
                List.of(fit),
                CoverPlan.of(fit, new Layout(5, 0, 1)).stream().toList(),
                0.05);
        return new Matter(
                new Subject("Test", parts, units, 600),
                needs,
                Bill.of(needs),
                Patches.of(parts),
                Cautions.of(Circumstances.of(parts)),
                List.of("A note."),
                List.of("A sentence."),
                true,
                source,
                "calotte test");
    }

    private static Stream<Book.Block> blocks(Book book) {
        return book.chapters().stream().flatMap(chapter -> chapter.blocks().stream());
    }

    private static List<Tick> ticks(Book book) {
        return blocks(book)
                .filter(Ticks.class::isInstance)
                .flatMap(block -> ((Ticks) block).ticks().stream())
                .toList();
    }

    private static List<Table> tables(Book book) {
        return blocks(book)
                .flatMap(block -> block instanceof Table table
                        ? Stream.of(table)
                        : block instanceof Figure figure ? figure.beside().stream() : Stream.empty())
                .toList();
    }

    private static Table table(Book book, String heading) {
        return tables(book).stream()
                .filter(table -> table.heading().equals(heading))
                .findFirst()
                .orElseThrow();
    }

    private static List<Row> rows(Book book) {
        return tables(book).stream().flatMap(table -> table.rows().stream()).toList();
    }
}
