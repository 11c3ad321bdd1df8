package dev.calotte.drawing;

import dev.calotte.document.Picture;
import dev.calotte.document.Picture.Anchor;
import dev.calotte.document.Picture.Facet;
import dev.calotte.document.Picture.Hatch;
import dev.calotte.document.Picture.Item;
import dev.calotte.document.Picture.Label;
import dev.calotte.document.Picture.Weight;
import dev.calotte.nest.BarPlan;
import dev.calotte.nest.Cut;
import dev.calotte.nest.CutBar;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Bars as strips, one for each way of cutting them. */
final class BarPicture {

    private static final int ROWS = 20;
    private static final double WIDTH = 180;
    private static final double ROW = 11;
    private static final double BAR = 6;
    private static final double COUNT = 14;
    private static final double LEFT_OVER = 26;

    private final BarPlan plan;
    private final UnitSystem units;
    private final double longestMm;

    BarPicture(BarPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
        this.longestMm = plan.bars().stream()
                .mapToDouble(bar -> bar.bar().lengthMm())
                .max()
                .orElse(1);
    }

    /** Bars that are cut alike. */
    private record Way(CutBar bar, int count) {}

    List<Picture> pictures() {
        List<Way> ways = ways();
        List<Picture> pictures = new ArrayList<>();
        for (int first = 0; first < ways.size(); first += ROWS) {
            pictures.add(picture(pictures.size() + 1, ways.subList(first, Math.min(first + ROWS, ways.size()))));
        }
        return List.copyOf(pictures);
    }

    private List<Way> ways() {
        Map<String, List<CutBar>> alike = new LinkedHashMap<>();
        for (CutBar bar : plan.bars()) {
            String cuts = bar.cuts().stream().map(Cut::mark).collect(Collectors.joining(" "));
            alike.computeIfAbsent(bar.bar().lengthMm() + " " + cuts, key -> new ArrayList<>())
                    .add(bar);
        }
        return alike.values().stream()
                .map(bars -> new Way(bars.get(0), bars.size()))
                .toList();
    }

    private Picture picture(int number, List<Way> ways) {
        double height = ways.size() * ROW;
        List<Item> items = new ArrayList<>();
        for (int row = 0; row < ways.size(); row++) {
            add(items, ways.get(row), height - (row + 0.5) * ROW);
        }
        String name = "stock/bars-" + (number < 10 ? "0" : "") + number;
        return new Picture(name, "How the bars are cut, how many of each, and what is left", WIDTH, height, items);
    }

    private void add(List<Item> items, Way way, double y) {
        double perMm = (WIDTH - COUNT - LEFT_OVER) / longestMm;
        double end = COUNT + way.bar().bar().lengthMm() * perMm;
        items.add(new Label(way.count() + " \u00d7", COUNT - 2, y, Letters.MARK, Anchor.END));
        items.add(strip(COUNT, end, y, 0, "rest"));
        double x = COUNT + way.bar().bar().trimMm() * perMm;
        for (Cut cut : way.bar().cuts()) {
            double next = x + cut.lengthMm() * perMm;
            items.add(strip(x, next, y, number(cut.mark()), cut.mark() + ", " + units.length(cut.lengthMm(), 1)));
            addMark(items, cut.mark(), next - x, (x + next) / 2, y);
            x = next + way.bar().bar().kerfMm() * perMm;
        }
        items.add(new Label(units.length(way.bar().leftMm()), end + 2, y, Letters.SMALL, Anchor.START));
    }

    private static void addMark(List<Item> items, String mark, double room, double x, double y) {
        for (double letters : List.of(Letters.MARK, Letters.SMALL)) {
            if (Letters.widthMm(mark, letters) < room) {
                items.add(Letters.middle(mark, x, y, letters));
                return;
            }
        }
    }

    private static Facet strip(double from, double to, double y, int colour, String title) {
        double low = y - BAR / 2;
        double high = y + BAR / 2;
        return new Facet(List.of(from, low, to, low, to, high, from, high), colour, Hatch.NONE, Weight.FINE, title);
    }

    /** The number in a mark, which gives its colour. */
    private static int number(String mark) {
        return Integer.parseInt(mark.substring(1));
    }
}
