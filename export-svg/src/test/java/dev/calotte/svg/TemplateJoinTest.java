package dev.calotte.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.calotte.document.Circle;
import dev.calotte.document.Drawing;
import dev.calotte.document.Operation;
import dev.calotte.document.Polyline;
import dev.calotte.export.PageSize;
import dev.calotte.testing.Cases;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Pages laid on one another as the overview says are the pattern again. */
class TemplateJoinTest {

    /** Half of the last digit in either of two numbers, at a slant. */
    private static final double ROUNDING_MM = 2e-4;

    private static final Pattern PLACE = Pattern.compile(".*-r(\\d+)c(\\d+)");

    /** From column to column and row to row: the paper less margins, heading, rulers and the overlap of 10 mm. */
    private static double across(PageSize size) {
        return size == PageSize.A4 ? 165.5 : 171.4;
    }

    private static double down(PageSize size) {
        return size == PageSize.A4 ? 230 : 212.4;
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void pagesLaidOnOneAnotherAreThePattern(PageSize size) {
        Cases.each(40, (random, n) -> {
            Polyline outline = polygon(random, 260 + 10 * n);
            try {
                Map<String, Document> pages = Printed.pages(Samples.pattern("panels/P1", outline), size);
                assertThat(pages).hasSizeGreaterThan(1);
                same(sides(outline), joined(pages, "CUT_OUTER", size));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static Polyline polygon(Random random, double extent) {
        double[] xy = random.doubles(2L * (3 + random.nextInt(5)), 0, extent).toArray();
        xy[0] = 0;
        xy[2] = extent;
        return Polyline.closed(Operation.CUT_OUTER, xy);
    }

    private static List<double[]> sides(Polyline path) {
        return IntStream.range(0, path.size())
                .mapToObj(i ->
                        new double[] {path.x(i), path.y(i), path.x((i + 1) % path.size()), path.y((i + 1) % path.size())
                        })
                .toList();
    }

    private static List<double[]> joined(Map<String, Document> pages, String id, PageSize size) {
        List<double[]> joined = new ArrayList<>();
        pages.forEach((name, page) -> {
            Matcher place = PLACE.matcher(name);
            if (place.matches()) {
                double x = (Integer.parseInt(place.group(2)) - 1) * across(size);
                double y = -(Integer.parseInt(place.group(1)) - 1) * down(size);
                Printed.sides(page, id, size)
                        .forEach(s -> joined.add(new double[] {s[0] + x, s[1] + y, s[2] + x, s[3] + y}));
            }
        });
        return joined;
    }

    private static double[] bounds(List<double[]> sides) {
        double[] bounds = {1e9, 1e9, -1e9, -1e9};
        for (double[] side : sides) {
            for (int i = 0; i < 4; i++) {
                bounds[i % 2] = Math.min(bounds[i % 2], side[i]);
                bounds[2 + i % 2] = Math.max(bounds[2 + i % 2], side[i]);
            }
        }
        return bounds;
    }

    /** Wherever the pattern lies on the grid, and upright or turned. */
    private static void same(List<double[]> whole, List<double[]> pieces) {
        double[] there = bounds(pieces);
        double[] here = bounds(whole);
        List<double[]> sides = whole;
        if (Math.abs((there[2] - there[0]) - (here[2] - here[0])) > ROUNDING_MM) {
            sides = whole.stream()
                    .map(s -> new double[] {-s[1], s[0], -s[3], s[2]})
                    .toList();
            here = bounds(sides);
        }
        List<double[]> unused = new ArrayList<>(pieces);
        for (double[] s : sides) {
            double x = there[0] - here[0];
            double y = there[1] - here[1];
            covers(new double[] {s[0] + x, s[1] + y, s[2] + x, s[3] + y}, pieces, unused);
        }
        assertThat(unused).as("lines that are not in the pattern").isEmpty();
    }

    private static void covers(double[] side, List<double[]> pieces, List<double[]> unused) {
        double length = Math.hypot(side[2] - side[0], side[3] - side[1]);
        List<double[]> parts = new ArrayList<>();
        for (double[] piece : pieces) {
            double[] from = along(side, length, piece[0], piece[1]);
            double[] to = along(side, length, piece[2], piece[3]);
            double off = Math.max(Math.abs(from[1]), Math.abs(to[1]));
            double least = Math.min(from[0], to[0]);
            double most = Math.max(from[0], to[0]);
            if (off < ROUNDING_MM && least > -ROUNDING_MM && most < length + ROUNDING_MM) {
                parts.add(new double[] {least, most});
                unused.remove(piece);
            }
        }
        parts.sort(Comparator.comparingDouble(part -> part[0]));
        double reached = 0;
        for (double[] part : parts) {
            assertThat(part[0]).as("gap in a side").isLessThan(reached + ROUNDING_MM);
            reached = Math.max(reached, part[1]);
        }
        assertThat(reached).isCloseTo(length, within(ROUNDING_MM));
    }

    private static double[] along(double[] side, double length, double x, double y) {
        double dx = (side[2] - side[0]) / length;
        double dy = (side[3] - side[1]) / length;
        return new double[] {(x - side[0]) * dx + (y - side[1]) * dy, (y - side[1]) * dx - (x - side[0]) * dy};
    }

    @ParameterizedTest
    @EnumSource(PageSize.class)
    void circlesOverSeveralPagesStayRoundToAHundredthOfAMillimetre(PageSize size) throws IOException {
        Drawing plate = Samples.pattern("hubs/H1", new Circle(Operation.CUT_OUTER, 300, 300, 260));
        List<double[]> sides = joined(Printed.pages(plate, size), "CUT_OUTER", size);
        double[] bounds = bounds(sides);
        double x = (bounds[0] + bounds[2]) / 2;
        double y = (bounds[1] + bounds[3]) / 2;
        assertThat(bounds[2] - bounds[0]).isCloseTo(520, within(0.02));
        assertThat(sides).hasSizeGreaterThan(300).allSatisfy(side -> {
            assertThat(Math.hypot(side[0] - x, side[1] - y)).isCloseTo(260, within(0.011));
            assertThat(Math.hypot((side[0] + side[2]) / 2 - x, (side[1] + side[3]) / 2 - y))
                    .isCloseTo(260, within(0.011));
        });
    }

    /** The right half of a circle round 300, 300 as one side of bulge 1, and the way back. */
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void sidesThatAreArcsStayRoundToAHundredthOfAMillimetre(PageSize size) throws IOException {
        Polyline half = Polyline.closed(
                Operation.CUT_OUTER, new double[] {300, 40, 300, 560, 299, 300}, new double[] {1, 0, 0});
        List<double[]> sides = joined(Printed.pages(Samples.pattern("panels/P1", half), size), "CUT_OUTER", size);
        double[] bounds = bounds(sides);
        assertThat(bounds[2] - bounds[0]).isCloseTo(261, within(0.011));
        assertThat(bounds[3] - bounds[1]).isCloseTo(520, within(1e-3));
        double x = bounds[2] - 260;
        double y = (bounds[1] + bounds[3]) / 2;
        assertThat(sides.stream().filter(s -> Math.min(s[0], s[2]) > x + 0.1))
                .hasSizeGreaterThan(60)
                .allSatisfy(s -> {
                    assertThat(Math.hypot(s[0] - x, s[1] - y)).isCloseTo(260, within(0.02));
                    assertThat(Math.hypot((s[0] + s[2]) / 2 - x, (s[1] + s[3]) / 2 - y))
                            .isCloseTo(260, within(0.02));
                });
    }

    /** A cross is drawn whole on each page that has it, so both ends of its lines are found again. */
    @ParameterizedTest
    @EnumSource(PageSize.class)
    void everyCrossStandsOnTwoPagesAtLeast(PageSize size) throws IOException {
        List<double[]> crosses = joined(Printed.pages(Printed.triangle("panels/P1", 800), size), "CROSSES", size);
        List<String> places = crosses.stream()
                .map(s -> Math.round(s[0] * 1000) + " " + Math.round(s[1] * 1000) + " " + Math.round(s[2] * 1000))
                .toList();
        assertThat(places).isNotEmpty();
        assertThat(places.stream().distinct())
                .allSatisfy(place ->
                        assertThat(places.stream().filter(place::equals)).hasSizeBetween(2, 4));
    }

    @Test
    void pagesHangTogetherSideToSide() throws IOException {
        Drawing apart = Samples.pattern(
                "panels/P1",
                Polyline.closed(Operation.CUT_OUTER, 0, 0, 700, 0, 700, 700, 0, 700),
                new Circle(Operation.ENGRAVE, 350, 350, 2));
        Map<String, Document> pages = Printed.pages(apart, PageSize.A4);
        List<int[]> cells = pages.keySet().stream()
                .map(PLACE::matcher)
                .filter(Matcher::matches)
                .map(m -> new int[] {Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))})
                .toList();
        List<int[]> reached = new ArrayList<>(cells.subList(0, 1));
        for (int i = 0; i < reached.size(); i++) {
            int[] from = reached.get(i);
            cells.stream()
                    .filter(c -> Math.abs(c[0] - from[0]) + Math.abs(c[1] - from[1]) == 1 && !reached.contains(c))
                    .forEach(reached::add);
        }
        assertThat(reached).hasSameSizeAs(cells);
        assertThat(cells).hasSizeLessThan(20);
    }
}
