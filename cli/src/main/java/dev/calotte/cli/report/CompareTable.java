package dev.calotte.cli.report;

import dev.calotte.compare.BarUse;
import dev.calotte.compare.Compared;
import dev.calotte.compare.StockUse;
import dev.calotte.compare.Work.Fits;
import dev.calotte.units.Length;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The domes of a comparison as a table for the terminal, at most 120 columns wide. What the brief cannot give, or what is
 * the same for all, is left out.
 */
final class CompareTable {

    static final int WIDEST = 120;

    private static final String UNKNOWN = "-";

    /** What is left out first where the table would be too wide. */
    private static final List<String> SPARE = List.of("joint", "used", "mass", "high", "bars");

    private final UnitSystem units;

    /** The names of columns that were left out. */
    private final List<String> leftOut = new ArrayList<>();

    /** All that are compared, so that the columns do not depend on how many are shown. */
    private final List<Compared> all;

    private final List<TableColumn> columns = new ArrayList<>();

    /**
     * A column.
     *
     * @param name its name
     * @param unit what its numbers are
     * @param cell what stands in a row
     */
    private record TableColumn(String name, String unit, Function<Compared, String> cell) {}

    CompareTable(UnitSystem units, List<Compared> all) {
        this.units = units;
        this.all = all;
        addSizes();
        if (all.stream().anyMatch(row -> row.measures().floorDiameterMm() > 0)) {
            add("base", nearUnit(), row -> near(row.measures().baseSpreadMm(), 0));
        }
        add("fits", "", row -> fits(row.work().fits()));
        add("panel", "kinds", CompareTable::panels);
        add("strut", "kinds", row -> Integer.toString(row.counts().strutKinds()));
        add("hubs", "", row -> Integer.toString(row.counts().hubs()));
        addStock();
        add("joint", unit(), row -> far(row.work().jointMm() + row.work().seamMm()));
        add("width", nearUnit(), row -> near(row.work().widthMm(), 0));
        add("apart", nearUnit(), this::apart);
        addIfKnown("price", "", Compared::price);
        if (all.stream().anyMatch(row -> row.perRoom().isPresent())) {
            add("per", "room", row -> few(row.perRoom()));
        }
        addIfKnown("mass", "kg", Compared::massKg);
    }

    private void add(String name, String unit, Function<Compared, String> cell) {
        columns.add(new TableColumn(name, unit, cell));
    }

    private void addSizes() {
        addSize("radius", row -> row.measures().radiusMm());
        addSize("floor", row -> row.measures().floorDiameterMm());
        addSize("high", row -> row.measures().heightMm());
    }

    /** Where all are equal the page says it once. */
    private void addSize(String name, ToDoubleFunction<Compared> size) {
        boolean radiusInPlaceOfFloor = name.equals("radius")
                && all.stream().anyMatch(row -> row.measures().floorDiameterMm() > 0);
        if (!radiusInPlaceOfFloor
                && all.stream()
                                .map(row -> far(size.applyAsDouble(row)))
                                .distinct()
                                .count()
                        > 1) {
            add(name, unit(), row -> far(size.applyAsDouble(row)));
        }
    }

    private void addStock() {
        if (all.stream().anyMatch(row -> sheets(row) > 0)) {
            add("sheets", "", row -> row.stocks().isEmpty() ? UNKNOWN : sheets(row) + estimate(row));
        }
        if (all.stream().anyMatch(row -> rollMm(row) > 0)) {
            add("roll", unit(), row -> row.stocks().isEmpty() ? UNKNOWN : far(rollMm(row)) + estimate(row));
        }
        if (all.stream().anyMatch(row -> row.utilisation().isPresent())) {
            add("used", "%", row -> whole(row.utilisation(), 100));
        }
        if (all.stream().anyMatch(row -> row.bars().isPresent())) {
            add("bars", "", row -> row.bars().map(CompareTable::bars).orElse(UNKNOWN));
        }
    }

    private static String bars(BarUse use) {
        return use.count() + (use.planned() ? "" : "~");
    }

    private void addIfKnown(String name, String unit, Function<Compared, OptionalDouble> value) {
        if (all.stream().anyMatch(row -> value.apply(row).isPresent())) {
            add(name, unit, row -> whole(value.apply(row), 1));
        }
    }

    /** The head, its units, and the rows; without some columns if they would be too wide. */
    List<String> lines(List<Compared> rows) {
        List<String> lines = table(rows);
        for (String spare : SPARE) {
            if (width(lines) <= WIDEST) {
                return lines;
            }
            if (columns.removeIf(column -> column.name().equals(spare))) {
                leftOut.add(spare);
            }
            lines = table(rows);
        }
        return lines;
    }

    /** What the lines that were made left out for want of room. */
    List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    private static int width(List<String> lines) {
        return lines.stream().mapToInt(String::length).max().orElse(0);
    }

    private List<String> table(List<Compared> rows) {
        List<String> first = new ArrayList<>(List.of("dome"));
        List<String> second = new ArrayList<>(List.of(""));
        columns.forEach(column -> {
            first.add(column.name());
            second.add(column.unit());
        });
        TextTable table = new TextTable(0, first.toArray(String[]::new));
        table.row(second.toArray(String[]::new));
        rows.forEach(row -> table.row(cells(row)));
        return table.lines();
    }

    private String[] cells(Compared row) {
        List<String> cells = new ArrayList<>();
        cells.add((row.candidate().own() ? "=" : " ") + (row.best() ? "* " : "  ") + DomeName.of(row.spec()));
        columns.forEach(column -> cells.add(column.cell().apply(row)));
        return cells.toArray(String[]::new);
    }

    private static String fits(Fits fits) {
        return switch (fits) {
            case WHOLE -> "yes";
            case SEAMS -> "seams";
            case UNKNOWN -> UNKNOWN;
            case NO -> "no";
        };
    }

    private static String panels(Compared row) {
        int handed = row.counts().handedKinds();
        return row.counts().panelKinds() + (handed > 0 ? " (" + handed + ")" : "");
    }

    private static int sheets(Compared row) {
        return row.stocks().stream().mapToInt(StockUse::sheets).sum();
    }

    private static double rollMm(Compared row) {
        return row.stocks().stream().mapToDouble(StockUse::rollMm).sum();
    }

    private static String estimate(Compared row) {
        return row.planned() ? "" : "~";
    }

    private String apart(Compared row) {
        OptionalDouble mm = row.work().differenceMm();
        String warning = row.work().isClose() ? "!" : "";
        return mm.isPresent() ? near(mm.getAsDouble(), 1) + warning : UNKNOWN;
    }

    private static String whole(OptionalDouble value, double times) {
        return value.isPresent() ? Long.toString(Math.round(value.getAsDouble() * times)) : UNKNOWN;
    }

    /** Three digits are enough to compare. */
    private static String few(OptionalDouble value) {
        if (value.isEmpty() || value.getAsDouble() >= 100) {
            return whole(value, 1);
        }
        return NumberText.fixed(value.getAsDouble(), value.getAsDouble() >= 10 ? 1 : 2);
    }

    /** Metres or feet without their unit, which stands in the head. */
    private String far(double mm) {
        String text = units.longLength(mm);
        return text.substring(0, text.indexOf(' '));
    }

    private String unit() {
        String text = units.longLength(0);
        return text.substring(text.indexOf(' ') + 1);
    }

    /** Millimetres, or inches with one decimal more. */
    private String near(double mm, int decimals) {
        boolean metric = units == UnitSystem.METRIC;
        if (metric && decimals == 0) {
            return Long.toString(Math.round(mm));
        }
        return NumberText.fixed(metric ? mm : mm / Length.INCH_MM, metric ? decimals : decimals + 1);
    }

    private String nearUnit() {
        return units == UnitSystem.METRIC ? "mm" : "in";
    }
}
