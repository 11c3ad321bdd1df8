package dev.calotte.solid;

import dev.calotte.document.Jig;
import dev.calotte.parts.Ends;
import dev.calotte.parts.Parts;
import dev.calotte.parts.RailKind;
import dev.calotte.parts.StrutKind;
import dev.calotte.pattern.Patterns;
import dev.calotte.pattern.Side;
import dev.calotte.units.NumberText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Gauges and guides, one for each angle that differs from the others by a tenth of a degree as it is printed. */
final class Gauges {

    private static final int DECIMALS = 1;
    private static final double TENTHS = 10;

    private final Parts parts;
    private final JigSpec spec;

    Gauges(Parts parts, JigSpec spec) {
        this.parts = parts;
        this.spec = spec;
    }

    List<Jig> list(List<Patterns> covers) {
        List<Jig> all = new ArrayList<>();
        Ends ends = parts.joinery().ends();
        if (ends instanceof Ends.Flattened || parts.joinery().hubPlate().isPresent()) {
            addBends(all);
        }
        if (ends instanceof Ends.Flattened flat) {
            addDrill(flat, all);
        }
        if (ends instanceof Ends.Mitred rails) {
            addMitres(rails, all);
            addSaddles(dihedrals(), all);
        }
        addBevelled(covers.stream().filter(Gauges::isBevelled).toList(), all);
        Map<String, Jig> once = new LinkedHashMap<>();
        all.forEach(jig -> once.putIfAbsent(jig.mark(), jig));
        return List.copyOf(once.values());
    }

    private static boolean isBevelled(Patterns patterns) {
        return patterns.cover().sheeting().bevelled()
                && patterns.cover().sheeting().thicknessMm() > 0;
    }

    /** By its tenths of a degree; the first angle of each stands for all. */
    private static Map<Long, Double> distinct(List<Double> anglesRad) {
        Map<Long, Double> distinct = new TreeMap<>();
        anglesRad.forEach(angle -> distinct.putIfAbsent(tenths(angle), angle));
        return distinct;
    }

    private static long tenths(double rad) {
        return Math.round(StrictMath.toDegrees(rad) * TENTHS);
    }

    private static String text(long tenths) {
        return NumberText.fixed(tenths / TENTHS, DECIMALS);
    }

    private void addBends(List<Jig> all) {
        List<Double> bends =
                parts.strutKinds().stream().map(StrutKind::axialAngleRad).toList();
        distinct(bends)
                .forEach((tenths, angle) -> all.add(new Jig.Gauge(
                        "bend-" + text(tenths),
                        "Bend gauge, " + text(tenths) + " degrees: " + marksOf(tenths),
                        Jig.Use.BEND,
                        angle)));
    }

    private String marksOf(long tenths) {
        return String.join(
                " ",
                parts.strutKinds().stream()
                        .filter(strut -> tenths(strut.axialAngleRad()) == tenths)
                        .map(StrutKind::mark)
                        .toList());
    }

    private void addDrill(Ends.Flattened flat, List<Jig> all) {
        spec.strut()
                .ifPresent(tube -> all.add(new Jig.Drill(
                        "drill",
                        "Drill guide for flattened ends: clamp it to the flat and drill through its hole",
                        FlatTube.widthMm(tube, flat),
                        FlatTube.thickMm(flat),
                        flat.holeMm(),
                        flat.holeEdgeMm())));
    }

    private void addMitres(Ends.Mitred rails, List<Jig> all) {
        Map<String, Jig.Mitre> known = new TreeMap<>();
        for (RailKind rail : parts.railKinds()) {
            for (boolean start : new boolean[] {true, false}) {
                RailKind.End end = start ? rail.start() : rail.end();
                String side = start ? "start" : "end";
                String mark =
                        "mitre-" + side + "-" + text(tenths(end.bladeTiltRad())) + "-" + text(tenths(end.gaugeRad()));
                known.putIfAbsent(
                        mark,
                        new Jig.Mitre(
                                mark,
                                "Mitre block for the " + side + " of rails, first of " + rail.mark()
                                        + "; measure, and begin to saw, at the arris by the rib",
                                rails.depthMm(),
                                rails.widthMm(),
                                start,
                                end.bladeTiltRad(),
                                end.gaugeRad()));
            }
        }
        all.addAll(known.values());
    }

    private List<Double> dihedrals() {
        return parts.strutKinds().stream()
                .flatMap(strut -> strut.dihedrals().stream())
                .map(StrutKind.Dihedral::angleRad)
                .toList();
    }

    private static void addBevelled(List<Patterns> covers, List<Jig> all) {
        List<Double> dihedrals = covers.stream()
                .flatMap(cover -> cover.list().stream())
                .flatMap(pattern -> pattern.sides().stream())
                .map(Side::dihedralRad)
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .filter(angle -> tenths(angle) != tenths(Math.PI))
                .sorted()
                .toList();
        List<Double> halves = dihedrals.stream().map(angle -> angle / 2).toList();
        distinct(halves)
                .forEach((tenths, half) -> all.add(new Jig.Gauge(
                        "bevel-" + text(tenths),
                        "Bevel gauge, " + text(tenths) + " degrees between the saw's table and its blade",
                        Jig.Use.BEVEL,
                        half)));
        addSaddles(dihedrals, all);
    }

    private static void addSaddles(List<Double> dihedrals, List<Jig> all) {
        distinct(dihedrals)
                .forEach((tenths, angle) -> all.add(new Jig.Gauge(
                        "saddle-" + text(tenths),
                        "Saddle for two panels at " + text(tenths) + " degrees, measured inside the dome",
                        Jig.Use.SADDLE,
                        angle)));
    }
}
