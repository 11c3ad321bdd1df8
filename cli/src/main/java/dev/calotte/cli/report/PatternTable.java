package dev.calotte.cli.report;

import dev.calotte.choose.Fit;
import dev.calotte.choose.PatternFit;
import dev.calotte.cli.CoverDesign;
import dev.calotte.pattern.CutPiece;
import dev.calotte.pattern.Pattern;
import dev.calotte.pattern.Side;
import dev.calotte.stock.Stock;
import dev.calotte.units.Angle;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** {@code patterns.csv}: a row for each piece that is cut for a cover. Lists are in the order of the pattern's sides. */
final class PatternTable {

    private PatternTable() {}

    static String of(List<CoverDesign> covers) {
        Csv csv = new Csv()
                .row(
                        "cover",
                        "mark",
                        "panel",
                        "count",
                        "mirror",
                        "struts_ccw",
                        "net_altitudes_mm",
                        "cut_altitudes_mm",
                        "growths_mm",
                        "allowances_mm",
                        "bevels_deg",
                        "laps",
                        "narrowest_width_mm",
                        "area_m2",
                        "holes",
                        "seams_mm",
                        "fits",
                        "over_by_mm");
        for (CoverDesign cover : covers) {
            for (PatternFit fit : cover.fit().fits()) {
                fit.pieces().forEach(piece -> csv.row(row(cover, fit, piece)));
            }
        }
        return csv.toString();
    }

    private static List<String> row(CoverDesign cover, PatternFit fit, CutPiece piece) {
        Pattern pattern = fit.pattern();
        List<Stock> stocks = cover.fit().stocks();
        Fit own = stocks.isEmpty() ? new Fit(0) : Fit.of(piece, stocks);
        List<String> row = new ArrayList<>(List.of(
                cover.fit().patterns().cover().name(),
                piece.mark(),
                pattern.kind().mark(),
                Integer.toString(pattern.count()),
                pattern.mirror().orElse(""),
                sides(pattern, side -> "S" + side.strut()),
                lengths(pattern.netAltitudesMm()),
                lengths(pattern.cutAltitudesMm())));
        row.addAll(List.of(
                sides(pattern, side -> mm(side.growthMm())),
                sides(pattern, side -> mm(side.allowanceMm())),
                sides(pattern, side -> NumberText.fixed(Angle.degrees(side.bevelRad()), 4)),
                sides(pattern, side -> side.lap().name().toLowerCase(java.util.Locale.ROOT)),
                mm(piece.blank().narrowestWidth()),
                NumberText.fixed(piece.blank().area() / 1e6, 6),
                Integer.toString(piece.holes().size()),
                lengths(piece.seams()),
                own.fits() ? "yes" : "no",
                mm(own.fits() ? 0 : own.overByMm())));
        return row;
    }

    private static String sides(Pattern pattern, Function<Side, String> cell) {
        return pattern.sides().stream().map(cell).collect(Collectors.joining(" "));
    }

    private static String lengths(List<Double> mm) {
        return mm.stream().map(PatternTable::mm).collect(Collectors.joining(" "));
    }

    private static String mm(double mm) {
        return NumberText.fixed(mm, 3);
    }
}
