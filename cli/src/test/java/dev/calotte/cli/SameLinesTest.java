package dev.calotte.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A drawing has the same lines in DXF and in SVG, read here by two readers that share nothing. */
class SameLinesTest {

    /** Half of the last digit of SVG in either of two numbers, and of DXF. */
    private static final double ROUNDING_MM = 1.02e-4;

    private static final Pattern PAGE =
            Pattern.compile("width=\"([\\d.]+)mm\" height=\"([\\d.]+)mm\" viewBox=\"(.+?)\"");
    private static final Pattern LAYER_OR_PATH =
            Pattern.compile("inkscape:groupmode=\"layer\" .*id=\"(\\w+)\"|<path .*? d=\"(.+?)\"");
    private static final Pattern COMMAND = Pattern.compile("([MLAZ])([^MLAZ]*)");

    private static final List<String> CIRCLE = List.of("M", "A", "A", "Z");

    @TempDir
    private Path folder;

    static List<Path> examples() throws IOException {
        return Runs.examples();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void drawingHasTheSameLinesInBothFormats(Path brief) throws IOException {
        Runs.run("make", brief.toString(), "--out", folder.resolve("out").toString());
        Map<String, String> files = Runs.contents(folder.resolve("out"));
        List<String> drawings = files.keySet().stream()
                .filter(name -> name.startsWith("dxf/") && !name.contains("frame-3d"))
                .toList();
        assertThat(drawings).hasSizeGreaterThan(10);
        for (String name : drawings) {
            String svg = files.get(name.replace("dxf", "svg"));
            same(name, dxf(files.get(name)), svg(svg));
            staysOnItsPage(name, svg);
            cutsNothingTwice(name, svg(svg));
        }
    }

    private static void same(String name, Map<String, List<double[]>> dxf, Map<String, List<double[]>> svg) {
        assertThat(svg.keySet()).as(name).isEqualTo(dxf.keySet());
        dxf.forEach((layer, lines) -> {
            List<double[]> others = svg.get(layer);
            assertThat(others).as(name + " " + layer).hasSameSizeAs(lines);
            for (int i = 0; i < lines.size(); i++) {
                assertThat(others.get(i))
                        .as(name + " " + layer + " " + i)
                        .containsExactly(lines.get(i), within(ROUNDING_MM));
            }
        });
    }

    private static void staysOnItsPage(String name, String svg) {
        MatchResult page = PAGE.matcher(svg).results().findFirst().orElseThrow();
        assertThat(page.group(3)).as(name).isEqualTo("0 0 " + page.group(1) + " " + page.group(2));
        double width = Double.parseDouble(page.group(1));
        double height = Double.parseDouble(page.group(2));
        svg(svg).values()
                .forEach(lines -> lines.forEach(line -> {
                    boolean circle = line.length == 3;
                    double reach = circle ? line[2] : 0;
                    for (int i = 0; i < (circle ? 2 : 4); i++) {
                        assertThat(line[i]).as(name).isBetween(reach, (i % 2 == 0 ? width : height) - reach);
                    }
                }));
    }

    private static void cutsNothingTwice(String name, Map<String, List<double[]>> layers) {
        List<String> cuts = layers.entrySet().stream()
                .filter(layer ->
                        layer.getKey().startsWith("CUT") || layer.getKey().equals("DRILL"))
                .flatMap(layer -> layer.getValue().stream())
                .map(SameLinesTest::eitherWay)
                .toList();
        assertThat(cuts).as(name).isNotEmpty().doesNotHaveDuplicates();
    }

    private static String eitherWay(double[] line) {
        if (line.length == 3) {
            return Arrays.toString(line);
        }
        return Stream.of(new double[] {line[0], line[1]}, new double[] {line[2], line[3]})
                .map(Arrays::toString)
                .sorted()
                .toList()
                .toString();
    }

    /** The ends of each side by layer, or centre and radius of a circle; y as in the file, upwards. */
    private static Map<String, List<double[]>> dxf(String text) {
        Map<String, List<double[]>> layers = new TreeMap<>();
        List<double[]> corners = new ArrayList<>();
        String[] lines =
                text.substring(text.indexOf("\r\nENTITIES\r\n")).strip().split("\r\n", -1);
        Map<Integer, String> entity = new TreeMap<>();
        boolean closed = false;
        for (int i = 1; i < lines.length; i += 2) {
            int code = Integer.parseInt(lines[i].strip());
            if (code != 0) {
                entity.put(code, lines[i + 1]);
                continue;
            }
            switch (entity.getOrDefault(0, "")) {
                case "POLYLINE" -> closed = entity.getOrDefault(70, "0").strip().equals("1");
                case "VERTEX" -> corners.add(new double[] {number(entity, 10), number(entity, 20), bulge(entity)});
                case "CIRCLE" ->
                    of(layers, entity.get(8))
                            .add(new double[] {number(entity, 10), number(entity, 20), number(entity, 40)});
                case "SEQEND" -> {
                    addSides(of(layers, entity.get(8)), inQuarters(corners, closed), closed);
                    corners.clear();
                }
                default -> {}
            }
            entity.clear();
            entity.put(0, lines[i + 1]);
        }
        return layers;
    }

    private static double bulge(Map<Integer, String> entity) {
        return entity.containsKey(42) ? number(entity, 42) : 0;
    }

    /**
     * Corners of x, y and the radius of the side that begins there, 0 of a straight one and below 0 clockwise; arcs in equal
     * parts of a quarter turn at most, as SVG has them. The bulge is the tangent of a quarter of the angle.
     */
    private static List<double[]> inQuarters(List<double[]> corners, boolean closed) {
        List<double[]> all = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double[] from = corners.get(i);
            double[] to = corners.get((i + 1) % corners.size());
            double sweep = 4 * Math.atan(from[2]);
            boolean arc = from[2] != 0 && (closed || i < corners.size() - 1);
            double chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
            double radius = arc ? chord / 2 / Math.sin(sweep / 2) : 0;
            all.add(new double[] {from[0], from[1], radius});
            double towards = Math.atan2(to[1] - from[1], to[0] - from[0]);
            double start = towards - sweep / 2 - Math.PI / 2;
            double x = from[0] - radius * Math.cos(start);
            double y = from[1] - radius * Math.sin(start);
            long parts = arc ? (long) Math.ceil(Math.abs(sweep) / (Math.PI / 2)) : 1;
            for (int part = 1; part < parts; part++) {
                double angle = start + sweep * part / parts;
                all.add(new double[] {x + radius * Math.cos(angle), y + radius * Math.sin(angle), radius});
            }
        }
        return all;
    }

    private static double number(Map<Integer, String> entity, int code) {
        return Double.parseDouble(entity.get(code));
    }

    private static List<double[]> of(Map<String, List<double[]>> layers, String layer) {
        return layers.computeIfAbsent(layer, name -> new ArrayList<>());
    }

    private static void addSides(List<double[]> sides, List<double[]> corners, boolean closed) {
        for (int i = 1; i < corners.size() + (closed ? 1 : 0); i++) {
            double[] from = corners.get(i - 1);
            double[] to = corners.get(i % corners.size());
            if (from[0] != to[0] || from[1] != to[1]) {
                sides.add(new double[] {from[0], from[1], to[0], to[1], from[2]});
            }
        }
    }

    /** The same of an SVG file, turned upside down by its height. */
    private static Map<String, List<double[]>> svg(String text) {
        double height = Double.parseDouble(
                PAGE.matcher(text).results().findFirst().orElseThrow().group(2));
        Map<String, List<double[]>> layers = new TreeMap<>();
        String layer = "";
        for (MatchResult found : LAYER_OR_PATH.matcher(text).results().toList()) {
            if (found.group(1) != null) {
                layer = found.group(1);
            } else if (COMMAND.matcher(found.group(2))
                    .results()
                    .map(c -> c.group(1))
                    .toList()
                    .equals(CIRCLE)) {
                of(layers, layer).add(circle(found.group(2), height));
            } else {
                addSides(
                        of(layers, layer),
                        corners(found.group(2), height),
                        found.group(2).endsWith("Z"));
            }
        }
        return layers;
    }

    /** An arc is told at its end; its radius belongs to the corner where it begins. */
    private static List<double[]> corners(String path, double height) {
        List<double[]> corners = new ArrayList<>();
        for (MatchResult command : COMMAND.matcher(path).results().toList()) {
            if (command.group(1).equals("Z")) {
                continue;
            }
            double[] n = numbers(command.group(2));
            if (command.group(1).equals("A")) {
                corners.get(corners.size() - 1)[2] = n[4] == 0 ? n[0] : -n[0];
            }
            corners.add(new double[] {n[n.length - 2], height - n[n.length - 1], 0});
        }
        return corners;
    }

    /** Two halves: each begins where the other ends, so the centre lies in the middle. */
    private static double[] circle(String path, double height) {
        List<MatchResult> commands = COMMAND.matcher(path).results().toList();
        double[] from = numbers(commands.get(0).group(2));
        double[] over = numbers(commands.get(1).group(2));
        double[] back = numbers(commands.get(2).group(2));
        assertThat(List.of(back[5], back[6])).containsExactly(from[0], from[1]);
        return new double[] {(from[0] + over[5]) / 2, height - (from[1] + over[6]) / 2, over[0]};
    }

    private static double[] numbers(String words) {
        return Pattern.compile(" ")
                .splitAsStream(words)
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
