package dev.calotte.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Briefs that anybody might write: every part drawn by chance from what the language knows, invented throughout. */
final class RandomBriefs {

    private final Random random;
    private final StringBuilder text = new StringBuilder();

    private RandomBriefs(Random random) {
        this.random = random;
    }

    /** A brief of a dome of some hundred panels at most. */
    static String of(Random random) {
        RandomBriefs brief = new RandomBriefs(random);
        brief.dome();
        brief.size();
        brief.frame();
        brief.covers();
        brief.extras();
        brief.output();
        return brief.text.toString();
    }

    private void line(String key, String value) {
        text.append(key).append(": ").append(value).append('\n');
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private String oneOf(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private String mm(double least, double most) {
        return String.format(Locale.ROOT, "%.1f mm", least + (most - least) * random.nextDouble());
    }

    private static String map(List<String> entries) {
        return "{ " + String.join(", ", entries) + " }";
    }

    private void dome() {
        List<String> entries = new ArrayList<>();
        String solid = oneOf("icosahedron", "icosahedron", "octahedron", "tetrahedron");
        entries.add("solid: " + solid);
        if (chance(70)) {
            rowed(solid, entries);
        } else {
            entries.add("breakdown: [" + (1 + random.nextInt(3)) + ", " + (1 + random.nextInt(2)) + "]");
            entries.add("up: " + oneOf("vertex", "edge", "face"));
            entries.add("keep: " + oneOf("whole", "{ above: " + mm(0, 600) + " }", "{ above: " + mm(-900, 0) + " }"));
        }
        if (chance(15)) {
            entries.add("base: level");
        }
        if (chance(15)) {
            entries.add("riser: " + mm(300, 1200));
        }
        line("dome", map(entries));
    }

    /** Class I with a vertex up, which has rows. */
    private void rowed(String solid, List<String> entries) {
        int n = 1 + random.nextInt(4);
        int rows = n * (solid.equals("icosahedron") ? 3 : solid.equals("octahedron") ? 2 : 1);
        entries.add("breakdown: " + n);
        entries.add("spacing: " + oneOf("chord", "chord", "arc", "midarc"));
        int kept = 1 + random.nextInt(rows);
        entries.add("keep: " + (kept == rows ? "whole" : kept + "/" + rows));
    }

    private void size() {
        String value = switch (random.nextInt(6)) {
            case 0 -> "floor-diameter: " + mm(2000, 9000);
            case 1 -> "height: " + mm(1500, 4000);
            case 2 -> "longest-strut: " + mm(600, 2000);
            case 3 -> "floor-area: " + (5 + random.nextInt(40)) + " m2";
            default -> "radius: " + mm(1500, 5000);
        };
        line("size", "{ " + value + " }");
    }

    private void frame() {
        List<String> entries = new ArrayList<>();
        if (chance(60)) {
            entries.add("hub-gap: " + mm(0, 60));
        }
        if (chance(15)) {
            entries.add("merge-within: " + mm(0, 30));
        }
        if (chance(50)) {
            entries.add("bar: { length: " + mm(2500, 6500) + ", kerf: 3 mm, price: 12.5 }");
        }
        if (chance(20)) {
            entries.add(
                    chance(50)
                            ? "ends: { flatten: 40 mm, hole: 10 mm, hole-edge: 20 mm }"
                            : "hub-plate: { diameter: 160 mm, hole: 10 mm, hole-circle: 110 mm }");
        }
        if (!entries.isEmpty()) {
            line("frame", map(entries));
        }
    }

    private void covers() {
        int count = random.nextInt(3);
        if (count == 0) {
            return;
        }
        text.append("covers:\n");
        for (int i = 0; i < count; i++) {
            text.append("  - ").append(cover("cover-" + (i + 1))).append('\n');
        }
    }

    private String cover(String name) {
        List<String> entries = new ArrayList<>(List.of("name: " + name));
        if (chance(70)) {
            entries.add("stock: " + stock());
            entries.add("spacing: " + mm(1, 12));
        }
        entries.add("edge: " + mm(-4, 15));
        option(entries, 40, "plane: " + mm(0, 20));
        option(entries, 30, "hub-relief: " + mm(10, 40));
        option(entries, 30, "corner: " + oneOf("pointed", "blunt", "mirrored"));
        option(entries, 30, "fasteners: { hole: 6.5 mm, edge-distance: 40 mm, pitch: 400 mm }");
        option(entries, 30, "faces: both");
        option(entries, 30, "grain: along");
        option(entries, 30, "split: seam");
        option(entries, 25, "notches: coded");
        option(entries, 20, "cut-by: patches");
        return map(entries);
    }

    private String stock() {
        String sheet = "{ sheet: [" + mm(1800, 4000) + ", " + mm(1200, 2200) + "], margin: 10 mm, price: 40 }";
        String roll = "{ roll: " + mm(1000, 2500) + ", margin: 5 mm, price-per-metre: 6 }";
        return oneOf(sheet, roll, "[" + sheet + ", { sheet: [2500 mm, 1250 mm], price: 25, have: 2 }]");
    }

    private void option(List<String> entries, int percent, String entry) {
        if (chance(percent)) {
            entries.add(entry);
        }
    }

    private void extras() {
        if (chance(15)) {
            line("openings", "[{ name: door, remove: [P1-" + (1 + random.nextInt(3)) + ".01] }]");
        }
        if (chance(10)) {
            line("model", "{ scale: 1:20, sheet: [600 mm, 300 mm], thickness: 3 mm }");
        }
        if (chance(10)) {
            line("jigs", "{ strut: round 25 mm, bed: [220 mm, 220 mm, 250 mm] }");
        }
    }

    private void output() {
        List<String> entries = new ArrayList<>();
        option(entries, 40, "dxf: [" + oneOf("polyline", "lwpolyline", "lines", "polyline, lwpolyline, lines") + "]");
        option(entries, 15, "kerf: " + mm(0.1, 3));
        option(entries, 15, "start: edge");
        option(entries, 15, "flatten: 0.1 mm");
        if (!entries.isEmpty()) {
            line("output", map(entries));
        }
        line("files", "[tables, dxf" + (chance(50) ? ", svg" : "") + (chance(20) ? ", stl" : "") + "]");
    }
}
