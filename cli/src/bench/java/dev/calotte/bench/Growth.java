package dev.calotte.bench;

import dev.calotte.dome.Dome;
import dev.calotte.dome.DomeSpec;
import dev.calotte.dome.Size;
import dev.calotte.parts.Joinery;
import dev.calotte.parts.Parts;
import dev.calotte.sphere.Breakdown;
import dev.calotte.sphere.Solid;
import java.time.Duration;
import java.util.Locale;

/**
 * How time and memory of whole icosahedra grow with their panels: prints a row for each frequency and the exponents from
 * {@value #FROM}V on, by least squares of the logarithms. Where all is linear they are 1.
 */
public final class Growth {

    private static final int FROM = 32;
    private static final int MOST = 512;
    private static final int RUNS = 3;

    private double count;
    private double x;
    private double xx;
    private final double[] y = new double[2];
    private final double[] xy = new double[2];

    private Growth() {}

    /**
     * Measures.
     *
     * @param words none
     */
    public static void main(String... words) {
        Growth growth = new Growth();
        // the smallest ones get the code warm
        for (int i = 0; i < 100; i++) {
            parts(16);
        }
        for (int frequency = 8; frequency <= MOST; frequency *= 2) {
            growth.measure(frequency);
        }
        System.out.println(String.format(
                Locale.ROOT, "| exponent | | | %.3f | %.3f |", growth.exponent(0), growth.exponent(1)));
    }

    private static Parts parts(int frequency) {
        DomeSpec spec = DomeSpec.of(Solid.ICOSAHEDRON, Breakdown.of(frequency), Size.radius(3000));
        return Parts.of(Dome.of(spec), Joinery.gap(0));
    }

    private void measure(int frequency) {
        double seconds = Double.POSITIVE_INFINITY;
        double busy = Double.POSITIVE_INFINITY;
        double held = 0;
        for (int run = 0; run < RUNS; run++) {
            long before = used();
            Duration processor = processor();
            long start = System.nanoTime();
            Parts parts = parts(frequency);
            seconds = Math.min(seconds, (System.nanoTime() - start) / 1e9);
            busy = Math.min(busy, processor().minus(processor).toNanos() / 1e9);
            held = (used() - before) / 1e6;
            if (parts.hubKinds().isEmpty()) {
                throw new IllegalStateException("no hubs");
            }
        }
        System.out.println(String.format(
                Locale.ROOT, "| %dV | %d | %.3f | %.3f | %.1f |", frequency, panels(frequency), seconds, busy, held));
        if (frequency >= FROM) {
            note((double) panels(frequency), busy, held);
        }
    }

    private static long panels(int frequency) {
        return 20L * frequency * frequency;
    }

    private void note(double panels, double... values) {
        double log = StrictMath.log(panels);
        count++;
        x += log;
        xx += log * log;
        for (int i = 0; i < values.length; i++) {
            y[i] += StrictMath.log(values[i]);
            xy[i] += log * StrictMath.log(values[i]);
        }
    }

    private double exponent(int column) {
        return (count * xy[column] - x * y[column]) / (count * xx - x * x);
    }

    private static Duration processor() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow();
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
