package dev.calotte.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The same work by several, in turns, so that whatever else the machine does falls on all of them.
 *
 * @param title what is done
 * @param rivals who does it, ours first
 */
record Contest(String title, List<Rival> rivals) {

    private static final int ROUNDS = 3;
    /** Seconds, after which compilers are done with all that is hot. */
    private static final String WARM = "8";
    private static final String COUNTED = "5";

    /** Copies the list. */
    Contest {
        rivals = List.copyOf(rivals);
    }

    /** Prints a row for each that could take part. */
    void run(Path folder) throws IOException {
        Map<Rival, Samples> found = new LinkedHashMap<>();
        rivals.forEach(rival -> found.put(rival, new Samples()));
        for (int round = 0; round < ROUNDS; round++) {
            for (Rival rival : rivals) {
                Samples samples = found.get(rival);
                if (samples != null && !rival.run(samples, folder.toString(), WARM, COUNTED)) {
                    found.remove(rival);
                }
            }
        }
        Samples ours = found.getOrDefault(rivals.get(0), new Samples());
        found.forEach((rival, samples) -> System.out.println(row(rival, samples, ours)));
    }

    private String row(Rival rival, Samples samples, Samples ours) {
        if (samples.isEmpty() || ours.isEmpty()) {
            return "| " + title + " | " + rival.name() + " | no figures | | | | |";
        }
        return String.format(
                Locale.ROOT,
                "| %s | %s | %.3f | %.3f | %s | %.2f | %.2f |",
                title,
                rival.name(),
                samples.seconds(),
                samples.processor(),
                samples.result(),
                samples.seconds() / ours.seconds(),
                samples.processor() / ours.processor());
    }
}
