package dev.calotte.cli.report;

import dev.calotte.parts.FlatEnds;
import dev.calotte.parts.Parts;
import dev.calotte.parts.StrutKind;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The kinds of struts as they are cut. What only merged kinds or flattened ends have is left empty for others.
 *
 * @param parts the parts
 * @param units how lengths are written for people
 */
record StrutTable(Parts parts, UnitSystem units) {

    @Override
    public String toString() {
        Csv csv = new Csv()
                .row(
                        "mark",
                        "count",
                        "length_mm",
                        "length",
                        "cut_length_mm",
                        "cut_length",
                        "chord_factor",
                        "axial_angle_deg",
                        "dihedrals_deg",
                        "gap_small_mm",
                        "gap_large_mm",
                        "merge_error_mm",
                        "hole_to_hole_mm",
                        "hole_to_hole",
                        "hole_from_end_mm",
                        "bend_from_end_mm",
                        "bend_angle_deg",
                        "outside_chord_mm");
        parts.strutKinds().forEach(kind -> csv.row(row(kind)));
        return csv.toString();
    }

    private List<String> row(StrutKind kind) {
        List<String> cells = new ArrayList<>(List.of(
                kind.mark(),
                Integer.toString(kind.count()),
                Tables.mm(kind.lengthMm()),
                units.length(kind.lengthMm()),
                Tables.mm(kind.cutLengthMm()),
                units.length(kind.cutLengthMm()),
                NumberText.fixed(kind.chordFactor(), 9),
                Tables.degrees(kind.axialAngleRad()),
                kind.dihedrals().stream()
                        .map(d -> Tables.degrees(d.angleRad()) + " x " + d.count())
                        .collect(Collectors.joining("; ")),
                Tables.mm(kind.gapsMm().get(0)),
                Tables.mm(kind.gapsMm().get(1)),
                parts.joinery().mergeWithinMm() > 0 ? Tables.mm(kind.mergeErrorMm()) : ""));
        cells.addAll(List.of(
                flat(kind, FlatEnds::holeToHoleMm),
                kind.flatEnds().map(flat -> units.length(flat.holeToHoleMm())).orElse(""),
                flat(kind, FlatEnds::holeFromEndMm),
                flat(kind, FlatEnds::bendFromEndMm),
                kind.flatEnds().map(flat -> Tables.degrees(flat.bendAngleRad())).orElse(""),
                flat(kind, FlatEnds::outsideMm)));
        return cells;
    }

    private static String flat(StrutKind kind, ToDoubleFunction<FlatEnds> length) {
        return kind.flatEnds()
                .map(flat -> Tables.mm(length.applyAsDouble(flat)))
                .orElse("");
    }
}
