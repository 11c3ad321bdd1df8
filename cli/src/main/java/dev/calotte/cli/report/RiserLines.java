package dev.calotte.cli.report;

import dev.calotte.cli.Design;
import dev.calotte.parts.RiserWall;
import dev.calotte.parts.RiserWall.BottomPlate;
import dev.calotte.units.Angle;
import dev.calotte.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The wall under a dome on its page. */
final class RiserLines {

    private final RiserWall wall;
    private final UnitSystem units;

    private RiserLines(RiserWall wall, UnitSystem units) {
        this.wall = wall;
        this.units = units;
    }

    /** A head and a line for each sort of piece; nothing where there is no wall. */
    static List<String> of(Design design) {
        return design.riser()
                .map(wall -> new RiserLines(wall, design.project().units()).lines())
                .orElse(List.of());
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Riser " + units.length(wall.heightMm()) + " under the base, " + units.length(wall.totalHeightMm())
                + " high in all: tables/riser.csv of `make`");
        add(
                lines,
                "bays",
                wall.walls().stream()
                        .map(w -> w.count() + " " + w.mark() + " " + units.length(w.widthMm()) + " by "
                                + units.length(w.leftMm()) + side(w))
                        .collect(Collectors.joining(", ")));
        add(
                lines,
                "uprights",
                wall.uprights().stream()
                        .map(u -> u.count() + " " + u.mark() + " " + units.length(u.lengthMm()))
                        .collect(Collectors.joining(", ")));
        add(
                lines,
                "bottom plates",
                wall.bottomPlates().stream()
                        .map(b ->
                                b.count() + " " + b.mark() + " " + units.length(b.lengthMm()) + " mitred " + mitres(b))
                        .collect(Collectors.joining(", ")));
        add(
                lines,
                "top plates, the base struts",
                wall.topPlates().stream()
                        .map(t -> t.count() + " " + t.mark() + " " + units.length(t.lengthMm()) + slope(t))
                        .collect(Collectors.joining(", ")));
        return lines;
    }

    private static void add(List<String> lines, String what, String pieces) {
        lines.addAll(ShowPage.wrapped(2, what + ": " + pieces));
    }

    private static String slope(RiserWall.TopPlate plate) {
        String slope = Angle.text(plate.slopeRad(), 1);
        return slope.equals("0.0°") ? " level" : " sloping " + slope;
    }

    private String side(RiserWall.Wall w) {
        String left = units.length(w.leftMm());
        String right = units.length(w.rightMm());
        return left.equals(right) ? "" : " and " + right;
    }

    private static String mitres(BottomPlate plate) {
        String small = Angle.text(BottomPlate.mitreRad(plate.smallInsideRad()), 1);
        String large = Angle.text(BottomPlate.mitreRad(plate.largeInsideRad()), 1);
        return small.equals(large) ? small : small + " and " + large;
    }
}
