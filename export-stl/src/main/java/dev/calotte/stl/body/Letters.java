package dev.calotte.stl.body;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Raised letters of straight bars, 4 units wide and 6 high, coarse enough for a nozzle of 0.4 mm. */
final class Letters {

    /** How far they stand out: 0.8 mm, three or four layers. */
    static final double RAISED = 0.8;

    private static final double UNITS = 6;
    private static final double ADVANCE = 5.6;
    private static final double NARROW = 2.2;

    private static final String TABLE = """
            A 0,0 0,4 2,6 4,4 4,0|0,2.4 4,2.4
            B 0,0 0,6 3,6 4,5 4,4 3,3 0,3|3,3 4,2 4,1 3,0 0,0
            C 4,0 0,0 0,6 4,6
            D 0,0 0,6 2.5,6 4,4.5 4,1.5 2.5,0 0,0
            E 4,0 0,0 0,6 4,6|0,3 3,3
            F 0,0 0,6 4,6|0,3 3,3
            G 4,6 0,6 0,0 4,0 4,2.6 2.4,2.6
            H 0,0 0,6|4,0 4,6|0,3 4,3
            I 2,0 2,6
            J 0,1 1,0 4,0 4,6
            K 0,0 0,6|4,6 0,2.6|1.4,3.6 4,0
            L 0,6 0,0 4,0
            M 0,0 0,6 2,3.4 4,6 4,0
            N 0,0 0,6 4,0 4,6
            O 0,0 0,6 4,6 4,0 0,0
            P 0,0 0,6 4,6 4,2.8 0,2.8
            Q 0,0 0,6 4,6 4,0 0,0|2.6,1.6 4.6,-0.6
            R 0,0 0,6 4,6 4,2.8 0,2.8|2,2.8 4,0
            S 0,1 1,0 3,0 4,1 4,2 0,4 0,5 1,6 3,6 4,5
            T 2,0 2,6|0,6 4,6
            U 0,6 0,0 4,0 4,6
            V 0,6 2,0 4,6
            W 0,6 0,0 2,2.6 4,0 4,6
            X 0,0 4,6|0,6 4,0
            Y 0,6 2,3 4,6|2,3 2,0
            Z 0,6 4,6 0,0 4,0
            0 0,0 0,6 4,6 4,0 0,0|1.6,2.2 2.4,3.8
            1 0.6,4.6 2,6 2,0
            2 0,6 4,6 4,3.2 0,0 4,0
            3 0,6 4,6 4,0 0,0|1,3 4,3
            4 3,0 3,6 0,2 4.2,2
            5 4,6 0,6 0,3.2 4,3.2 4,0 0,0
            6 4,6 0,6 0,0 4,0 4,3 0,3
            7 0,6 4,6 1.4,0
            8 0,0 0,6 4,6 4,0 0,0|0,3 4,3
            9 4,3 0,3 0,6 4,6 4,0 0,0
            . 0,0 0.3,0
            - 0,3 3,3
            \u00b0 0,4.4 0,6 1.6,6 1.6,4.4 0,4.4
            """;

    private static final Map<Integer, double[][]> GLYPHS = new TreeMap<>();

    static {
        TABLE.lines().forEach(line -> GLYPHS.put(line.codePointAt(0), strokes(line.substring(2))));
    }

    private final double heightMm;
    private final Plane top;

    /** Letters of a height whose tops lie in a plane. */
    Letters(double heightMm, Plane top) {
        this.heightMm = heightMm;
        this.top = top;
    }

    private static double[][] strokes(String text) {
        String[] strokes = text.split("\\|", -1);
        double[][] all = new double[strokes.length][];
        for (int i = 0; i < strokes.length; i++) {
            all[i] = Arrays.stream(strokes[i].split("[ ,]", -1))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        }
        return all;
    }

    Plane top() {
        return top;
    }

    private double unit() {
        return heightMm / UNITS;
    }

    /** From the first letter's left edge to the last one's right edge. */
    double widthMm(String text) {
        double width = text.codePoints().mapToDouble(Letters::advance).sum();
        return unit() * (width - (ADVANCE - 4)) + strokeMm();
    }

    private double strokeMm() {
        return Math.max(0.8, heightMm / 7);
    }

    private static double advance(int letter) {
        return letter == '.' ? NARROW : letter == '\u00b0' ? NARROW + 1 : ADVANCE;
    }

    /** Written along an axis, the base line beginning where it begins. */
    Relief write(Relief below, String text, Axis line) {
        Relief relief = below;
        double out = strokeMm() / 2;
        for (int letter : text.codePoints().toArray()) {
            for (double[] stroke : glyph(letter)) {
                for (int i = 0; i + 3 < stroke.length; i += 2) {
                    relief = bar(relief, line.moved(out, strokeMm() / 2), stroke, i);
                }
            }
            out += unit() * advance(letter);
        }
        return relief;
    }

    private static double[][] glyph(int letter) {
        double[][] glyph = GLYPHS.get(letter);
        if (glyph == null) {
            throw new IllegalArgumentException("no letter to print: " + Character.toString(letter));
        }
        return glyph;
    }

    private Relief bar(Relief below, Axis letter, double[] stroke, int i) {
        double scale = unit() - strokeMm() / UNITS;
        double x = scale * stroke[i];
        double y = scale * stroke[i + 1];
        double dx = scale * stroke[i + 2] - x;
        double dy = scale * stroke[i + 3] - y;
        double length = Math.sqrt(dx * dx + dy * dy);
        double half = strokeMm() / 2;
        Axis from = letter.moved(x, y);
        Axis along = new Axis(
                from.x(),
                from.y(),
                (from.cos() * dx - from.sin() * dy) / length,
                (from.sin() * dx + from.cos() * dy) / length);
        return below.cover(along.box(-half, length + half, -half, half), top);
    }
}
