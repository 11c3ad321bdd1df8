package dev.calotte.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.document.Shape;
import dev.calotte.drawing.CoverPatterns;
import dev.calotte.drawing.CoverSheets;
import dev.calotte.export.Reading;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class WrittenMarksTest {

    private static final double WITHIN = 2e-6;
    private static final RecordedCover COVER = RecordedCovers.of(RecordedCovers.BOARDS_PLAN);
    private static final Drawing SHEET =
            CoverSheets.of(RecordedCovers.BOARDS_PLAN, UnitSystem.METRIC).get(0);
    private static final ExpectedDrawing EXPECTED =
            ExpectedDrawing.of(COVER, COVER.sheets().get(0), WITHIN);
    private static final String FIRST = SHEET.parts().get(0).mark();
    private static final String SECOND = SHEET.parts().get(1).mark();

    /** As it is read, each line under the name of its part. */
    private static Reading reading(Drawing drawing, Function<String, Optional<String>> called) {
        List<Reading.Line> lines = new ArrayList<>();
        for (Drawing.Part part : drawing.parts()) {
            part.shapes().forEach(shape -> lines.add(new Reading.Line(called.apply(part.mark()), shape)));
        }
        return new Reading(Optional.empty(), lines);
    }

    private static String other(String mark) {
        return mark.equals(FIRST) ? SECOND : mark.equals(SECOND) ? FIRST : mark;
    }

    private static List<String> found(ExpectedDrawing expected, Reading reading) {
        return Found.by(findings -> WrittenMarks.of(expected, reading, findings));
    }

    /** The engraving of each of the first two parts on the other. */
    private static Drawing engravedOnEachOther() {
        List<Drawing.Part> parts = new ArrayList<>();
        for (Drawing.Part part : SHEET.parts()) {
            Drawing.Part written = SHEET.parts().stream()
                    .filter(each -> each.mark().equals(other(part.mark())))
                    .findFirst()
                    .orElseThrow();
            List<Shape> shapes = new ArrayList<>(written.shapes().stream()
                    .filter(shape -> shape.operation() == Operation.ENGRAVE)
                    .toList());
            part.shapes().stream()
                    .filter(shape -> shape.operation() != Operation.ENGRAVE)
                    .forEach(shapes::add);
            parts.add(new Drawing.Part(part.mark(), part.description(), shapes));
        }
        return new Drawing(SHEET.name(), SHEET.title(), SHEET.widthMm(), SHEET.heightMm(), parts);
    }

    @Test
    void nothingIsFoundOnSheetsWithNamesAndWithout() {
        assertThat(found(EXPECTED, reading(SHEET, Optional::of))).isEmpty();
        assertThat(found(EXPECTED, reading(SHEET, mark -> Optional.empty()))).isEmpty();
    }

    @Test
    void swappedNamesOfOutlinesAreFound() {
        assertThat(found(EXPECTED, reading(SHEET, mark -> Optional.of(other(mark)))))
                .containsExactlyInAnyOrder("DIFFERENT " + FIRST, "DIFFERENT " + SECOND);
    }

    /** There outlines are other lines than those of the record. */
    @Test
    void namesAreNotComparedWhereOutlinesAreMovedOrOpen() {
        Reading swapped = reading(SHEET, mark -> Optional.of(other(mark)));
        assertThat(found(EXPECTED.withCutter(0.2, false), swapped)).isEmpty();
        assertThat(found(EXPECTED.withCutter(0, true), swapped)).isEmpty();
    }

    @Test
    void cutsThatAreNoClosedOutlinesHaveNoNamesToCompare() {
        Reading reading = new Reading(
                Optional.empty(),
                List.of(
                        new Reading.Line(Optional.of("P9"), new Circle(Operation.CUT_OUTER, 50, 50, 3)),
                        new Reading.Line(Optional.of("P9"), Polyline.open(Operation.CUT_OUTER, 0, 0, 9, 9)),
                        new Reading.Line(Optional.of("P9"), Polyline.closed(Operation.CUT_OUTER, 0, 0, 9, 0, 9, 9))));
        assertThat(found(EXPECTED, reading)).isEmpty();
    }

    /** What is engraved stays in its place: the pieces under it are swapped by what the record says of them. */
    @Test
    void swappedEngravedMarksAreFound() {
        List<ExpectedDrawing.Cut> swapped = EXPECTED.cuts().stream()
                .map(cut -> new ExpectedDrawing.Cut(other(cut.mark()), cut.outline(), cut.holes()))
                .toList();
        ExpectedDrawing expected = new ExpectedDrawing(swapped, EXPECTED.border(), 0, false, WITHIN);
        assertThat(Found.list(
                        findings -> WrittenMarks.of(expected, reading(SHEET, mark -> Optional.empty()), findings)))
                .extracting(Finding::fault, Finding::place)
                .containsExactlyInAnyOrder(tuple(Fault.DIFFERENT, FIRST), tuple(Fault.DIFFERENT, SECOND));
    }

    /** Marks are looked for where they lie, whatever part of the file they are in. */
    @Test
    void theOrderOfPartsInAFileDoesNotMatter() {
        assertThat(found(EXPECTED, reading(engravedOnEachOther(), mark -> Optional.empty())))
                .isEmpty();
    }

    @Test
    void aPatternAloneIsSearchedAsAWhole() {
        List<Drawing> patterns = CoverPatterns.of(RecordedCovers.BOARDS_PLAN.fit(), UnitSystem.METRIC);
        ExpectedDrawing first = ExpectedDrawing.of(COVER.pieces().get(0), WITHIN);
        assertThat(found(first, reading(patterns.get(0), Optional::of))).isEmpty();
        assertThat(found(first, reading(patterns.get(1), Optional::of)))
                .containsExactly("DIFFERENT " + COVER.pieces().get(0).mark());
    }

    @Test
    void aPieceWithoutLettersHasNoMarkToCompare() {
        Drawing bare = new Drawing(
                SHEET.name(),
                SHEET.title(),
                SHEET.widthMm(),
                SHEET.heightMm(),
                SHEET.parts().stream()
                        .map(part -> new Drawing.Part(
                                part.mark(),
                                part.description(),
                                part.shapes().stream()
                                        .filter(shape -> shape.operation() != Operation.ENGRAVE)
                                        .toList()))
                        .toList());
        assertThat(found(EXPECTED, reading(bare, Optional::of))).isEmpty();
    }
}
