package dev.calotte.cli.report;

import dev.calotte.cli.Rivals;
import dev.calotte.cli.brief.SizeWish;
import dev.calotte.compare.Compared;
import dev.calotte.compare.Comparison;
import dev.calotte.compare.InCommon;
import dev.calotte.compare.RuledOut;
import dev.calotte.dome.Keep;
import dev.calotte.dome.Size;
import dev.calotte.units.NumberText;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The domes that could stand in a brief's place, on a page of a terminal. */
public final class ComparePage {

    private static final int MOST_NAMES = 3;

    private final Rivals rivals;
    private final Comparison comparison;
    private final UnitSystem units;
    private final int top;
    private final List<String> lines = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    private ComparePage(Rivals rivals, int top) {
        this.rivals = rivals;
        this.comparison = rivals.comparison();
        this.units = rivals.project().units();
        this.top = top;
    }

    /**
     * Writes the page.
     *
     * @param rivals the domes
     * @param top how many rows to show at most; the brief's own dome is shown besides
     * @return its lines
     */
    public static List<String> of(Rivals rivals, int top) {
        ComparePage page = new ComparePage(rivals, top);
        page.addHead();
        if (!rivals.comparison().rows().isEmpty()) {
            page.addTable();
            page.addLegend();
        }
        page.addRuledOut();
        return List.copyOf(page.lines);
    }

    private void addHead() {
        int rows = comparison.rows().size();
        int all = rows + comparison.ruledOut().size();
        lines.add(rivals.project().title());
        lines.add("  " + all + " domes compared" + (all > rows ? ", " + rows + " of them can be built" : ""));
        lines.add("  " + common() + "; sorted by " + comparison.sortedBy());
        lines.add("");
    }

    private String common() {
        InCommon common = rivals.common();
        if (common instanceof InCommon.StockOf stock) {
            return "each as large as the stock of " + stock.cover() + " allows with whole panels";
        }
        if (common instanceof InCommon.LongestCut longest) {
            return "all with a longest cut strut of " + units.length(longest.mm(), 1);
        }
        Size size = ((InCommon.OfSize) common).size();
        String word = size.measure().key().replace('-', ' ');
        String value =
                size.measure() == Size.Measure.FLOOR_AREA ? units.area(size.value()) : units.length(size.value());
        return "all with a " + word + " of " + value;
    }

    private void addTable() {
        List<Compared> rows = comparison.rows();
        List<Compared> shown = rows.subList(0, Math.min(top, rows.size()));
        List<Compared> besides = rows.subList(shown.size(), rows.size()).stream()
                .filter(row -> row.candidate().own())
                .toList();
        List<Compared> all = new ArrayList<>(shown);
        all.addAll(besides);
        CompareTable columns = new CompareTable(units, rows);
        List<String> table = columns.lines(all);
        leftOut.addAll(columns.leftOut());
        lines.addAll(table.subList(0, table.size() - besides.size()));
        if (!besides.isEmpty()) {
            lines.add("  ...");
            lines.addAll(table.subList(table.size() - besides.size(), table.size()));
        }
        if (all.size() < rows.size()) {
            lines.add("  and " + (rows.size() - all.size()) + " more: --top " + rows.size() + ", --csv or --json");
        }
        lines.add("");
    }

    private void addLegend() {
        List<Compared> rows = comparison.rows();
        add("= the brief's own dome" + ownDiffers() + ".");
        add("* no other dome is as good in " + criteria() + " and better in one of them.");
        if (rows.stream().anyMatch(row -> !row.planned())) {
            add("~ what covers take and cost is estimated: parts were laid on stock for "
                    + rows.stream()
                            .filter(row -> row.planned() && !row.stocks().isEmpty())
                            .count()
                    + " domes only. --plans and --steps do more.");
        }
        if (rows.stream().flatMap(row -> row.bars().stream()).anyMatch(use -> !use.planned())) {
            add("~ bars are estimated where a frame has many kinds of struts; a plan may need a little less.");
        }
        rows.stream()
                .filter(row -> row.work().isClose())
                .findFirst()
                .ifPresent(row -> add("! two kinds differ by less than " + tolerance(row)
                        + ", three times the cut tolerance: mark them well."));
        addPrices();
        if (rows.stream().anyMatch(row -> row.counts().handedKinds() > 0)) {
            add("Panels: kinds, in brackets how many of them are left- or right-handed.");
        }
        add("Width: the narrowest of the widest panel"
                + (rivals.project().covers().isEmpty() ? "." : ", as it is cut.")
                + " Apart: the least difference between two kinds.");
        if (rows.stream().anyMatch(row -> row.measures().baseSpreadMm() > 0)) {
            add("Base: by how much the base hubs differ in height.");
        }
        if (leftOut.contains("joint")) {
            add("Left out for want of room, and in --csv: " + String.join(", ", leftOut) + ".");
        } else {
            add("Joint: the joints between panels, and seams in them.");
        }
        rows.stream()
                .filter(row -> row.spec().keep() instanceof Keep.AboveHeight)
                .findFirst()
                .ifPresent(row -> add("... up: the panels wholly above " + level(row)
                        + " stay; --csv gives the height for keep: { above: ... }."));
    }

    private String ownDiffers() {
        boolean resized = rivals.common() instanceof InCommon.StockOf
                && !(rivals.project().size() instanceof SizeWish.WidestFor);
        return (resized ? ", sized like the others" : "")
                + (rivals.project().openings().isEmpty() ? "" : ", without its openings");
    }

    private boolean isPriced() {
        return comparison.rows().stream().anyMatch(row -> row.price().isPresent());
    }

    private void addPrices() {
        List<Compared> rows = comparison.rows();
        List<String> priced = new ArrayList<>();
        rows.stream().filter(Compared::fits).findFirst().ifPresent(row -> {
            row.bars().filter(bars -> bars.price().isPresent()).ifPresent(bars -> priced.add("bars"));
            row.stocks().stream().filter(use -> use.price().isPresent()).forEach(use -> priced.add(use.cover()));
        });
        boolean known = rows.stream().anyMatch(row -> row.perRoom().isPresent());
        if (!priced.isEmpty()) {
            add("Price: of " + String.join(", ", priced) + ".");
        }
        if (known) {
            add("Per room: " + (priced.isEmpty() ? "the stock in square metres" : "the price")
                    + " over room inside^2/3, so that large and small domes are on a par.");
        }
    }

    private String criteria() {
        List<String> names = comparison.criteria().stream()
                .map(column -> switch (column) {
                    case PER_ROOM -> isPriced() ? "price per room" : "stock per room";
                    case ROOM -> "room inside";
                    default -> column.toString();
                })
                .toList();
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    private String tolerance(Compared row) {
        double mm = 3 * row.work().toleranceMm();
        return units == UnitSystem.METRIC
                ? NumberText.trimmed(mm, 2) + " mm"
                : NumberText.trimmed(mm / dev.calotte.units.Length.INCH_MM, 3) + "\"";
    }

    private static String level(Compared row) {
        double above = ((Keep.AboveHeight) row.spec().keep()).heightMm();
        return above == 0
                ? "the centre of the sphere"
                : "a level " + NumberText.fixed(Math.abs(above) / row.measures().radiusMm(), 3) + " of the radius "
                        + (above < 0 ? "below" : "over") + " the centre";
    }

    private void addRuledOut() {
        Map<String, List<RuledOut>> reasons = new LinkedHashMap<>();
        for (RuledOut out : comparison.ruledOut()) {
            reasons.computeIfAbsent(sort(out), sort -> new ArrayList<>()).add(out);
        }
        if (!reasons.isEmpty()) {
            lines.add("");
            lines.add("Cannot be built: " + comparison.ruledOut().size());
        }
        comparison.ruledOut().stream()
                .filter(out -> out.candidate().own())
                .forEach(out -> add("  The brief's own dome: " + out.problem().line()));
        reasons.values()
                .forEach(alike -> add("  " + alike.size() + ": " + names(alike) + ": "
                        + alike.get(0).problem().what()));
    }

    /** Reasons that differ in their numbers only are one. */
    private static String sort(RuledOut out) {
        return out.problem().what().replaceAll("[0-9.]+", "0");
    }

    private static String names(List<RuledOut> alike) {
        String names = alike.stream()
                .map(RuledOut::candidate)
                .limit(MOST_NAMES)
                .map(candidate -> (candidate.own() ? "the brief's own " : "") + DomeName.of(candidate.shape()))
                .collect(Collectors.joining(", "));
        return names + (alike.size() > MOST_NAMES ? " and others" : "");
    }

    private void add(String text) {
        int indent = text.length() - text.stripLeading().length();
        lines.addAll(ShowPage.wrapped(indent, text.strip()));
    }
}
