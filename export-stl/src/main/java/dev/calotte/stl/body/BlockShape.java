package dev.calotte.stl.body;

import dev.calotte.document.Jig;
import dev.calotte.document.PrintPlate;
import dev.calotte.units.NumberText;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Guides for saw and drill, and the test of the fit. */
final class BlockShape {

    private static final double BASE = 3;
    private static final double LETTER = 6;
    /** How far a rail is held at least. */
    private static final double HOLD = 40;
    /** How far the rib on a mitre block stands out, and half of how wide it is. */
    private static final double RIB = 2.4;

    private final PrintPlate plate;

    BlockShape(PrintPlate plate) {
        this.plate = plate;
    }

    /**
     * A channel that is printed standing: the rail runs upwards in it, and its top is the plane of the cut. The outer
     * face lies against the long wall. At a rail's start, seen from above, its depth runs to the left; at its end, to the
     * right. Along the rail the cut falls back by {@code tan g} a millimetre of depth and {@code tan b / cos g} of width.
     * A thin plate at the other end, beside the channel, bears the mark. A rib on the back of the long wall runs to the
     * top outer arris, the one that goes from node to node: there lengths are measured, and there the saw begins.
     */
    Relief mitre(Jig.Mitre jig) {
        double wall = Math.max(plate.wallMm(), 2.4);
        double wide = jig.lyingMm() + 2 * plate.clearanceMm() + 2 * wall;
        double deep = 0.6 * jig.standingMm() + wall;
        double across = StrictMath.tan(jig.gaugeRad()) * (jig.start() ? 1 : -1);
        double away = -StrictMath.tan(jig.bladeTiltRad()) / StrictMath.cos(jig.gaugeRad());
        double height = HOLD - Math.min(0, across * wide) - Math.min(0, away * deep);
        double arris = wall + plate.clearanceMm();
        double rib = jig.start() ? wide - arris : arris;
        Plane cut = Axis.towards(0).slope(height, across, away);
        return tag(wide, deep, jig.mark())
                .cover(Axis.from(rib, 0, 0).area(-RIB, wall / 2, -RIB, 0, 0, -RIB, RIB, 0, RIB, wall / 2), cut)
                .cover(
                        Axis.towards(0)
                                .area(
                                        0,
                                        0,
                                        wide,
                                        0,
                                        wide,
                                        deep,
                                        wide - wall,
                                        deep,
                                        wide - wall,
                                        wall,
                                        wall,
                                        wall,
                                        wall,
                                        deep,
                                        0,
                                        deep),
                        cut);
    }

    /** A plate to the right of a block, with the words of a mark below each other. */
    private static Relief tag(double right, double high, String mark) {
        Letters letters = new Letters(LETTER, Plane.level(BASE + Letters.RAISED));
        List<String> words = Arrays.stream(mark.toUpperCase(Locale.ROOT).split("-", -1))
                .skip(mark.contains("-") ? 1 : 0)
                .toList();
        double wide = words.stream().mapToDouble(letters::widthMm).max().orElseThrow();
        double least = words.size() * (LETTER + 2) + 2;
        Axis axis = Axis.towards(0);
        // begins inside the block, so that both are one
        Relief relief = Relief.empty()
                .cover(axis.box(right - 1, right + wide + 4, 0, Math.max(high, least)), Plane.level(BASE));
        double y = Math.max(high, least);
        for (String word : words) {
            y -= LETTER + 2;
            relief = letters.write(relief, word, axis.moved(right + 2, y));
        }
        return relief;
    }

    /** A tray for the flat end; the drill goes through the hole in its thick floor. */
    Relief drill(Jig.Drill jig) {
        double wall = Math.max(plate.wallMm(), 2.4);
        double floor = 10;
        double half = jig.flatMm() / 2 + plate.clearanceMm();
        double length = 2.5 * jig.holeEdgeMm() + jig.holeMm();
        double height = floor + Math.max(3, jig.thickMm());
        Axis axis = Axis.towards(0);
        return Relief.empty()
                .cover(axis.box(-wall, length, -half - wall, half + wall), Plane.level(height))
                .cover(axis.box(0, length, -half, half), Plane.level(floor))
                .open(axis.moved(jig.holeEdgeMm(), 0).disc(jig.holeMm() / 2 + 0.2, 32));
    }

    /** Level troughs side by side, each with its clearance in hundredths of a millimetre before it. */
    Relief fit(Jig.Fit jig) {
        double length = 15;
        double sill = LETTER + 4;
        double axisHeight = BASE + jig.strut().depthMm() / 2;
        Relief relief = Relief.empty();
        double y = 0;
        for (double clearance : jig.clearancesMm()) {
            Seat seat = new Seat(jig.strut(), clearance, plate.wallMm(), clearance);
            Axis axis = Axis.from(0, y + seat.outerMm(), 0);
            Seat.Run run = new Seat.Run(axis, axisHeight, 0, 0, length);
            relief = relief.cover(axis.box(-sill, 0, -seat.outerMm(), seat.outerMm()), Plane.level(BASE));
            relief = seat.trough(seat.walls(relief, run, area -> area), run);
            Letters letters = new Letters(LETTER, Plane.level(BASE + Letters.RAISED));
            String text = NumberText.trimmed(clearance, 2);
            double width = letters.widthMm(text);
            if (width < 2 * seat.outerMm() - 1) {
                // across the sill, read from outside
                relief = letters.write(relief, text, axis.moved(-2, -width / 2).turned(Math.PI / 2));
            }
            y += 2 * seat.outerMm() - plate.wallMm();
        }
        return relief;
    }
}
