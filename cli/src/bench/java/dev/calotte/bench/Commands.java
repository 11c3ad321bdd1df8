package dev.calotte.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The command as its users start it: one process after another, cold. */
final class Commands {

    private static final int RUNS = 5;
    private static final List<String> EXAMPLES = List.of("bandstand", "orchard-house", "planetarium");

    private final Path module;
    private final Path folder;

    Commands(Path module, Path folder) {
        this.module = module;
        this.folder = folder;
    }

    void run() throws IOException {
        System.out.println("\n| command, cold | s | user s |\n|---|---|---|");
        for (String example : EXAMPLES) {
            measure(example, "show");
            measure(example, "make", "--out", folder.resolve(example).toString());
        }
        measure("orchard-house", "compare");
    }

    private void measure(String example, String command, String... words) throws IOException {
        // the shell tells what a process took, which Java does not once it has ended
        String shell = "TIMEFORMAT='run %R %U %S'; time \"$@\" >/dev/null 2>&1";
        Path jar = module.resolve("target/calotte.jar");
        Path brief = module.resolve("examples/" + example + ".yaml");
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Rival process = new Rival(
                command, List.of("bash", "-c", shell, "bash", java, "-jar", jar.toString(), command, brief.toString()));
        Samples samples = new Samples();
        for (int run = 0; run < RUNS; run++) {
            if (!process.run(samples, words)) {
                return;
            }
            if (Files.exists(folder.resolve(example))) {
                Figures.remove(folder.resolve(example));
            }
        }
        System.out.println(String.format(
                Locale.ROOT, "| %s %s | %.2f | %.2f |", command, example, samples.seconds(), samples.processor()));
    }
}
