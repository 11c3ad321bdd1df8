package dev.calotte.cli.report;

import dev.calotte.cli.Rivals;
import dev.calotte.compare.BarUse;
import dev.calotte.compare.Compared;
import dev.calotte.compare.Counts;
import dev.calotte.compare.RuledOut;
import dev.calotte.compare.StockUse;
import dev.calotte.compare.Work;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Measures;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * All domes of a comparison as comma-separated values, in the order of the page; those that cannot be built come last,
 * with the reason. What is not known is left empty.
 */
public final class CompareCsv {

    private static final List<String> SPEC = List.of(
            "rank", "own", "best", "steps", "solid", "breakdown_b", "breakdown_c", "spacing", "up", "keep", "above_mm");
    private static final List<String> FIGURES = List.of(
            "radius_mm",
            "floor_diameter_mm",
            "height_mm",
            "floor_area_m2",
            "room_m3",
            "base_spread_mm",
            "fits",
            "panels",
            "panel_kinds",
            "handed_kinds",
            "struts",
            "strut_kinds",
            "hubs",
            "hub_kinds",
            "planned",
            "sheets",
            "roll_m",
            "utilisation",
            "bars",
            "bars_m",
            "bars_planned",
            "joints_m",
            "seams_m",
            "width_mm",
            "spare_mm",
            "difference_mm",
            "price",
            "per_room",
            "mass_kg");

    private CompareCsv() {}

    /**
     * Makes the table.
     *
     * @param rivals the domes
     * @return its text
     */
    public static String of(Rivals rivals) {
        Csv csv = new Csv().row(joined(Stream.of(SPEC, FIGURES, List.of("problem"))));
        List<Compared> rows = rivals.comparison().rows();
        for (int i = 0; i < rows.size(); i++) {
            Compared row = rows.get(i);
            csv.row(joined(Stream.of(
                    List.of(
                            Integer.toString(i + 1),
                            yes(row.candidate().own()),
                            yes(row.best()),
                            Integer.toString(row.candidate().steps())),
                    spec(row.spec()),
                    figures(row),
                    List.of(""))));
        }
        rivals.comparison().ruledOut().forEach(out -> csv.row(ruledOut(out)));
        return csv.toString();
    }

    private static List<String> ruledOut(RuledOut out) {
        DomeSpec shape = out.candidate().shape();
        boolean sized = shape.keep() instanceof Keep.AboveHeight above && above.heightMm() != 0;
        List<String> spec = new ArrayList<>(spec(shape));
        if (sized) {
            // its height over the centre is not known without a radius
            spec.set(spec.size() - 1, "");
        }
        return joined(Stream.of(
                List.of(
                        "",
                        yes(out.candidate().own()),
                        "no",
                        Integer.toString(out.candidate().steps())),
                spec,
                Collections.nCopies(FIGURES.size(), ""),
                List.of(out.problem().line())));
    }

    private static List<String> spec(DomeSpec spec) {
        boolean above = spec.keep() instanceof Keep.AboveHeight;
        return List.of(
                DomeName.word(spec.solid()),
                Integer.toString(spec.breakdown().b()),
                Integer.toString(spec.breakdown().c()),
                DomeName.word(spec.spacing()),
                DomeName.word(spec.up()),
                above ? "above" : spec.keep().toString(),
                above ? number(aboveMm(spec), 6) : "");
    }

    /** Rounded down, so that hubs at the level itself stay above it. */
    static double aboveMm(DomeSpec spec) {
        double mm = ((Keep.AboveHeight) spec.keep()).heightMm();
        return Math.floor(mm * 1e6) / 1e6;
    }

    private static List<String> figures(Compared row) {
        Measures m = row.measures();
        Counts c = row.counts();
        return joined(Stream.of(
                List.of(
                        number(m.radiusMm(), 3),
                        number(m.floorDiameterMm(), 3),
                        number(m.heightMm(), 3),
                        number(m.floorAreaMm2() / 1e6, 6),
                        number(row.roomMm3() / 1e9, 6),
                        number(m.baseSpreadMm(), 3),
                        fits(row.work().fits())),
                Stream.of(
                                c.panels(),
                                c.panelKinds(),
                                c.handedKinds(),
                                c.struts(),
                                c.strutKinds(),
                                c.hubs(),
                                c.hubKinds())
                        .map(String::valueOf)
                        .toList(),
                stock(row),
                work(row.work()),
                List.of(number(row.price(), 2), number(row.perRoom(), 3), number(row.massKg(), 3))));
    }

    static String fits(Work.Fits fits) {
        return switch (fits) {
            case WHOLE -> "yes";
            case SEAMS -> "seams";
            case UNKNOWN -> "unknown";
            case NO -> "no";
        };
    }

    private static List<String> stock(Compared row) {
        boolean any = !row.stocks().isEmpty();
        Optional<BarUse> bars = row.bars();
        return List.of(
                any ? yes(row.planned()) : "",
                any
                        ? Integer.toString(
                                row.stocks().stream().mapToInt(StockUse::sheets).sum())
                        : "",
                any ? number(row.stocks().stream().mapToDouble(StockUse::rollMm).sum() / 1000, 3) : "",
                number(row.utilisation(), 6),
                bars.map(use -> Integer.toString(use.count())).orElse(""),
                bars.map(use -> number(use.lengthMm() / 1000, 3)).orElse(""),
                bars.map(use -> yes(use.planned())).orElse(""));
    }

    private static List<String> work(Work work) {
        return List.of(
                number(work.jointMm() / 1000, 3),
                number(work.seamMm() / 1000, 3),
                number(work.widthMm(), 3),
                number(work.spareMm(), 3),
                number(work.differenceMm(), 3));
    }

    private static String yes(boolean value) {
        return value ? "yes" : "no";
    }

    private static String number(double value, int decimals) {
        return NumberText.fixed(value, decimals);
    }

    private static String number(OptionalDouble value, int decimals) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : "";
    }

    private static List<String> joined(Stream<List<String>> parts) {
        return parts.flatMap(List::stream).toList();
    }
}
