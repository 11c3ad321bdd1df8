package dev.calotte.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Measures our work and that of other libraries in one run and prints tables of ratios: above 1 where the other takes
 * longer than we do. A library that is not there is left out, with a notice.
 */
public final class Figures {

    private static final String HEAD =
            "| work | who | s | processor s | bytes or panels | times ours | times ours, processor |\n"
                    + "|---|---|---|---|---|---|---|";

    private final Path module;
    private final Path peers;
    private final Path folder;

    private Figures(Path module, Path folder) {
        this.module = module;
        this.peers = module.resolve("target/peers");
        this.folder = folder;
    }

    /**
     * Measures.
     *
     * @param words the folder of the module {@code cli}; then what to measure, of {@code geometry}, {@code growth},
     *     {@code dxf}, {@code svg}, {@code stl}, {@code heap} and {@code commands}, or all if nothing is named
     * @throws IOException if something cannot be written
     */
    public static void main(String... words) throws IOException {
        Path folder = Files.createTempDirectory("bench");
        try {
            new Figures(Path.of(words[0]), folder).run(List.of(words).subList(1, words.length));
        } finally {
            remove(folder);
        }
    }

    static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private void run(List<String> named) throws IOException {
        Rival fetch =
                new Rival("fetching peers", List.of(module.resolve("src/bench/peers/fetch").toString()));
        fetch.run(new Samples(), peers.toString());
        System.out.println(machine() + "\n\n" + HEAD);
        for (Contest contest : contests()) {
            if (named.isEmpty() || named.contains(contest.title().split("[ ,]", -1)[0])) {
                contest.run(folder);
            }
        }
        if (named.isEmpty() || named.contains("heap")) {
            heaps();
        }
        if (named.isEmpty() || named.contains("growth")) {
            growth();
        }
        if (named.isEmpty() || named.contains("commands")) {
            new Commands(module, folder).run();
        }
    }

    private static String machine() throws IOException {
        Path cpu = Path.of("/proc/cpuinfo");
        String model = Files.exists(cpu)
                ? Files.readAllLines(cpu).stream()
                        .filter(line -> line.startsWith("model name"))
                        .findFirst()
                        .map(line -> line.substring(line.indexOf(':') + 2))
                        .orElse("")
                : "";
        return LocalDate.now(ZoneOffset.UTC) + ", " + Runtime.getRuntime().availableProcessors() + " processors " + model + ", JDK "
                + Runtime.version();
    }

    private List<Contest> contests() {
        return List.of(
                new Contest(
                        "geometry of a 128V icosahedron",
                        List.of(
                                Rival.ours("ours, with angles, kinds and hubs", "geometry-128", "-Xmx4g"),
                                node("three, places alone", "three-sphere"))),
                new Contest(
                        "dxf, 100,000 triangles",
                        List.of(
                                Rival.ours("ours", "dxf"),
                                Rival.ours("raw", "raw-dxf"),
                                python("ezdxf, r12writer", "ezdxf-r12"),
                                node("@tarikjabiri/dxf", "dxf-light"))),
                new Contest(
                        "svg, 100,000 triangles", List.of(Rival.ours("ours", "svg"), Rival.ours("raw", "raw-svg"))),
                new Contest(
                        "stl, 1,000,000 facets",
                        List.of(
                                Rival.ours("ours", "stl"),
                                Rival.ours("raw", "raw-stl"),
                                python("numpy, tofile", "numpy-stl"),
                                node("three, STLExporter", "three-stl"))));
    }

    private Rival node(String name, String script) {
        return Rival.peer(name, "node", peers.resolve(script + ".mjs"));
    }

    private Rival python(String name, String script) {
        return Rival.peer(name, "/usr/bin/python3", peers.resolve(script + ".py"));
    }

    /** The writers keep nothing of what they write; a mesh itself takes 24 MB, and is proven closed before it is written. */
    private void heaps() throws IOException {
        System.out.println("\n| a million shapes | heap | s |\n|---|---|---|");
        for (String[] heap : new String[][] {{"dxf", "24m"}, {"svg", "24m"}, {"stl", "160m"}}) {
            Samples samples = new Samples();
            Rival writer = Rival.ours(heap[0], "million-" + heap[0], "-Xmx" + heap[1]);
            boolean written = writer.run(samples, folder.toString(), "0", "1");
            System.out.println(
                    "| " + heap[0] + " | " + heap[1] + " | " + (written ? samples.seconds() : "too small") + " |");
        }
    }

    private static void growth() throws IOException {
        System.out.println("\n| icosahedron | panels | s | processor s | MB kept |\n|---|---|---|---|---|");
        Process process = new ProcessBuilder(Rival.java(Growth.class, "-Xmx4g")).inheritIO().start();
        process.onExit().join();
    }
}
