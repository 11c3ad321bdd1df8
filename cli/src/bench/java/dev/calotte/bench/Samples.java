package dev.calotte.bench;

import java.util.ArrayList;
import java.util.List;

/** What runs of one piece of work took. */
final class Samples {

    private static final String RUN = "run ";

    private final List<Double> seconds = new ArrayList<>();
    private final List<Double> processor = new ArrayList<>();
    private String result = "";

    /** Takes a line as {@link Entrant} prints it, and passes over others. */
    void add(String line) {
        if (line.startsWith(RUN)) {
            String[] words = line.split(" ", -1);
            seconds.add(Double.valueOf(words[1]));
            processor.add(Double.valueOf(words[2]));
            result = words[3];
        }
    }

    boolean isEmpty() {
        return seconds.isEmpty();
    }

    /** On the clock, the median. */
    double seconds() {
        return median(seconds);
    }

    /** Of all processors, the median. */
    double processor() {
        return median(processor);
    }

    /** What the last run gave. */
    String result() {
        return result;
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
